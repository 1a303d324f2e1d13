// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Another program appends, and comes to a bad end. */
@Timeout(value = 120, unit = TimeUnit.SECONDS)
final class KilledProgramTest {
    private static final long SEED = 8_141_592L;
    private static final Path PRLIMIT = Path.of("/usr/bin/prlimit"); // util-linux

    @TempDir
    Path folder = Path.of("");

    @TestFactory
    Stream<DynamicTest> whatever_was_acknowledged_is_there_after_a_kill() {
        System.out.println("kills, seed " + SEED);
        Random random = new Random(SEED);
        Path file = folder.resolve("killed.journal"); // the same file all along: each round begins on what a kill left
        Set<String> acknowledged = new HashSet<>();
        return IntStream.rangeClosed(1, 5).mapToObj(round -> {
            int killAfter = 1 + random.nextInt(250);
            return DynamicTest.dynamicTest("kill " + round + " after " + killAfter + " facts", () -> {
                acknowledged.addAll(killed(file, killAfter));
                assertAllThere(acknowledged, file);
            });
        });
    }

    /** What the program said before and at its kill. */
    private static List<String> killed(Path file, int killAfter) throws IOException, InterruptedException {
        List<String> said = new ArrayList<>();
        Process program = Appending.start(file);
        try (BufferedReader out = program.inputReader()) {
            Appending.awaitReady(out);
            Appending.go(program);
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                said.add(line);
                if (said.size() == killAfter) {
                    assertTrue(program.toHandle().destroyForcibly()); // SIGKILL
                }
            }
        } finally {
            program.destroyForcibly().waitFor();
        }
        assertTrue(said.size() >= killAfter);
        if (!said.getLast().matches("\\S+ \\d+ [0-9a-f]{64}")) {
            said.removeLast(); // cut off in the middle of a line
        }
        return said;
    }

    @Test
    void two_programs_append_to_one_file_until_both_are_killed() throws IOException, InterruptedException {
        Path file = folder.resolve("two.journal");
        try (ExecutorService programs = Executors.newFixedThreadPool(2)) {
            Future<List<String>> one = programs.submit(() -> killed(file, 150));
            Future<List<String>> two = programs.submit(() -> killed(file, 200));
            Set<String> acknowledged = new HashSet<>(one.get());
            acknowledged.addAll(two.get());
            assertAllThere(acknowledged, file);
        } catch (ExecutionException e) {
            throw new IOException(e.getCause());
        }
    }

    @TestFactory
    Stream<DynamicTest> wherever_a_file_may_grow_no_further_what_was_acknowledged_is_there() {
        return IntStream.of(64, 120, 333, 1_000, 4_000)
                .mapToObj(kib -> DynamicTest.dynamicTest(kib + " KiB", () -> {
                    assumeTrue(Files.isExecutable(PRLIMIT), "this machine cannot limit files");
                    Path file = folder.resolve(kib + ".journal");
                    List<String> said = limited(file, kib);
                    List<String> acknowledged = said.stream()
                            .filter(line -> !line.startsWith(Appending.LOST))
                            .toList();
                    assertEquals(2, said.size() - acknowledged.size(), "both threads must have been told");
                    assertAllThere(new HashSet<>(acknowledged), file);
                }));
    }

    private static List<String> limited(Path file, int kib) throws IOException, InterruptedException {
        Process program = Appending.start(file);
        try (BufferedReader out = program.inputReader()) {
            Appending.awaitReady(out);
            Process limit = new ProcessBuilder(
                            PRLIMIT.toString(), "--pid", "" + program.pid(), "--fsize=" + 1024L * kib)
                    .inheritIO()
                    .start();
            assertEquals(0, limit.waitFor());
            Appending.go(program);
            return out.lines().toList();
        } finally {
            program.destroyForcibly().waitFor();
        }
    }

    private static void assertAllThere(Set<String> acknowledged, Path file) {
        Verification found = Verification.of(file);
        assertInstanceOf(Verification.Whole.class, found, found::toString);
        Set<String> there = new HashSet<>();
        try (SqliteJournal journal = SqliteJournal.open(file, () -> Instant.EPOCH)) {
            for (StreamName stream : journal.streams("run")) {
                journal.read(stream, 0, Integer.MAX_VALUE).forEach(entry -> there.add(Appending.line(entry)));
            }
        }
        Set<String> missing = new HashSet<>(acknowledged);
        missing.removeAll(there);
        assertEquals(Set.of(), missing);
    }
}
