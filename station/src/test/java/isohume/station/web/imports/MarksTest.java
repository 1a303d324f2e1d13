// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.imports;

import static org.junit.jupiter.api.Assertions.assertEquals;

import isohume.station.web.imports.Marks.Mark;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

class MarksTest {
    @Test
    void hours_are_marked_and_the_date_where_it_changes() {
        double from = Instant.parse("2026-03-31T21:30:00Z").getEpochSecond();
        assertEquals(
                List.of(
                        new Mark("75.0", "22:00", "2026-03-31"),
                        new Mark("225.0", "23:00", ""),
                        new Mark("375.0", "00:00", "2026-04-01"),
                        new Mark("525.0", "01:00", ""),
                        new Mark("675.0", "02:00", ""),
                        new Mark("825.0", "03:00", "")),
                Marks.times(from, from + 6 * 3600, 900, ZoneOffset.UTC));
    }

    @Test
    void days_are_marked_by_the_clock_of_the_zone() {
        double from = Instant.parse("2026-07-01T12:00:00Z").getEpochSecond();
        List<Mark> marks = Marks.times(from, from + 3 * 86_400, 900, ZoneId.of("Europe/Berlin"));
        assertEquals(new Mark("125.0", "00:00", "2026-07-02"), marks.getFirst()); // 10 h after 14:00, of 72 h
        assertEquals(new Mark("275.0", "12:00", ""), marks.get(1));
    }

    @Test
    void values_are_round_and_go_upwards() {
        assertEquals(
                List.of("20 260.0", "30 208.0", "40 156.0", "50 104.0", "60 52.0", "70 0.0"),
                Marks.values(20, 70, 260).stream()
                        .map(m -> m.label() + " " + m.place())
                        .toList());
        assertEquals(
                List.of("20.5", "21.0", "21.5", "22.0"),
                Marks.values(20.3, 22.1, 260).stream().map(Mark::label).toList());
    }
}
