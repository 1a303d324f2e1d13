// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.uncertainty.Budget;
import isohume.uncertainty.montecarlo.MonteCarlo;
import isohume.uncertainty.montecarlo.Propagation;
import isohume.uncertainty.montecarlo.Settings;
import java.nio.charset.StandardCharsets;

/**
 * The budget beside the Monte Carlo method, for each result (JCGM 101, clause 8): one significant digit of u, settled to a
 * fifth of its tolerance (7.9.4 and 8.2). Who asks for the same result again draws the same numbers.
 */
final class BothMethods {
    private static final int MOST_TRIALS =
            400_000; // settles in 100 000 to 280 000; the bound is for t without variance
    private static final int LANES = 2; // does not change the result
    private static final long OFFSET = 0xcbf29ce484222325L;
    private static final long PRIME = 0x100000001b3L;

    private BothMethods() {}

    /**
     * Compares.
     *
     * @param names what the seed is made from: whose result it is
     */
    static Propagation of(Budget budget, String... names) {
        Settings usual = Settings.validating(seed(names));
        return MonteCarlo.propagate(
                budget,
                new Settings(usual.seed(), usual.digits(), usual.tightening(), MOST_TRIALS, LANES, usual.kind()));
    }

    /** FNV-1a of 64 bits, of which 53 are kept, so that every reader of JSON has them exactly. */
    static long seed(String... names) {
        long hash = OFFSET;
        for (byte octet : String.join("\n", names).getBytes(StandardCharsets.UTF_8)) {
            hash = (hash ^ (octet & 0xff)) * PRIME;
        }
        return hash >>> 11;
    }
}
