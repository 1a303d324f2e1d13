// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.comparison;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.FDistribution;

/**
 * Analysis of variance of readings in groups: days, places in a chamber, items (GUM H.5). Sums are formed about the
 * overall mean in two passes, so that a large common part of the readings costs no digits.
 *
 * @param grandMean mean of all readings
 * @param betweenSquares sum of squares of the group means about the grand mean, weighted by group size
 * @param withinSquares sum of squares of the readings about their group means
 * @param betweenFreedom number of groups less one
 * @param withinFreedom number of readings less number of groups
 * @param typicalGroupSize readings per group, or its equivalent for groups of different size
 */
public record OneWayVariance(
        double grandMean,
        double betweenSquares,
        double withinSquares,
        int betweenFreedom,
        int withinFreedom,
        double typicalGroupSize) {
    /** Takes at least two groups and more readings than groups. */
    public static OneWayVariance of(List<double[]> groups) {
        int readings = groups.stream().mapToInt(group -> group.length).sum();
        if (groups.size() < 2 || readings <= groups.size() || groups.stream().anyMatch(group -> group.length == 0)) {
            throw new IllegalArgumentException("an analysis of variance takes two groups or more and some repeats, got "
                    + groups.size() + " groups with " + readings + " readings");
        }
        double grandMean = mean(groups.stream().flatMapToDouble(Arrays::stream).toArray());
        double between = 0;
        double within = 0;
        double sizes = 0;
        for (double[] group : groups) {
            double deviation = meanDeviation(group, grandMean);
            between += group.length * deviation * deviation;
            sizes += (double) group.length * group.length;
            for (double reading : group) {
                double residual = reading - grandMean - deviation;
                within += residual * residual;
            }
        }
        double typical = (readings - sizes / readings) / (groups.size() - 1);
        return new OneWayVariance(grandMean, between, within, groups.size() - 1, readings - groups.size(), typical);
    }

    public double betweenMeanSquare() {
        return betweenSquares / betweenFreedom;
    }

    public double withinMeanSquare() {
        return withinSquares / withinFreedom;
    }

    /** The ratio of the mean squares. */
    public double f() {
        return betweenMeanSquare() / withinMeanSquare();
    }

    /** The probability of a ratio at least as large if the groups do not differ. */
    public double probabilityIfEqual() {
        return 1 - new FDistribution(betweenFreedom, withinFreedom).cumulativeProbability(f());
    }

    /** The standard deviation between groups, freed from that within them; zero if the groups do not stand out. */
    public double betweenDeviation() {
        return Math.sqrt(Math.max(0, (betweenMeanSquare() - withinMeanSquare()) / typicalGroupSize));
    }

    public double withinDeviation() {
        return Math.sqrt(withinMeanSquare());
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        double first = sum / values.length;
        return first + meanDeviation(values, first);
    }

    private static double meanDeviation(double[] values, double about) {
        double sum = 0;
        for (double value : values) {
            sum += value - about;
        }
        return sum / values.length;
    }
}
