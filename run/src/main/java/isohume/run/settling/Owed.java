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
    private record Part(DoubleSupplier share, Lagged driver) {}

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
     * @param share standard deviation of the share, in the signal's unit per unit of the driver
     */
    public Owed and(double share, Lagged driver) {
        return and(() -> share, driver);
    }

    /** The same with a share that depends on something. */
    public Owed and(DoubleSupplier share, Lagged driver) {
        List<Part> more = new ArrayList<>(parts);
        more.add(new Part(share, driver));
        return new Owed(more);
    }

    /** Standard deviation of what is owed with the k-th time constant. */
    double with(int k) {
        double square = 0;
        for (Part part : parts) {
            double one = part.share().getAsDouble() * part.driver().behind(k);
            square += one * one;
        }
        return Math.sqrt(square);
    }
}
