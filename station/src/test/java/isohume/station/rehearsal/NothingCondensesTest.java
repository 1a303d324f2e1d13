// SPDX-License-Identifier: Apache-2.0
package isohume.station.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Answer;
import isohume.device.Setpoint;
import isohume.journal.MemoryJournal;
import isohume.journal.StreamName;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.Ending;
import isohume.run.Order;
import isohume.run.RunFact;
import isohume.simulator.BenchParameters;
import isohume.simulator.Enclosure;
import isohume.station.job.Worksheet;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the rule "dry before cooling, warm before humidifying" is worth, on a chamber that keeps account of its water. */
class NothingCondensesTest {
    private static final Instant START = Instant.parse("2026-03-02T07:00:00Z");

    /** A chamber that does not keep itself from dew, and whose load holds much heat: its walls run ahead of the air. */
    private static final BenchParameters UNGUARDED = BenchParameters.portable()
            .with(new Enclosure(3, 600, 1200, 5, 0.10, 0.15, 0.03, 1, 60, 40))
            .withGuard(10);

    private static final String WET_AND_COLD = """
              - {temperature: 38, humidity: [80]}
              - {temperature: 10, humidity: [85]}
              - {temperature: 38, humidity: [80]}
              - {temperature: 23, humidity: [90]}
            """;

    @Test
    void no_water_settles_on_the_way_between_warm_wet_and_cold_wet_points() {
        Worksheet worksheet = BenchPapers.worksheet(UNGUARDED, "wet and cold in turn", WET_AND_COLD);
        try (Rehearsal rehearsal = Rehearsal.of(worksheet, UNGUARDED, 3, START)) {
            double[] most = {0};
            int[] ways = {0};
            Unattended run = new Unattended(
                    rehearsal,
                    new MemoryJournal(rehearsal.simulated()::now),
                    new StreamName("run", "1"),
                    Order.STOP,
                    (entry, fact) -> {
                        most[0] = Math.max(most[0], rehearsal.simulated().condensedGrams());
                        ways[0] += fact instanceof RunFact.Detoured ? 1 : 0;
                    });
            assertEquals(Ending.COMPLETED, run.carryOut(), () -> run.held().toString());
            assertEquals(0, most[0]);
            assertTrue(ways[0] >= 3, () -> "there was more than one change to keep from condensing, ways: " + ways[0]);
        }
    }

    @Test
    void the_same_changes_asked_for_at_once_leave_water() {
        Worksheet worksheet = BenchPapers.worksheet(UNGUARDED, "wet and cold in turn", WET_AND_COLD);
        try (Rehearsal rehearsal = Rehearsal.of(worksheet, UNGUARDED, 3, START)) {
            double most = 0;
            int minutes = 0;
            for (Setpoint next : List.of(at(38, 80), at(10, 85), at(38, 80), at(23, 90))) {
                Answer unused = rehearsal.open().bench().chamber().request(next);
                for (int i = 0; i < 90; i++) {
                    rehearsal.simulated().advanceTo(START.plus(Duration.ofMinutes(++minutes)));
                    most = Math.max(most, rehearsal.simulated().condensedGrams());
                }
            }
            assertTrue(most > 0, "the chamber of this test would not show what it is to show");
        }
    }

    private static Setpoint at(double celsius, double percent) {
        return new Setpoint(Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(percent));
    }
}
