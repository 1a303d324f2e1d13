// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import isohume.device.Channel;
import isohume.device.Reading;
import isohume.quantity.Quantity;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class UndecidedTest {
    private static final Channels CHANNELS =
            new Channels("c", "m/dew_point", "m/deposit", "t/temperature", List.of("t/p"), List.of());

    private final Undecided undecided = new Undecided(CHANNELS, Bounds.usual());
    private final List<Sighting> seen = new ArrayList<>();
    private Instant now = Instant.parse("2026-03-02T08:00:00Z");

    private Reading value(String id, Quantity quantity, String shown) {
        int slash = id.indexOf('/');
        return new Reading.Value(
                new Channel(id.substring(0, slash), id.substring(slash + 1), quantity), now, new BigDecimal(shown), "");
    }

    private void pass(Duration time, String deposit, String dewPoint) {
        for (Instant end = now.plus(time); now.isBefore(end); now = now.plusSeconds(10)) {
            List<Reading> readings = List.of(
                    value("m/dew_point", Quantity.DEW_POINT, dewPoint),
                    value("m/deposit", Quantity.DEPOSIT, deposit),
                    value("t/temperature", Quantity.TEMPERATURE, "20.00"));
            undecided.look(new Poll(now, readings, OptionalDouble.of(30), Optional.empty(), false), seen::add);
        }
    }

    @Test
    void a_mirror_that_goes_to_and_fro_is_undecided() {
        for (int i = 0; i < 10; i++) {
            pass(Duration.ofMinutes(3), i % 2 == 0 ? "1" : "2", "-1.00");
        }
        assertFalse(seen.isEmpty());
        assertEquals(Fault.DEPOSIT_UNDECIDED, seen.getFirst().fault());
    }

    @Test
    void a_mirror_that_changed_twice_on_a_long_way_and_then_kept_its_deposit_has_decided() {
        pass(Duration.ofMinutes(4), "1", "3.00");
        pass(Duration.ofMinutes(4), "2", "-3.00");
        pass(Duration.ofHours(1), "1", "4.00");
        assertEquals(List.of(), seen);
    }
}
