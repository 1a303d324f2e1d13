// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.fit;

/**
 * Generalized distance regression for a straight line.
 *
 * <p>Minimises Σ (xᵢ - Xᵢ)²/u²(xᵢ) + (yᵢ - a - b·Xᵢ)²/u²(yᵢ) over a, b and the Xᵢ. For a given slope each Xᵢ is known, so
 * the slope is iterated: a weighted line through the points as adjusted, whose fixed point is the minimum. The
 * covariance is that of the adjusted points, as in ISO/TS 28037:2010, clause 7; a definition by observed points differs
 * by a few percent when the points scatter.
 */
final class DistanceRegression {
    private static final int MOST_ITERATIONS = 1000;
    private static final double STANDSTILL = 1e-14;

    private DistanceRegression() {}

    static StraightLine fit(double[] x, double[] ux, double[] y, double[] uy) {
        StraightLine line = StraightLine.weighted(x, y, uy);
        for (int iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
            StraightLine next = step(line, x, ux, y, uy);
            if (Math.abs(next.slope() - line.slope()) <= STANDSTILL * Math.abs(next.slope())) {
                return next;
            }
            line = next;
        }
        throw new IllegalArgumentException("no straight line was found in " + MOST_ITERATIONS
                + " steps; the uncertainties in x may exceed the range of x");
    }

    /** York's step: b = Σ w·β·(y - ȳ) / Σ w·β·(x - x̄), where x̄ + β is the adjusted x. */
    private static StraightLine step(StraightLine line, double[] x, double[] ux, double[] y, double[] uy) {
        double b = line.slope();
        double[] weights = weights(b, ux, uy);
        double xMean = mean(x, weights);
        double yMean = mean(y, weights);
        double[] adjusted = new double[x.length];
        double upper = 0;
        double lower = 0;
        for (int i = 0; i < x.length; i++) {
            double dx = x[i] - xMean;
            double dy = y[i] - yMean;
            double beta = weights[i] * (dx * uy[i] * uy[i] + b * dy * ux[i] * ux[i]);
            adjusted[i] = xMean + beta;
            upper += weights[i] * beta * dy;
            lower += weights[i] * beta * dx;
        }
        return line(upper / lower, adjusted, xMean, yMean, weights, x, y);
    }

    private static StraightLine line(
            double slope, double[] adjusted, double xMean, double yMean, double[] weights, double[] x, double[] y) {
        double total = 0;
        double squares = 0;
        double chiSquared = 0;
        double centre = mean(adjusted, weights);
        for (int i = 0; i < x.length; i++) {
            total += weights[i];
            squares += weights[i] * (adjusted[i] - centre) * (adjusted[i] - centre);
            double residual = y[i] - yMean - slope * (x[i] - xMean);
            chiSquared += weights[i] * residual * residual;
        }
        return new StraightLine(
                centre,
                yMean + slope * (centre - xMean),
                slope,
                Math.sqrt(1 / total),
                Math.sqrt(1 / squares),
                chiSquared,
                x.length - 2);
    }

    private static double[] weights(double slope, double[] ux, double[] uy) {
        double[] weights = new double[ux.length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = 1 / (uy[i] * uy[i] + slope * slope * ux[i] * ux[i]);
        }
        return weights;
    }

    private static double mean(double[] values, double[] weights) {
        double sum = 0;
        double total = 0;
        for (int i = 0; i < values.length; i++) {
            sum += weights[i] * (values[i] - values[0]);
            total += weights[i];
        }
        return values[0] + sum / total;
    }
}
