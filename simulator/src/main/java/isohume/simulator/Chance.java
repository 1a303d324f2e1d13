// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import java.util.Random;

/**
 * A stream of random numbers that belongs to one name of one seed, so that a new instrument does not shift the luck of
 * the others. {@link Random} is used because its numbers are laid down in its contract, bit for bit.
 */
final class Chance {
    private final Random random;

    private Chance(long seed) {
        random = new Random(seed);
    }

    static Chance of(long seed, String name) {
        return new Chance(mix(mix(seed) + name.hashCode()));
    }

    /** Evenly between 0 and 1. */
    double share() {
        return random.nextDouble();
    }

    /** Evenly between -1 and 1. */
    double rectangular() {
        return 2 * random.nextDouble() - 1;
    }

    /** Mean 0, standard deviation 1. */
    double normal() {
        return random.nextGaussian();
    }

    /** The finaliser of SplitMix64: neighbouring seeds shall not give alike streams. */
    private static long mix(long value) {
        long z = value + 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
