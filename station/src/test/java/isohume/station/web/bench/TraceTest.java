// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TraceTest {
    @Test
    void however_long_the_run_the_rows_are_bounded_in_order_and_cover_it() {
        Trace trace = new Trace(100);
        for (int second = 0; second < 100_000; second++) {
            trace.add(row(second));
        }
        List<Trace.Row> rows = trace.after(-1);
        assertTrue(rows.size() <= 100 && rows.size() >= 45, rows.size() + " rows");
        assertEquals(0, rows.get(0).second());
        assertTrue(
                rows.get(rows.size() - 1).second() > 97_000,
                "ends at " + rows.get(rows.size() - 1).second());
        for (int i = 1; i < rows.size(); i++) {
            assertTrue(rows.get(i).second() > rows.get(i - 1).second());
        }
    }

    @Test
    void only_what_is_later_is_given() {
        Trace trace = new Trace(100);
        List.of(1, 2, 3).forEach(second -> trace.add(row(second)));
        assertEquals(List.of(row(3)), trace.after(2));
        assertEquals(List.of(), trace.after(3));
    }

    @Test
    void the_last_hour_holds_an_hour() {
        Recent recent = new Recent();
        for (int second = 0; second <= 7200; second += 10) {
            recent.add(row(second));
        }
        List<Trace.Row> rows = recent.after(0);
        assertEquals(3600, rows.get(0).second());
        assertEquals(7200, rows.get(rows.size() - 1).second());
    }

    private static Trace.Row row(int second) {
        return new Trace.Row(second, List.of(1.0));
    }
}
