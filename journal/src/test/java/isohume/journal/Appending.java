// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;

/** A program that appends from two threads until it is stopped, and prints each entry once it is acknowledged. */
final class Appending {
    /** Printed before the first append; the program waits for a line then. */
    static final String READY = "ready";

    static final String LOST = "lost ";

    private Appending() {}

    @SuppressWarnings("FutureReturnValueIgnored") // each task prints how it ends
    public static void main(String[] args) throws IOException {
        SqliteJournal journal = SqliteJournal.open(Path.of(args[0]), InstantSource.system());
        System.out.println(READY);
        if (System.in.read() < 0) {
            return;
        }
        try (ExecutorService threads = Executors.newFixedThreadPool(2)) {
            IntStream.range(0, 2).forEach(thread -> threads.submit(() -> appendForever(journal, thread)));
        }
    }

    private static void appendForever(SqliteJournal journal, int thread) {
        try {
            for (int k = 0; ; k++) {
                StreamName stream = new StreamName("run", k % 3 == 0 ? "shared" : "own-" + thread);
                Fact fact = new Fact(1, "{\"k\":" + k + ",\"t\":\"" + "x".repeat(37 * k % 3_000) + "\"}");
                System.out.println(line(journal.append(stream, fact)));
                if (k % 50 == 49) {
                    journal.seal();
                }
            }
        } catch (JournalLost lost) {
            System.out.println(LOST + lost.getMessage());
        }
    }

    static String line(Entry entry) {
        return entry.stream() + " " + entry.number() + " " + entry.hash();
    }

    /** Starts the program in another virtual machine. */
    static Process start(Path file) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--enable-native-access=ALL-UNNAMED",
                "-XX:-UsePerfData",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Appending.class.getName(),
                file.toString()));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    /** Waits until it is ready. */
    static void awaitReady(BufferedReader out) throws IOException {
        String line = out.readLine();
        if (!READY.equals(line)) {
            throw new IOException("expected " + READY + ", was " + line);
        }
    }

    static void go(Process process) throws IOException {
        BufferedWriter in = process.outputWriter();
        in.write("go\n");
        in.flush();
    }
}
