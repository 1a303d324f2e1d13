// SPDX-License-Identifier: Apache-2.0
package isohume.station;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.journal.Entry;
import isohume.journal.SqliteJournal;
import isohume.journal.StreamName;
import isohume.journal.Verification;
import isohume.run.Ending;
import isohume.run.Phase;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The program is killed in the middle of a run, as a power cut would do it, and started again. */
class PowerCutIT {
    private static final Pattern NUMBER = Pattern.compile("\"number\":(\\d+)");

    @Test
    void nothing_acknowledged_is_lost_and_the_chamber_is_asked_to_rest() throws Exception {
        Path data = Files.createTempDirectory("cut");
        Path file = data.resolve("journal.db");
        String[] demo = {"demo", "--port", "0", "--speed", "300", "--data", data.toString()};
        long shown;
        String run;
        try (RunningProgram program = RunningProgram.with(demo)) {
            run = runOf(program);
            shown = waitForFacts(program, run, 60);
            program.kill();
        }
        assertInstanceOf(Verification.Whole.class, Verification.of(file));

        try (RunningProgram again = RunningProgram.with(demo)) {
            assertTrue(again.address().startsWith("http://127.0.0.1:"));
            assertTrue(again.said().contains("cut off"), again.said());
        }
        assertInstanceOf(Verification.Whole.class, Verification.of(file));
        try (SqliteJournal journal = SqliteJournal.open(file, InstantSource.system())) {
            List<Entry> entries = journal.read(new StreamName("run", run), 0, Integer.MAX_VALUE);
            assertTrue(entries.size() > shown, "all " + shown + " facts that were shown are there");
            List<RunFact> last = entries.subList(entries.size() - 2, entries.size()).stream()
                    .map(e -> RunNotation.decode(e.fact()))
                    .toList();
            assertInstanceOf(RunFact.Rested.class, last.get(0));
            assertEquals(Ending.INTERRUPTED, ((RunFact.Finished) last.get(1)).ending());
        }
        assertEquals("safe stop", Phase.SAFE_STOP.word());
    }

    private static String runOf(RunningProgram program) throws Exception {
        String runs = program.text("api/runs");
        Matcher found = Pattern.compile("\"run\":\"([^\"]+)\"").matcher(runs);
        assertTrue(found.find(), runs);
        return found.group(1);
    }

    /** The highest fact number that the program has shown to somebody. */
    private static long waitForFacts(RunningProgram program, String run, int least) throws Exception {
        Instant until = Instant.now().plus(Duration.ofMinutes(1));
        long highest = 0;
        while (highest < least && Instant.now().isBefore(until)) {
            Matcher numbers = NUMBER.matcher(program.text("api/runs/" + run + "/facts?after=" + highest));
            while (numbers.find()) {
                highest = Math.max(highest, Long.parseLong(numbers.group(1)));
            }
        }
        assertTrue(highest >= least, "facts shown: " + highest);
        return highest;
    }
}
