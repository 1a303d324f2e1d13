// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.moistair.StatedUncertainty.Coverage;

/**
 * Stated uncertainties of the saturation formulas of Sonntag, Hardy, and Hyland and Wexler.
 *
 * <p>Most of these figures are remembered, not read; each says so. Where a formula for water is carried below 0 °C, no
 * formula older than 2005 rests on measurements, and the difference from Murphy and Koop 2005 stands as a limit where
 * it is larger than the stated figure.
 */
final class StatedBySource {
    private static final String MURPHY_KOOP =
            "largest difference from Murphy and Koop 2005 for supercooled water, computed";

    private StatedBySource() {}

    static UncertaintyTable sonntagWater() {
        return UncertaintyTable.of("saturation over water after Sonntag 1990")
                .with(Coverage.EXPANDED, Basis.MEMORY, "0.01 % from 0 to 100 °C (k = 2)", 0, 1e-4, 100, 1e-4)
                .with(Coverage.EXPANDED, Basis.MEMORY, "0.6 % for supercooled water (k = 2)", -39.5, 6e-3, 0, 6e-3)
                .with(Coverage.LIMIT, Basis.COMPUTED, MURPHY_KOOP, -50, 1.94e-2, -40, 6.4e-3, -39.5, 6e-3);
    }

    static UncertaintyTable sonntagIce() {
        return UncertaintyTable.of("saturation over ice after Sonntag 1990")
                .with(
                        Coverage.EXPANDED,
                        Basis.MEMORY,
                        "1.0 % (k = 2); 0.5 % is also quoted, and IAPWS R14-08 is within 0.2 %",
                        -100,
                        1e-2,
                        0.01,
                        1e-2);
    }

    static UncertaintyTable hardyWater() {
        return UncertaintyTable.of("saturation over water after Hardy 1998")
                .with(Coverage.UNSTATED, Basis.MEMORY, "about 0.005 %, inherited from Wexler 1976", 0, 5e-5, 100, 5e-5)
                .with(
                        Coverage.LIMIT,
                        Basis.COMPUTED,
                        MURPHY_KOOP,
                        -50,
                        1.92e-2,
                        -40,
                        6.3e-3,
                        -30,
                        1.9e-3,
                        -20,
                        6.4e-4,
                        -10,
                        2.3e-4,
                        0,
                        1e-4);
    }

    static UncertaintyTable hardyIce() {
        return UncertaintyTable.of("saturation over ice after Hardy 1998")
                .with(
                        Coverage.UNSTATED,
                        Basis.MEMORY,
                        "0.02 % at 0 °C to 0.5 % at -100 °C, inherited from Wexler 1977; the line between is ours",
                        -100,
                        5e-3,
                        0.01,
                        2e-4);
    }

    static UncertaintyTable hylandWexlerWater() {
        return UncertaintyTable.of("saturation over water after Hyland and Wexler 1983")
                .with(Coverage.LIMIT, Basis.READ, "within 300 ppm (ASHRAE Fundamentals 2017)", 0, 3e-4, 200, 3e-4);
    }

    static UncertaintyTable hylandWexlerIce() {
        return UncertaintyTable.of("saturation over ice after Hyland and Wexler 1983")
                .with(
                        Coverage.LIMIT,
                        Basis.READ,
                        "within 300 ppm (ASHRAE Fundamentals 2017); 325 ppm from IAPWS R14-08 at -50 °C",
                        -100,
                        3e-4,
                        0.01,
                        3e-4);
    }
}
