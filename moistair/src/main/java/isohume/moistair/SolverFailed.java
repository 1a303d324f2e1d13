// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/** An inverse did not come to rest. It should never happen inside a formula's range: please report the numbers. */
public final class SolverFailed extends ArithmeticException {
    private static final long serialVersionUID = 1;
    private final double wanted;
    private final double last;
    private final double miss;
    private final int steps;

    SolverFailed(double wanted, double last, double miss, int steps) {
        super("no solution for " + wanted + " after " + steps + " steps; the last try, at " + last + " K, missed by "
                + miss + ". Please report these numbers.");
        this.wanted = wanted;
        this.last = last;
        this.miss = miss;
        this.steps = steps;
    }

    /** The value that was looked for, in the terms of the solver (a logarithm of Pa, or Pa). */
    public double wanted() {
        return wanted;
    }

    /** The last temperature tried, in kelvin. */
    public double last() {
        return last;
    }

    /** Value at the last temperature minus the wanted one. */
    public double miss() {
        return miss;
    }

    public int steps() {
        return steps;
    }
}
