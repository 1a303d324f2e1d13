// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.fit;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.FDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * A least-squares polynomial. Inside, x is centred and scaled to ±1, because powers of raw x leave too few digits.
 *
 * <p>It has a value between the lowest and the highest x it was fitted to, and none outside: calibration curves are not
 * extrapolated.
 */
public final class Polynomial {
    private static final double SIGNIFICANT = 0.05;

    private final double[] x;
    private final double[] y;
    private final double centre;
    private final double halfRange;
    private final double[] scaled;
    private final RealMatrix inverse;
    private final double residualSquares;

    private Polynomial(double[] x, double[] y, int order) {
        this.x = x;
        this.y = y;
        double lowest = Arrays.stream(x).min().orElseThrow();
        double highest = Arrays.stream(x).max().orElseThrow();
        if (!(highest > lowest)) {
            throw new IllegalArgumentException("a polynomial takes points at different x, all were " + lowest);
        }
        this.centre = lowest + (highest - lowest) / 2;
        this.halfRange = (highest - lowest) / 2;
        QRDecomposition qr = new QRDecomposition(design(order));
        double offset = Points.mean(y);
        double[] found =
                qr.getSolver().solve(new ArrayRealVector(shifted(y, offset))).toArray();
        double[] correction = qr.getSolver()
                .solve(new ArrayRealVector(residuals(found, offset)))
                .toArray();
        Arrays.setAll(found, k -> found[k] + correction[k]); // one step of refinement
        this.residualSquares =
                Arrays.stream(residuals(found, offset)).map(r -> r * r).sum();
        found[0] += offset;
        this.scaled = found;
        RealMatrix root = new QRDecomposition(qr.getR().getSubMatrix(0, order, 0, order))
                .getSolver()
                .getInverse();
        this.inverse = root.multiplyTransposed(root);
    }

    /** A polynomial of a given order; takes at least two points more than it has coefficients. */
    public static Polynomial ofOrder(int order, double[] x, double[] y) {
        if (order < 0) {
            throw new IllegalArgumentException("a polynomial has order 0 or more, was asked for " + order);
        }
        Points.require(x, y, order + 2, "a polynomial of order " + order);
        return new Polynomial(x.clone(), y.clone(), order);
    }

    /**
     * The lowest order that the next two do not improve upon significantly (F test at 5 %), up to a highest order and
     * to fewer coefficients than points less two.
     */
    public static Polynomial ofBestOrder(int highest, double[] x, double[] y) {
        int limit = Math.min(highest, x.length - 4);
        if (limit < 0) {
            throw new IllegalArgumentException("choosing an order takes at least four points, got " + x.length);
        }
        Polynomial chosen = ofOrder(0, x, y);
        for (int order = 1; order <= limit; order++) {
            Polynomial next = ofOrder(order, x, y);
            if (next.improvesOn(chosen)) {
                chosen = next;
            } else if (order > chosen.order() + 1) {
                break;
            }
        }
        return chosen;
    }

    private boolean improvesOn(Polynomial lower) {
        int gained = order() - lower.order();
        double left = residualSquares / degreesOfFreedom();
        if (left == 0) {
            return lower.residualSquares > 0;
        }
        double f = (lower.residualSquares - residualSquares) / gained / left;
        return f > 0 && 1 - new FDistribution(gained, degreesOfFreedom()).cumulativeProbability(f) < SIGNIFICANT;
    }

    public int order() {
        return scaled.length - 1;
    }

    public int degreesOfFreedom() {
        return x.length - scaled.length;
    }

    /** The standard deviation of the points about the curve. */
    public double scatter() {
        return Math.sqrt(residualSquares / degreesOfFreedom());
    }

    /** What each point lies above the curve. */
    public List<Double> residuals() {
        return Arrays.stream(residuals(scaled, 0)).boxed().toList();
    }

    /** The value of the curve and its standard uncertainty from the scatter; x must lie within the fitted range. */
    public Estimate at(double where) {
        double z = (where - centre) / halfRange;
        if (!(Math.abs(z) <= 1 + 1e-12)) {
            throw new IllegalArgumentException("the curve was fitted from " + (centre - halfRange) + " to "
                    + (centre + halfRange) + " and is not extrapolated to " + where);
        }
        double[] powers = powers(z, order());
        double variance = 0;
        for (int i = 0; i < powers.length; i++) {
            for (int j = 0; j < powers.length; j++) {
                variance += powers[i] * inverse.getEntry(i, j) * powers[j];
            }
        }
        return new Estimate(horner(scaled, z), scatter() * Math.sqrt(Math.max(0, variance)));
    }

    /** The coefficients of raw x, lowest power first, with their standard uncertainties. */
    public List<Estimate> coefficients() {
        RealMatrix change = changeOfBasis();
        double[] raw = change.operate(scaled);
        RealMatrix covariance = change.multiply(inverse).multiplyTransposed(change);
        Estimate[] estimates = new Estimate[raw.length];
        for (int i = 0; i < raw.length; i++) {
            estimates[i] = new Estimate(raw[i], scatter() * Math.sqrt(Math.max(0, covariance.getEntry(i, i))));
        }
        return List.of(estimates);
    }

    /** Column j holds the coefficients of ((x - centre)/halfRange)^j. */
    private RealMatrix changeOfBasis() {
        int n = scaled.length;
        double[][] change = new double[n][n];
        change[0][0] = 1;
        for (int j = 1; j < n; j++) {
            for (int i = 0; i <= j; i++) {
                double fromLower = i > 0 ? change[i - 1][j - 1] : 0;
                change[i][j] = (fromLower - centre * change[i][j - 1]) / halfRange;
            }
        }
        return new Array2DRowRealMatrix(change, false);
    }

    private RealMatrix design(int order) {
        double[][] rows = new double[x.length][];
        for (int i = 0; i < x.length; i++) {
            rows[i] = powers((x[i] - centre) / halfRange, order);
        }
        return new Array2DRowRealMatrix(rows, false);
    }

    private double[] residuals(double[] coefficients, double offset) {
        double[] residuals = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            residuals[i] = y[i] - offset - horner(coefficients, (x[i] - centre) / halfRange);
        }
        return residuals;
    }

    private static double[] shifted(double[] values, double offset) {
        return Arrays.stream(values).map(value -> value - offset).toArray();
    }

    private static double[] powers(double z, int order) {
        double[] powers = new double[order + 1];
        powers[0] = 1;
        for (int i = 1; i <= order; i++) {
            powers[i] = powers[i - 1] * z;
        }
        return powers;
    }

    private static double horner(double[] coefficients, double z) {
        double value = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            value = value * z + coefficients[i];
        }
        return value;
    }
}
