// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.uncertainty.fit.Estimate;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LatenessTest {
    private final Lateness lateness = new Lateness();

    /** Ten windows; a truth from N(0, σ) seen with noise, the estimate shrunk towards 0 as a posterior is. */
    private double scaleOf(double sigma, double noise) {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 10; i++) {
            double seen = sigma * random.nextGaussian() + noise * random.nextGaussian();
            double weight = 1 / (1 + noise * noise); // assumed: 1
            lateness.learn(new Estimate(weight * seen, Math.sqrt(1 - weight)), lateness.scale());
        }
        return lateness.scale();
    }

    @Test
    void what_nothing_is_known_of_is_as_assumed() {
        assertEquals(1, lateness.scale());
    }

    @Test
    void windows_that_showed_nothing_teach_nothing_however_small_their_estimates() {
        for (int i = 0; i < 100; i++) {
            lateness.learn(new Estimate(0, 0.2), 0.2);
        }
        assertEquals(1, lateness.scale());
    }

    @Test
    void one_window_that_showed_all_halves_the_variance_of_what_owes_nothing() {
        lateness.learn(new Estimate(0, 0), 0.3); // (1 · 1² + 1 · 0²) / (1 + 1), by hand
        assertEquals(Math.sqrt(0.5), lateness.scale(), 1e-12);
    }

    @Test
    void one_window_that_showed_twice_what_was_assumed_widens_it() {
        lateness.learn(new Estimate(0.6, 0), 0.3); // (1 · 1² + 1 · 2²) / (1 + 1), by hand
        assertEquals(Math.sqrt(2.5), lateness.scale(), 1e-12);
    }

    @Test
    void an_instrument_that_owes_as_much_as_assumed_stays_near_it_and_one_that_owes_little_does_not() {
        double usual = scaleOf(1, 0.5);
        assertTrue(usual > 0.7 && usual < 1.5, "scale " + usual);
        double prompt = new LatenessTest().scaleOf(0.1, 0.5);
        assertTrue(prompt < 0.8 * usual, "scale " + prompt);
    }
}
