// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.result.Reference.CertifiedPoint;
import java.util.List;
import java.util.Locale;

/**
 * A reference's certificate read at one place: the correction interpolated linearly between its points, the larger U of
 * the two neighbours, and half their step as what interpolation may miss (common practice, no source).
 */
record Certified(double correction, double expanded, double interpolation) {

    /**
     * The certificate at a reading.
     *
     * @throws IllegalArgumentException beyond the certified range, since nothing is known there
     */
    static Certified at(Reference reference, double reading) {
        List<CertifiedPoint> points = reference.traceability().points();
        CertifiedPoint below = points.getFirst();
        if (reading < below.at() || reading > points.getLast().at()) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s reads %.2f %s, but its certificate %s covers %.2f to %.2f only; use a reference that is"
                            + " certified there",
                    reference.title(),
                    reading,
                    reference.quantity().unit(),
                    reference.traceability().number(),
                    below.at(),
                    points.getLast().at()));
        }
        for (CertifiedPoint above : points) {
            if (reading <= above.at()) {
                return between(below, above, reading);
            }
            below = above;
        }
        throw new IllegalStateException("points of a certificate rise");
    }

    private static Certified between(CertifiedPoint below, CertifiedPoint above, double reading) {
        double step = above.correction() - below.correction();
        double share = above.at() > below.at() ? (reading - below.at()) / (above.at() - below.at()) : 0;
        return new Certified(
                below.correction() + share * step, Math.max(below.expanded(), above.expanded()), Math.abs(step) / 2);
    }
}
