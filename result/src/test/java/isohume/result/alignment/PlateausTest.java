// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.result.alignment.Plateaus.Use;
import isohume.result.alignment.Plateaus.Window;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlateausTest {
    /** The logger is 100 s ahead, give or take 20 s. */
    private static final Alignment.Found CLOCKS = new Alignment.Found(100, 20, 0, 0, 0, "known");

    private static final List<Window> WINDOWS = List.of(new Window(1, 0, 1000), new Window(2, 2000, 3000));

    @Test
    void a_reading_in_the_middle_of_a_plateau_belongs_to_its_point() {
        Use.OfPoint use = assertInstanceOf(Use.OfPoint.class, use(600));
        assertEquals(1, use.point());
        assertEquals(500, use.seconds());
    }

    @Test
    void guards_of_an_interval_and_the_clocks_doubt_are_kept_at_both_ends() {
        assertInstanceOf(Use.OfPoint.class, use(180)); // 80 s after the beginning: 60 s and 20 s
        Use.None first = assertInstanceOf(Use.None.class, use(179));
        assertTrue(first.why().startsWith("within the guard at the beginning of point 1"), first.why());
        assertInstanceOf(Use.OfPoint.class, use(1020));
        Use.None last = assertInstanceOf(Use.None.class, use(1021));
        assertTrue(last.why().startsWith("within the guard at the end of point 1"), last.why());
    }

    @Test
    void a_reading_between_plateaus_is_not_used() {
        Use.None none = assertInstanceOf(Use.None.class, use(1600));
        assertTrue(none.why().startsWith("at no point"), none.why());
    }

    private static Use use(double logger) {
        return Plateaus.of(WINDOWS, CLOCKS, new double[] {logger}, 60).getFirst();
    }
}
