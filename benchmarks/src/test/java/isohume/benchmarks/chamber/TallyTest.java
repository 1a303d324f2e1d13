// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.chamber;

import static isohume.quantity.Quantity.RELATIVE_HUMIDITY;
import static isohume.quantity.Quantity.TEMPERATURE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import isohume.benchmarks.chamber.Outcome.Found;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class TallyTest {
    private static Outcome outcome(int hours, int foretold, int missing, Found... found) {
        return new Outcome(Duration.ofHours(hours), List.of(found), missing, Duration.ofHours(foretold), List.of());
    }

    @Test
    void what_has_no_result_is_not_covered() {
        Tally tally = new Tally(List.of(outcome(
                10,
                10,
                2, // one humidity, one temperature
                new Found(RELATIVE_HUMIDITY, 1.0, 0.5, 0.5),
                new Found(RELATIVE_HUMIDITY, 1.0, 0.5, 1.5),
                new Found(RELATIVE_HUMIDITY, 1.0, 0.5, 1.51),
                new Found(TEMPERATURE, 0.1, 0.2, 0.2))));
        assertEquals(50, tally.covered(RELATIVE_HUMIDITY));
        assertEquals(50, tally.covered(TEMPERATURE));
        assertEquals(100.0 * 2 / 6, tally.missingShare(), 1e-12);
    }

    @Test
    void an_end_that_nobody_foretold_is_not_foretold_well() {
        Tally tally = new Tally(List.of(outcome(20, 23, 0), outcome(20, 17, 0), outcome(20, 24, 0), outcome(20, 0, 0)));
        assertEquals(50, tally.foretoldNear());
        assertEquals(20, tally.medianHours());
    }

    @Test
    void a_median_of_an_even_number_lies_between() {
        assertEquals(2.5, Tally.median(java.util.stream.DoubleStream.of(4, 1, 3, 2)));
    }
}
