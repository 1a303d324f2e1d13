// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.series;

/** Sums over readings that keep their digits when all readings share a large common part. */
final class Sums {
    private Sums() {}

    /** In two passes: the second adds the mean of what the first left over. */
    static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        double first = sum / values.length;
        double rest = 0;
        for (double value : values) {
            rest += value - first;
        }
        return first + rest / values.length;
    }

    /** The sum of squared deviations, freed from the rounding error of the mean. */
    static double squaresAbout(double mean, double[] values) {
        double squares = 0;
        double rest = 0;
        for (double value : values) {
            double deviation = value - mean;
            squares += deviation * deviation;
            rest += deviation;
        }
        return Math.max(0, squares - rest * rest / values.length);
    }

    /** The lag-1 autocorrelation about a mean; 0 when there is no spread. */
    static double lagOne(double mean, double[] values) {
        double products = 0;
        double squares = 0;
        for (int i = 0; i < values.length; i++) {
            double deviation = values[i] - mean;
            squares += deviation * deviation;
            if (i > 0) {
                products += deviation * (values[i - 1] - mean);
            }
        }
        return squares == 0 ? 0 : products / squares;
    }
}
