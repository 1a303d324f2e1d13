// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.Quantity;
import isohume.run.Waiting;
import isohume.station.web.Clockface;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class WedgeTest {
    private static final Instant ASKED = Instant.parse("2026-03-02T08:00:00Z");
    private static final Instant NOW = ASKED.plusSeconds(600);

    private static Waiting waiting(String name, double measured, Optional<Duration> left) {
        return new Waiting(
                name,
                Quantity.RELATIVE_HUMIDITY,
                true,
                OptionalDouble.of(0.4),
                List.of(new Waiting.Criterion(Waiting.Kind.TO_COME, measured, 0.1)),
                left,
                Optional.empty(),
                "");
    }

    private static String drawn(List<Waiting> waiting) {
        List<Double> ratios = waiting.stream().map(w -> 30.0).toList();
        List<Trace.Row> rows = List.of(new Trace.Row(ASKED.getEpochSecond() + 120, ratios));
        return Wedge.of(rows, waiting, ASKED, NOW, new Clockface(ZoneOffset.UTC), "what moves")
                .toString();
    }

    @Test
    void every_channel_has_a_line_and_the_time_of_its_crossing() {
        String svg = drawn(List.of(
                waiting("A-1 relative humidity − reference", 0.4, Optional.of(Duration.ofMinutes(12))),
                waiting("B-2 relative humidity − reference", 0.05, Optional.of(Duration.ZERO)),
                waiting("C-3 relative humidity − reference", 0.3, Optional.empty())));
        assertEquals(3, svg.split("class=\"difference", -1).length - 1);
        assertTrue(svg.contains("A-1 RH: 08:22"), svg);
        assertTrue(svg.contains("B-2 RH: settled"), svg);
        assertTrue(svg.contains("C-3 RH: not known"), svg);
        assertEquals(1, svg.split("class=\"ahead", -1).length - 1);
        assertTrue(svg.contains("role=\"img\" aria-label=\"what moves\""), svg);
    }

    @Test
    void labels_never_lie_over_one_another() {
        String svg = drawn(java.util.stream.IntStream.range(0, 12)
                .mapToObj(i -> waiting("P-" + i + " relative humidity − reference", 0.1, Optional.of(Duration.ZERO)))
                .toList());
        Matcher at = Pattern.compile("class=\"name [^>]* y=\"([0-9.]+)\"").matcher(svg);
        double before = Double.NEGATIVE_INFINITY;
        while (at.find()) {
            double y = Double.parseDouble(at.group(1));
            assertTrue(y - before > 12, svg);
            before = y;
        }
        assertTrue(before < 292, "the last is still in the picture, at " + before);
    }

    @Test
    void nothing_is_drawn_while_nothing_is_judged() {
        Waiting none = new Waiting(
                "dew point",
                Quantity.DEW_POINT,
                false,
                OptionalDouble.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                "");
        assertEquals("", drawn(List.of(none)));
        assertFalse(drawn(List.of(waiting("A", 1, Optional.empty()))).isEmpty());
    }
}
