// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * What may still come by what was done to a signal, whether or not it shows yet: shares of what its drivers did. An
 * assumption, held until readings say otherwise.
 */
public final class Owed {
    private record Part(DoubleSupplier share, Lagged driver, DoubleSupplier most) {}

    private final List<Part> parts;

    private Owed(List<Part> parts) {
        this.parts = List.copyOf(parts);
    }

    public static Owed nothing() {
        return new Owed(List.of());
    }

    /**
     * And a share of how far a driver's followers are behind it.
     *
     * @param share standard deviation of the share as it is now, in the signal's unit per unit of the driver
     */
    public Owed and(DoubleSupplier share, Lagged driver) {
        return and(share, driver, () -> Double.POSITIVE_INFINITY);
    }

    /**
     * The same where something else tells of it too.
     *
     * @param most that it can be by that, in the signal's unit
     */
    public Owed and(DoubleSupplier share, Lagged driver, DoubleSupplier most) {
        List<Part> more = new ArrayList<>(parts);
        more.add(new Part(share, driver, most));
        return new Owed(more);
    }

    /** Standard deviation of what is owed, by time constant. */
    double[] now() {
        double[] all = new double[TimeConstants.COUNT];
        for (Part part : parts) {
            double share = Math.abs(part.share().getAsDouble());
            double most = part.most().getAsDouble();
            for (int k = 0; k < all.length; k++) {
                all[k] = Math.hypot(
                        all[k], Math.min(most, share * Math.abs(part.driver().behind(k))));
            }
        }
        return all;
    }

    /** Standard deviation of all that is owed, whichever late time constant it has. */
    public double late() {
        double squares = 0;
        double[] all = now();
        for (int k = TimeConstants.EARLY; k < TimeConstants.COUNT; k++) {
            squares += all[k] * all[k];
        }
        return Math.sqrt(squares / (TimeConstants.COUNT - TimeConstants.EARLY));
    }
}
