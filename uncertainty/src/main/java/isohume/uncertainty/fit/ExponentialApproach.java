// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.fit;

import java.util.List;

/**
 * The approach to a steady value: y = y∞ + Σ Aⱼ·exp(-t/τⱼ) with one or two time constants.
 *
 * <p>For given time constants the rest is linear, so they alone are searched: first on a grid from half the shortest
 * interval to ten times the record, then by Levenberg-Marquardt from the best place. A search from one guess can end
 * in a wrong place that looks right; the grid is what prevents it.
 *
 * @param steadyValue y∞
 * @param terms amplitudes and time constants, the faster first
 * @param scatter standard deviation of the readings about the curve
 * @param degreesOfFreedom readings less parameters
 * @param outcome whether the figures can be trusted
 */
public record ExponentialApproach(
        Estimate steadyValue, List<Term> terms, double scatter, int degreesOfFreedom, Outcome outcome) {
    /** One decaying part; the time constant is in seconds if the times were. */
    public record Term(Estimate amplitude, Estimate timeConstant) {
        double at(double seconds) {
            return amplitude.value() * StrictMath.exp(-seconds / timeConstant.value());
        }
    }

    /** What became of the fit. */
    public enum Outcome {
        /** A minimum inside the range of time constants the record can show. */
        FOUND,
        /** The best time constant lies at the edge of that range: the record is too short, too coarse or has no step. */
        NOT_SHOWN_BY_THE_RECORD
    }

    public ExponentialApproach {
        terms = List.copyOf(terms);
    }

    /** With one time constant; takes at least five readings. */
    public static ExponentialApproach single(double[] seconds, double[] values) {
        Points.require(seconds, values, 5, "an exponential approach");
        return ApproachSearch.free(seconds, values, 1);
    }

    /** With two time constants; takes at least eight readings. */
    public static ExponentialApproach twofold(double[] seconds, double[] values) {
        Points.require(seconds, values, 8, "an approach with two time constants");
        return ApproachSearch.free(seconds, values, 2);
    }

    /** With one time constant and a start at t = 0 that is known exactly; takes at least four readings. */
    public static ExponentialApproach fromKnownStart(double start, double[] seconds, double[] values) {
        Points.require(seconds, values, 4, "an exponential approach");
        return ApproachSearch.fromKnownStart(start, seconds, values);
    }

    /** The value of the curve at a time. */
    public double at(double seconds) {
        return steadyValue.value() + stillToCome(seconds);
    }

    /** What the curve lies above the steady value at a time: the change still to come, with its sign reversed. */
    public double stillToCome(double seconds) {
        double sum = 0;
        for (Term term : terms) {
            sum += term.at(seconds);
        }
        return sum;
    }
}
