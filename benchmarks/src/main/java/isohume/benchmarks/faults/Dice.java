// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.faults;

import java.util.Random;

/** Chance from a seed. */
final class Dice {
    private final Random random;

    Dice(long seed) {
        random = new Random(seed * 0x9E3779B97F4A7C15L + 1);
    }

    double uniform(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** Both ends included. */
    int whole(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    int sign() {
        return random.nextBoolean() ? 1 : -1;
    }

    /** Between two lengths, short ones as often as long ones. */
    double logarithmic(double least, double most) {
        return least * Math.pow(most / least, random.nextDouble());
    }
}
