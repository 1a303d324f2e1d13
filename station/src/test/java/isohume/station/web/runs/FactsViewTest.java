// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.runs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import isohume.station.web.Clockface;
import isohume.station.web.InventedDesk;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class FactsViewTest {
    private static final Clockface UTC = new Clockface(ZoneOffset.UTC);

    @Test
    void turning_the_pages_shows_every_fact_once_and_in_words() {
        InventedDesk desk = new InventedDesk(new InventedDesk.Jumping());
        desk.carryOut();
        long expected = 1;
        long after = 0;
        while (after >= 0) {
            FactsView page = FactsView.of(InventedDesk.RUN, desk, after, UTC);
            for (FactsView.Row row : page.rows()) {
                assertEquals(expected++, row.number());
                assertFalse(row.kind().isBlank() || row.told().isBlank(), "fact " + row.number());
            }
            after = page.next();
        }
        assertEquals(desk.facts(InventedDesk.RUN, 0, Integer.MAX_VALUE).size(), expected - 1);
    }
}
