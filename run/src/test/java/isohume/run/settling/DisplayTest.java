// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DisplayTest {
    private static final long SEED = 3;
    private static final double PLAIN = 1;

    private final SplittableRandom random = new SplittableRandom(SEED);
    private final Display display = new Display();

    private void show(int times, double reference, double scatter, double digit) {
        for (int i = 0; i < times; i++) {
            double at = reference + 0.02 * random.nextGaussian();
            display.take(Math.rint((at + scatter * random.nextGaussian()) / digit) * digit, digit, at, PLAIN);
        }
    }

    private void stand(int times, double value, double digit, double reference) {
        for (int i = 0; i < times; i++) {
            display.take(value, digit, reference + 0.02 * random.nextGaussian(), PLAIN);
        }
    }

    @Test
    void a_display_that_flickers_is_alive() {
        show(5000, 50, 0.03, 0.01);
        assertEquals(Optional.empty(), display.frozen());
    }

    @Test
    void a_coarse_display_that_stands_for_a_day_is_alive() {
        show(8640, 50, 0.01, 0.5);
        assertEquals(Optional.empty(), display.frozen());
    }

    @Test
    void a_coarse_display_that_flickered_at_one_point_may_stand_at_the_next() {
        show(300, 50.25, 0.03, 0.5);
        show(3000, 60, 0.03, 0.5);
        assertEquals(Optional.empty(), display.frozen());
    }

    @Test
    void a_display_that_keeps_its_figures_at_another_condition_is_frozen() {
        show(60, 50, 0.03, 0.1);
        stand(30, 50, 0.1, 50);
        stand(30, 50, 0.1, 62);
        assertTrue(display.frozen().isPresent());
    }

    @Test
    void a_display_that_never_stood_and_stands_is_frozen_until_it_moves() {
        show(300, 50, 0.03, 0.01);
        stand(100, 50.07, 0.01, 50);
        assertTrue(display.frozen().isPresent());
        show(2, 50, 0.03, 0.01);
        assertEquals(Optional.empty(), display.frozen());
    }
}
