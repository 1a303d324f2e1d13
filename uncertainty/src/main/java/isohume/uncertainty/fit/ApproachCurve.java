// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.fit;

import isohume.uncertainty.fit.ExponentialApproach.Term;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * The curve with its derivatives. Parameters are the steady value, then amplitude and rate 1/τ of each term; with a known
 * start the only amplitude is the start less the steady value and is not a parameter.
 */
final class ApproachCurve {
    private final int terms;
    private final boolean startIsKnown;
    private final double start;

    private ApproachCurve(int terms, boolean startIsKnown, double start) {
        this.terms = terms;
        this.startIsKnown = startIsKnown;
        this.start = start;
    }

    static ApproachCurve free(int terms) {
        return new ApproachCurve(terms, false, 0);
    }

    static ApproachCurve from(double start) {
        return new ApproachCurve(1, true, start);
    }

    int terms() {
        return terms;
    }

    private int count() {
        return startIsKnown ? 2 : 1 + 2 * terms;
    }

    private int rateIndex(int term) {
        return startIsKnown ? 1 : 2 + 2 * term;
    }

    private double amplitude(int term, double[] point) {
        return startIsKnown ? start - point[0] : point[1 + 2 * term];
    }

    MultivariateJacobianFunction over(double[] seconds) {
        return vector -> {
            double[] point = vector.toArray();
            double[] values = new double[seconds.length];
            double[][] jacobian = new double[seconds.length][];
            for (int i = 0; i < seconds.length; i++) {
                jacobian[i] = new double[count()];
                values[i] = valueAndDerivatives(seconds[i], point, jacobian[i]);
            }
            return new Pair<RealVector, RealMatrix>(
                    new ArrayRealVector(values, false), new Array2DRowRealMatrix(jacobian, false));
        };
    }

    private double valueAndDerivatives(double t, double[] point, double[] derivatives) {
        double value = point[0];
        derivatives[0] = 1;
        for (int term = 0; term < terms; term++) {
            double decay = StrictMath.exp(-t * point[rateIndex(term)]);
            double amplitude = amplitude(term, point);
            value += amplitude * decay;
            derivatives[rateIndex(term)] = -t * amplitude * decay;
            if (startIsKnown) {
                derivatives[0] -= decay;
            } else {
                derivatives[1 + 2 * term] = decay;
            }
        }
        return value;
    }

    /** Full parameters for given time constants, the linear ones by least squares. */
    double[] parameters(double[] constants, double[] seconds, double[] values) {
        double[] linear = linear(constants, seconds, values);
        double[] point = new double[count()];
        point[0] = linear[0];
        for (int term = 0; term < terms; term++) {
            point[rateIndex(term)] = 1 / constants[term];
            if (!startIsKnown) {
                point[1 + 2 * term] = linear[1 + term];
            }
        }
        return point;
    }

    /** The residual sum of squares left by the best linear parameters. */
    double squares(double[] constants, double[] seconds, double[] values) {
        double[] linear = linear(constants, seconds, values);
        RealVector residuals = basis(constants, seconds).operate(new ArrayRealVector(linear));
        residuals = residuals.subtract(new ArrayRealVector(target(constants, seconds, values)));
        return residuals.dotProduct(residuals);
    }

    private double[] linear(double[] constants, double[] seconds, double[] values) {
        RealMatrix basis = basis(constants, seconds);
        RealVector target = new ArrayRealVector(target(constants, seconds, values));
        QRDecomposition qr = new QRDecomposition(basis, 1e-10);
        return (qr.getSolver().isNonSingular()
                        ? qr.getSolver().solve(target)
                        : new SingularValueDecomposition(basis).getSolver().solve(target))
                .toArray();
    }

    private RealMatrix basis(double[] constants, double[] seconds) {
        double[][] rows = new double[seconds.length][];
        for (int i = 0; i < seconds.length; i++) {
            rows[i] = new double[startIsKnown ? 1 : 1 + terms];
            rows[i][0] = startIsKnown ? 1 - StrictMath.exp(-seconds[i] / constants[0]) : 1;
            for (int term = 0; term < terms && !startIsKnown; term++) {
                rows[i][1 + term] = StrictMath.exp(-seconds[i] / constants[term]);
            }
        }
        return new Array2DRowRealMatrix(rows, false);
    }

    private double[] target(double[] constants, double[] seconds, double[] values) {
        double[] target = values.clone();
        for (int i = 0; i < target.length && startIsKnown; i++) {
            target[i] -= start * StrictMath.exp(-seconds[i] / constants[0]);
        }
        return target;
    }

    Term term(int term, double[] point, RealMatrix covariance, double scatter) {
        Estimate rate = estimate(rateIndex(term), point, covariance, scatter);
        Estimate constant = new Estimate(1 / rate.value(), rate.standardUncertainty() / (rate.value() * rate.value()));
        Estimate steady = estimate(0, point, covariance, scatter);
        Estimate amplitude = startIsKnown
                ? new Estimate(start - steady.value(), steady.standardUncertainty())
                : estimate(1 + 2 * term, point, covariance, scatter);
        return new Term(amplitude, constant);
    }

    static Estimate estimate(int index, double[] point, RealMatrix covariance, double scatter) {
        double root = Math.sqrt(Math.max(0, covariance.getEntry(index, index)));
        return new Estimate(point[index], Double.isInfinite(root) ? root : scatter * root);
    }
}
