// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.fit;

import java.util.Arrays;

/**
 * A straight line y = a + b·x with the full covariance of its parameters. Units are those of the points.
 *
 * <p>It is kept as a level at a centre and a slope, which are uncorrelated, so that nothing is lost when the points lie
 * far from x = 0.
 *
 * @param centre weighted mean of x
 * @param level value of the line at the centre
 * @param slope b
 * @param levelUncertainty standard uncertainty of the level
 * @param slopeUncertainty standard uncertainty of the slope
 * @param chiSquared sum of squared weighted residuals; unweighted if no uncertainties were given
 * @param degreesOfFreedom number of points less two
 */
public record StraightLine(
        double centre,
        double level,
        double slope,
        double levelUncertainty,
        double slopeUncertainty,
        double chiSquared,
        int degreesOfFreedom) {
    private static final int LEAST_POINTS = 3;

    /** By ordinary least squares; uncertainties follow from the scatter about the line (GUM H.3). */
    public static StraightLine unweighted(double[] x, double[] y) {
        double[] equal = new double[x.length];
        Arrays.fill(equal, 1);
        return weighted(x, y, equal).scaledByScatter();
    }

    /** By weighted least squares with known standard uncertainties of y (ISO/TS 28037:2010, clause 6). */
    public static StraightLine weighted(double[] x, double[] y, double[] uy) {
        Points.require(x, y, LEAST_POINTS, "a straight line");
        Points.requireUncertainties(uy, x.length, "y");
        double[] weights = new double[x.length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = 1 / (uy[i] * uy[i]);
        }
        return solve(x, y, weights);
    }

    /** As {@link #weighted}, but the uncertainties are only right in proportion; their size follows from the scatter. */
    public static StraightLine weightedRelatively(double[] x, double[] y, double[] uy) {
        return weighted(x, y, uy).scaledByScatter();
    }

    /** With known standard uncertainties in both axes, uncorrelated (ISO/TS 28037:2010, clause 7). */
    public static StraightLine errorsInBothAxes(double[] x, double[] ux, double[] y, double[] uy) {
        Points.require(x, y, LEAST_POINTS, "a straight line");
        Points.requireUncertainties(ux, x.length, "x");
        Points.requireUncertainties(uy, x.length, "y");
        return DistanceRegression.fit(x, ux, y, uy);
    }

    static StraightLine solve(double[] x, double[] y, double[] weights) {
        double total = 0;
        double xSum = 0;
        double ySum = 0;
        for (int i = 0; i < x.length; i++) {
            total += weights[i];
            xSum += weights[i] * (x[i] - x[0]);
            ySum += weights[i] * (y[i] - y[0]);
        }
        double centre = x[0] + xSum / total;
        double level = y[0] + ySum / total;
        double squares = 0;
        double products = 0;
        for (int i = 0; i < x.length; i++) {
            squares += weights[i] * (x[i] - centre) * (x[i] - centre);
            products += weights[i] * (x[i] - centre) * (y[i] - level);
        }
        if (!(squares > 0)) {
            throw new IllegalArgumentException("a straight line takes points at different x, all were " + x[0]);
        }
        double slope = products / squares;
        StraightLine line =
                new StraightLine(centre, level, slope, Math.sqrt(1 / total), Math.sqrt(1 / squares), 0, x.length - 2);
        return line.withChiSquaredOf(x, y, weights);
    }

    private StraightLine withChiSquaredOf(double[] x, double[] y, double[] weights) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            double residual = y[i] - level - slope * (x[i] - centre);
            sum += weights[i] * residual * residual;
        }
        return new StraightLine(centre, level, slope, levelUncertainty, slopeUncertainty, sum, degreesOfFreedom);
    }

    private StraightLine scaledByScatter() {
        double s = Math.sqrt(chiSquared / degreesOfFreedom);
        return new StraightLine(
                centre, level, slope, levelUncertainty * s, slopeUncertainty * s, chiSquared, degreesOfFreedom);
    }

    /** a, the value at x = 0. */
    public Estimate intercept() {
        return at(0);
    }

    /** The covariance of intercept and slope. */
    public double covariance() {
        return -centre * slopeUncertainty * slopeUncertainty;
    }

    /** The correlation coefficient of intercept and slope. */
    public double correlation() {
        return covariance() / (intercept().standardUncertainty() * slopeUncertainty);
    }

    /** The scatter about the line: √(χ²/ν). The standard deviation of a reading if the points were unweighted. */
    public double scatter() {
        return Math.sqrt(chiSquared / degreesOfFreedom);
    }

    /** The value of the line. */
    public Estimate at(double x) {
        double distance = x - centre;
        return new Estimate(level + slope * distance, StrictMath.hypot(levelUncertainty, slopeUncertainty * distance));
    }

    /** The x at which the line has a measured value of its own uncertainty (ISO/TS 28037:2010, clause 11). */
    public Estimate whereItIs(double y, double uy) {
        if (slope == 0) {
            throw new IllegalArgumentException("a level line has no x for y = " + y);
        }
        double x = centre + (y - level) / slope;
        double u = StrictMath.hypot(uy, at(x).standardUncertainty()) / Math.abs(slope);
        return new Estimate(x, u);
    }
}
