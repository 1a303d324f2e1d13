// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.uncertainty.fit.Estimate;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TailTest {
    private static final long SEED = 20260302;

    @ParameterizedTest(name = "after {0} s")
    @ValueSource(ints = {300, 480, 720, 1200, 2400})
    void the_uncertainty_of_what_is_to_come_covers_the_truth(int seconds) {
        System.out.println("seed " + SEED);
        SplittableRandom random = new SplittableRandom(SEED);
        int covered = 0;
        for (int i = 0; i < 500; i++) {
            KnownTail known = new KnownTail(random.split());
            known.passTo(seconds);
            Estimate found = known.outlook().orElseThrow().toCome();
            double e = found.value() - known.trueToCome();
            covered += Math.abs(e) <= 2 * found.standardUncertainty() ? 1 : 0;
        }
        assertTrue(covered >= 450, "covered " + covered + " of 500, seed " + SEED);
    }

    @Test
    void what_is_left_of_a_settled_signal_exceeds_its_limit_no_more_often_than_stated() {
        System.out.println("seed " + SEED);
        SplittableRandom random = new SplittableRandom(SEED);
        int beyond = 0;
        int farBeyond = 0;
        for (int i = 0; i < 500; i++) {
            KnownTail known = new KnownTail(random.split());
            double limit = 0.05 + 0.15 * random.nextDouble();
            known.passUntilSettled(limit);
            beyond += Math.abs(known.trueToCome()) > limit ? 1 : 0;
            farBeyond += Math.abs(known.trueToCome()) > 2 * limit ? 1 : 0;
        }
        assertTrue(beyond <= 160, beyond + " of 500 beyond the limit, 32 % are stated");
        assertTrue(farBeyond <= 25, farBeyond + " of 500 beyond twice the limit, 5 % are stated");
    }
}
