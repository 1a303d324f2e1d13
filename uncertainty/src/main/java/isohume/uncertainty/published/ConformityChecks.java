// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.published;

import isohume.uncertainty.PublishedCheck;
import isohume.uncertainty.conformity.Conformity;
import isohume.uncertainty.conformity.GuardBand;
import isohume.uncertainty.conformity.Prior;
import isohume.uncertainty.conformity.Risk;
import isohume.uncertainty.conformity.Tolerance;
import java.util.List;
import java.util.function.DoubleSupplier;

/** Examples of JCGM 106:2012. */
final class ConformityChecks {
    private ConformityChecks() {}

    static List<PublishedCheck> all() {
        return List.of(
                check(
                        "Zener diode, conformance probability",
                        "7.3.3",
                        0.92,
                        0.005,
                        () -> Conformity.probability(-5.47, 0.05, Tolerance.atMost(-5.40))),
                check(
                        "container, conformance probability",
                        "7.3.3",
                        0.99,
                        0.005,
                        () -> Conformity.probability(509.7, 8.6, Tolerance.atLeast(490))),
                check(
                        "motor oil, conformance probability",
                        "7.4",
                        0.66,
                        0.005,
                        () -> Conformity.probability(13.6, 1.8, new Tolerance(12.5, 16.3))),
                check(
                        "largest false accept with a guard band of U",
                        "8.3.2",
                        0.023,
                        0.0005,
                        () -> GuardBand.falseAcceptAtLimit(1)),
                check(
                        "precision resistors, global consumer's risk",
                        "9.5.3.2",
                        0.01,
                        0.005,
                        () -> resistors().consumer()),
                check(
                        "precision resistors, global producer's risk",
                        "9.5.3.2",
                        0.07,
                        0.005,
                        () -> resistors().producer()),
                check(
                        "ball bearings, global producer's risk",
                        "9.5.4.1",
                        0.075,
                        0.0005,
                        () -> bearings().producer()));
    }

    private static Risk resistors() {
        return Risk.global(
                new Prior.Normal(1500, 0.12), 0.04, new Tolerance(1499.8, 1500.2), new Tolerance(1499.82, 1500.18));
    }

    private static Risk bearings() {
        return Risk.global(new Prior.Gamma(1, 0.5), 0.25, Tolerance.atMost(2), Tolerance.atMost(2 - 0.65 * 0.5));
    }

    private static PublishedCheck check(
            String name, String place, double expected, double limit, DoubleSupplier found) {
        return new PublishedCheck(name, "JCGM 106:2012, " + place, expected, "1", limit, found);
    }
}
