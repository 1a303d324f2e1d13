// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.benchmarks.Options;
import isohume.benchmarks.Report;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FaultsTest {
    @ParameterizedTest
    @EnumSource(names = {"UNPLUGGED_AND_BACK", "DOOR_OPENED", "OVER_TEMPERATURE", "DISK_FULL", "TWO_PROGRAMS"})
    void a_night_with_one_fault_ends_well(Trouble trouble) throws IOException {
        Outcome outcome = Nights.pass(trouble, 3);
        assertTrue(outcome.good(), outcome.objections() + outcome.story());
    }

    @Test
    void a_mirror_that_cannot_decide_leaves_its_point_out_and_the_night_goes_on() throws IOException {
        Outcome outcome = Nights.pass(Trouble.DEW_POINT_NEAR_ZERO, 4);
        assertTrue(outcome.good(), outcome.objections() + outcome.story());
        assertEquals(1, outcome.left(), outcome.story());
        assertEquals(1, outcome.points(), outcome.story());
    }

    @Test
    @Tag("slow")
    void three_nights_with_each_fault_end_well() throws IOException {
        long runs = 3L * Trouble.values().length;
        Report report = Faults.measure(
                new Options(Optional.empty(), false, Map.of("--runs", String.valueOf(runs), "--seed", "5000")));
        assertTrue(report.met(), report.table());
    }
}
