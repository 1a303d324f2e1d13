// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.quantity.Quantity;
import java.time.LocalDate;
import java.util.List;

/**
 * An instrument with a valid certificate.
 *
 * @param drift half-width of what it may have drifted since the certificate, in the quantity's difference unit
 * @param resolution half-width of its last digit and readout, in the quantity's difference unit
 */
public record Reference(
        String id,
        String title,
        String serial,
        Quantity quantity,
        Traceability traceability,
        double drift,
        double resolution) {

    /**
     * The certificate that the reference stands on.
     *
     * @param k the coverage factor that belongs to every point's U
     * @param points in rising order of {@code at}, at least one
     */
    public record Traceability(
            String number,
            String laboratory,
            LocalDate calibrated,
            LocalDate due,
            double k,
            List<CertifiedPoint> points) {
        public Traceability {
            points = List.copyOf(points);
            if (points.isEmpty()) {
                throw new IllegalArgumentException("certificate " + number + " has no points");
            }
        }
    }

    /**
     * One line of a certificate's table.
     *
     * @param at the reading that it is for, in the quantity's unit
     * @param correction what is added to the reading
     * @param expanded U of the correction
     */
    public record CertifiedPoint(double at, double correction, double expanded) {}
}
