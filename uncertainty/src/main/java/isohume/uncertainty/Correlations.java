// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import java.util.ArrayList;
import java.util.List;

/**
 * Correlation coefficients between pairs of inputs, named by symbol (GUM 5.2.2). Pairs that are not named are
 * uncorrelated.
 */
public record Correlations(List<Pair> pairs) {
    private static final Correlations NONE = new Correlations(List.of());
    private static final double ROUNDING = 1e-12; // a pivot this far below zero is arithmetic, not contradiction

    /** One coefficient, from -1 to 1. */
    public record Pair(String first, String second, double coefficient) {
        public Pair {
            if (!(coefficient >= -1 && coefficient <= 1)) {
                throw new IllegalArgumentException("the correlation of " + first + " and " + second
                        + " must lie between -1 and 1, was " + coefficient);
            }
            if (first.equals(second)) {
                throw new IllegalArgumentException("an input is correlated with itself by 1: " + first);
            }
        }

        private boolean joins(String one, String other) {
            return (first.equals(one) && second.equals(other)) || (first.equals(other) && second.equals(one));
        }
    }

    public Correlations {
        pairs = List.copyOf(pairs);
        for (int i = 0; i < pairs.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (pairs.get(i).joins(pairs.get(j).first(), pairs.get(j).second())) {
                    throw new IllegalArgumentException("the correlation of "
                            + pairs.get(i).first() + " and " + pairs.get(i).second() + " is given twice");
                }
            }
        }
    }

    public static Correlations none() {
        return NONE;
    }

    public static Correlations between(String first, String second, double coefficient) {
        return NONE.and(first, second, coefficient);
    }

    public Correlations and(String first, String second, double coefficient) {
        List<Pair> more = new ArrayList<>(pairs);
        more.add(new Pair(first, second, coefficient));
        return new Correlations(more);
    }

    /** The coefficient of two symbols, 1 for a symbol with itself, 0 if not named. */
    public double coefficient(String one, String other) {
        if (one.equals(other)) {
            return 1;
        }
        for (Pair pair : pairs) {
            if (pair.joins(one, other)) {
                return pair.coefficient();
            }
        }
        return 0;
    }

    /**
     * The lower triangle L with L·Lᵀ the correlation matrix in the order of the symbols.
     *
     * @throws IllegalArgumentException if a pair names an unknown symbol, or no quantities can be correlated like this
     */
    @CanIgnoreReturnValue
    public double[][] factor(List<String> symbols) {
        for (Pair pair : pairs) {
            requireKnown(pair, pair.first(), symbols);
            requireKnown(pair, pair.second(), symbols);
        }
        double[][] lower = new double[symbols.size()][];
        for (int row = 0; row < symbols.size(); row++) {
            lower[row] = row(row, lower, symbols);
        }
        return lower;
    }

    private double[] row(int row, double[][] lower, List<String> symbols) {
        double[] entries = new double[row + 1];
        double rest = 1;
        for (int column = 0; column < row; column++) {
            double sum = coefficient(symbols.get(row), symbols.get(column));
            for (int k = 0; k < column; k++) {
                sum -= entries[k] * lower[column][k];
            }
            double pivot = lower[column][column];
            if (pivot == 0 && Math.abs(sum) > Math.sqrt(ROUNDING)) {
                throw contradiction(symbols.get(row), symbols.get(column));
            }
            entries[column] = pivot == 0 ? 0 : sum / pivot;
            rest -= entries[column] * entries[column];
            if (rest < -ROUNDING) {
                throw contradiction(symbols.get(row), symbols.get(column));
            }
        }
        entries[row] = rest <= ROUNDING ? 0 : Math.sqrt(rest);
        return entries;
    }

    private IllegalArgumentException contradiction(String one, String other) {
        return new IllegalArgumentException("the correlation of " + one + " and " + other + ", "
                + coefficient(one, other) + ", contradicts the other correlations of " + one
                + ": the matrix is not positive semidefinite; correct one of them");
    }

    private static void requireKnown(Pair pair, String symbol, List<String> symbols) {
        if (!symbols.contains(symbol)) {
            throw new IllegalArgumentException("the correlation of " + pair.first() + " and " + pair.second()
                    + " names " + symbol + ", which is not an input; inputs are " + symbols);
        }
    }
}
