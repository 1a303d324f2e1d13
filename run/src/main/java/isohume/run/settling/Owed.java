// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import org.jspecify.annotations.Nullable;

/**
 * What may still come by what was done to a signal, whether or not it shows yet: shares of what its drivers did. An
 * assumption, held until readings say otherwise.
 */
public final class Owed {
    private record Part(DoubleSupplier share, Lagged driver) {}

    private final List<Part> parts;
    private final @Nullable LateShare late;
    private final Lagged driver;

    private Owed(List<Part> parts, @Nullable LateShare late, Lagged driver) {
        this.parts = List.copyOf(parts);
        this.late = late;
        this.driver = driver;
    }

    public static Owed nothing() {
        return new Owed(List.of(), null, new Lagged());
    }

    /** A share of how far a driver's followers are behind it that is learned from point to point. */
    public static Owed learned(LateShare late, Lagged driver) {
        return new Owed(List.of(), late, driver);
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
        return new Owed(more, late, driver);
    }

    /** Standard deviation of what is owed with the k-th time constant. */
    double with(int k) {
        double square = late == null ? 0 : square(late.spread(k) * driver.behind(k));
        for (Part part : parts) {
            square += square(part.share().getAsDouble() * part.driver().behind(k));
        }
        return Math.sqrt(square);
    }

    private static double square(double value) {
        return value * value;
    }

    /** What is expected of an amplitude by what was learned. */
    double expected(int k) {
        return late == null ? 0 : -late.mean(k) * driver.behind(k);
    }

    double weight(int k) {
        return late == null ? 0 : late.weight(k);
    }

    void learn(Mixture seen, Prior prior) {
        if (late != null) {
            late.learn(seen, prior, driver);
        }
    }
}
