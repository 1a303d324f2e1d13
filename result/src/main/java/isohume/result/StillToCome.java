// SPDX-License-Identifier: Apache-2.0
package isohume.result;

/**
 * What a signal was still expected to change, from its mean over a record to where it would end, when the record was
 * taken: an estimate with its uncertainty. Readings are not corrected for it.
 *
 * @param value in the quantity's difference unit
 * @param standardUncertainty in the same
 */
public record StillToCome(double value, double standardUncertainty) {
    public StillToCome {
        if (!Double.isFinite(value) || !(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
            throw new IllegalArgumentException("what is still to come must be finite and its uncertainty not negative,"
                    + " were " + value + " and " + standardUncertainty);
        }
    }

    /**
     * The standard uncertainty of a result that is not corrected for it: the root of the mean square of what may come.
     * Source: JCGM 100:2008, F.2.4.5, where a known correction is not applied.
     */
    public double ofUncorrected() {
        return Math.hypot(value, standardUncertainty);
    }
}
