// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

/**
 * How long to go on and what to compare.
 *
 * @param seed of the random numbers; part of the result
 * @param digits significant digits of the standard uncertainty that matter, 1 or 2 (JCGM 101, 7.9.2)
 * @param tightening the numerical tolerance is divided by this before deciding to stop: 5 when the budget is to be
 *     validated (8.2), 1 for a plain adaptive run (7.9.4)
 * @param maximumTrials at which to stop even if the result has not settled; bounds memory at about 10
 *     bytes a trial
 * @param parallel how many blocks to run side by side, 1 or more; does not change the result
 * @param kind which interval is compared and reported
 */
public record Settings(long seed, int digits, double tightening, int maximumTrials, int parallel, Kind kind) {
    /** Kinds of coverage interval (JCGM 101, 5.3). */
    public enum Kind {
        SYMMETRIC,
        SHORTEST
    }

    public Settings {
        if (digits < 1 || digits > 2) {
            throw new IllegalArgumentException("one or two significant digits can be asked for, were " + digits);
        }
        if (!(tightening >= 1) || parallel < 1 || maximumTrials < 1) {
            throw new IllegalArgumentException("tightening, parallel blocks and trials are 1 or more, were "
                    + tightening + ", " + parallel + ", " + maximumTrials);
        }
    }

    /** Validates a budget to one digit with a fifth of its tolerance, in at most two million trials on one thread. */
    public static Settings validating(long seed) {
        return new Settings(seed, 1, 5, 2_000_000, 1, Kind.SYMMETRIC);
    }

    public Settings inParallel(int blocks) {
        return new Settings(seed, digits, tightening, maximumTrials, blocks, kind);
    }
}
