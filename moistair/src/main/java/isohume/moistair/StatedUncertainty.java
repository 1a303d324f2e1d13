// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * What a formula may be wrong by, as its source states it: one line of a budget.
 *
 * <p>Two values of one formula err together. In a relative humidity from a dew point over water the same equation
 * stands above and below the line, so taking both lines as independent is on the safe side.
 *
 * @param relative fraction of the value
 * @param coverage what kind of figure it is
 * @param basis whether the statement was read, remembered or computed
 * @param statement the statement in our words, with what it was compared with if computed
 */
public record StatedUncertainty(double relative, Coverage coverage, Basis basis, String statement) {
    /** What a published uncertainty is. */
    public enum Coverage {
        /** An expanded uncertainty, k = 2 or 95 %. */
        EXPANDED(2),
        /** A largest deviation, taken as the half-width of a rectangular distribution. */
        LIMIT(Math.sqrt(3)),
        /** Published without saying; taken for a standard uncertainty, to be on the safe side. */
        UNSTATED(1);

        private final double divisor;

        Coverage(double divisor) {
            this.divisor = divisor;
        }

        /** By what the figure is divided to become a standard uncertainty. */
        public double divisor() {
            return divisor;
        }
    }

    /** The relative standard uncertainty. */
    public double standard() {
        return relative / coverage.divisor();
    }
}
