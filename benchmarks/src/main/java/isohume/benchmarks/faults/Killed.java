// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.faults;

import isohume.journal.MemoryJournal;
import isohume.run.lease.Holder;
import isohume.run.lease.Lease;
import isohume.run.lease.LeaseRefused;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Another program, to be killed in the middle of its night, or to reach for a chamber that is taken. Its first argument
 * says which.
 */
public final class Killed {
    private static final int REFUSED = 7;

    private Killed() {}

    public static void main(String[] arguments) {
        Path folder = Path.of(arguments[1]);
        if (arguments[0].equals("lease")) {
            System.exit(reach(folder, arguments[2]));
        }
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        long seed = Long.parseLong(arguments[2]);
        try (Night night = new Night(Trouble.PROCESS_KILLED, seed, Night.START, folder, out::println)) {
            night.pass();
        }
    }

    private static int reach(Path locks, String chamber) {
        InstantSource clock = InstantSource.system();
        Holder holder = new Holder("the other program", "this machine");
        try (MemoryJournal own = new MemoryJournal(clock);
                Lease lease = Lease.take(own, chamber, holder, locks, clock)) {
            lease.renew();
            return 0;
        } catch (LeaseRefused refused) {
            return REFUSED;
        }
    }

    /** Whether another program of this machine is kept off a chamber. */
    static boolean isKeptOff(Path locks, String chamber) {
        try {
            Process other = start("lease", locks.toString(), chamber);
            boolean ended = other.waitFor(60, TimeUnit.SECONDS);
            return ended && other.exitValue() == REFUSED;
        } catch (IOException unable) {
            return false;
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Lets another program pass its night and kills it after so many facts; the numbers that it had acknowledged. */
    static List<Long> after(int facts, Path folder, long seed) throws IOException {
        List<Long> told = new ArrayList<>();
        Process program = start("night", folder.toString(), String.valueOf(seed));
        try (BufferedReader lines = program.inputReader(StandardCharsets.UTF_8)) {
            String line = lines.readLine();
            while (line != null) {
                told.add(Long.valueOf(line));
                if (told.size() == facts) {
                    boolean ignored = program.toHandle().destroyForcibly(); // what it wrote until then is still read
                }
                line = lines.readLine();
            }
        } finally {
            program.destroyForcibly();
        }
        return told;
    }

    private static Process start(String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx256m",
                "-cp",
                System.getProperty("java.class.path"),
                Killed.class.getName()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
