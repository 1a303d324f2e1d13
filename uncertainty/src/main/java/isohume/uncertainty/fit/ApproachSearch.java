// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.fit;

import isohume.uncertainty.fit.ExponentialApproach.Outcome;
import isohume.uncertainty.fit.ExponentialApproach.Term;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;

/** Looks for time constants on a grid and refines the best. */
final class ApproachSearch {
    private static final int GRID =
            40; // places from the shortest to the longest time constant, evenly in the logarithm
    private static final double SHORTEST_OF_INTERVAL = 0.5;
    private static final double LONGEST_OF_RECORD = 10;
    private static final double ACCURACY = 1e-15;
    private static final double SINGULAR = 1e-30; // rates and values differ widely in size
    private static final int MOST_EVALUATIONS = 10_000;
    private static final int MOST_POLISHING = 50;

    private final double[] seconds;
    private final double[] values;
    private final ApproachCurve curve;
    private final double shortest;
    private final double longest;

    private ApproachSearch(double[] seconds, double[] values, ApproachCurve curve) {
        this.seconds = seconds;
        this.values = values;
        this.curve = curve;
        double[] sorted = seconds.clone();
        Arrays.sort(sorted);
        double interval = Double.POSITIVE_INFINITY;
        for (int i = 1; i < sorted.length; i++) {
            if (sorted[i] > sorted[i - 1]) {
                interval = Math.min(interval, sorted[i] - sorted[i - 1]);
            }
        }
        if (Double.isInfinite(interval)) {
            throw new IllegalArgumentException("an approach takes readings at different times, all were " + sorted[0]);
        }
        this.shortest = SHORTEST_OF_INTERVAL * interval;
        this.longest = LONGEST_OF_RECORD * (sorted[sorted.length - 1] - sorted[0]);
    }

    static ExponentialApproach free(double[] seconds, double[] values, int terms) {
        return new ApproachSearch(seconds, values, ApproachCurve.free(terms)).fit();
    }

    static ExponentialApproach fromKnownStart(double start, double[] seconds, double[] values) {
        return new ApproachSearch(seconds, values, ApproachCurve.from(start)).fit();
    }

    private ExponentialApproach fit() {
        double[] start = curve.parameters(bestOnGrid(), seconds, values);
        try {
            double[] found = polished(optimum(start).getPoint().toArray());
            RealMatrix root =
                    new QRDecomposition(jacobian(found), SINGULAR).getSolver().getInverse();
            return approach(found, root.multiplyTransposed(root), Outcome.FOUND);
        } catch (MathIllegalArgumentException | MathIllegalStateException notConverged) {
            double[][] unknown = new double[start.length][start.length];
            for (double[] row : unknown) {
                Arrays.fill(row, Double.POSITIVE_INFINITY);
            }
            return approach(start, new Array2DRowRealMatrix(unknown, false), Outcome.NOT_SHOWN_BY_THE_RECORD);
        }
    }

    private Optimum optimum(double[] start) {
        return new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(ACCURACY)
                .withParameterRelativeTolerance(ACCURACY)
                .withOrthoTolerance(ACCURACY)
                .optimize(new LeastSquaresBuilder()
                        .start(start)
                        .model(curve.over(seconds))
                        .target(values)
                        .maxEvaluations(MOST_EVALUATIONS)
                        .maxIterations(MOST_EVALUATIONS)
                        .build());
    }

    /** Gauss-Newton steps while they shrink: the last digits, which the optimizer's own criteria leave open. */
    private double[] polished(double[] found) {
        double[] point = found;
        double before = Double.POSITIVE_INFINITY;
        for (int i = 0; i < MOST_POLISHING; i++) {
            RealVector step =
                    new QRDecomposition(jacobian(point), SINGULAR).getSolver().solve(residuals(point));
            double size = 0;
            double[] next = point.clone();
            for (int k = 0; k < next.length; k++) {
                next[k] += step.getEntry(k);
                size = Math.max(size, Math.abs(step.getEntry(k) / next[k]));
            }
            if (!(size < before)) {
                return point;
            }
            point = next;
            before = size;
        }
        return point;
    }

    private RealMatrix jacobian(double[] point) {
        return curve.over(seconds).value(new ArrayRealVector(point)).getSecond();
    }

    private RealVector residuals(double[] point) {
        return new ArrayRealVector(values)
                .subtract(curve.over(seconds).value(new ArrayRealVector(point)).getFirst());
    }

    private double[] bestOnGrid() {
        List<double[]> candidates = new ArrayList<>();
        for (int i = 0; i < GRID; i++) {
            if (curve.terms() == 1) {
                candidates.add(new double[] {onGrid(i)});
            }
            for (int j = i + 1; j < GRID && curve.terms() == 2; j++) {
                candidates.add(new double[] {onGrid(i), onGrid(j)});
            }
        }
        return candidates.stream()
                .min(Comparator.comparingDouble(constants -> curve.squares(constants, seconds, values)))
                .orElseThrow();
    }

    private double onGrid(int index) {
        return shortest * StrictMath.pow(longest / shortest, (double) index / (GRID - 1));
    }

    private ExponentialApproach approach(double[] point, RealMatrix covariance, Outcome outcome) {
        int freedom = values.length - point.length;
        double scatter = residuals(point).getNorm() / Math.sqrt(freedom);
        List<Term> terms = new ArrayList<>();
        boolean inside = outcome == Outcome.FOUND;
        for (int term = 0; term < curve.terms(); term++) {
            terms.add(curve.term(term, point, covariance, scatter));
            double constant = terms.getLast().timeConstant().value();
            inside &= constant > shortest && constant < longest;
        }
        terms.sort(Comparator.comparingDouble(term -> term.timeConstant().value()));
        return new ExponentialApproach(
                ApproachCurve.estimate(0, point, covariance, scatter),
                terms,
                scatter,
                freedom,
                inside ? Outcome.FOUND : Outcome.NOT_SHOWN_BY_THE_RECORD);
    }
}
