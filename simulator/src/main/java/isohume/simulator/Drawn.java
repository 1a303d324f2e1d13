// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/**
 * A systematic part that is drawn once for a seed, changes slowly with the condition, and has the same distribution at
 * every condition. The condition is given in steps over which two values have little to do with each other.
 */
interface Drawn {
    double at(double condition);

    /** Evenly between -1 and 1: a triangle wave of random phase. */
    static Drawn rectangular(Chance chance) {
        double phase = chance.share();
        double rate = chance.rectangular() / 4;
        return condition -> triangle(phase + rate * condition);
    }

    /** Mean 0, standard deviation 1: two independent draws, turned into each other. */
    static Drawn normal(Chance chance) {
        double here = chance.normal();
        double there = chance.normal();
        return condition -> {
            double angle = condition * StrictMath.PI / 2;
            return here * StrictMath.cos(angle) + there * StrictMath.sin(angle);
        };
    }

    private static double triangle(double cycles) {
        return 4 * Math.abs(cycles - Math.floor(cycles) - 0.5) - 1;
    }
}
