// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * How far the enhancement formulas are from real-gas models: the budget line for the factor.
 *
 * <p>Greenspan's own figure, 0.01 % to 0.05 % near 100 kPa, is only remembered, and two newer models agree with each
 * other and not with it when it is cold. So the line here is the larger of the differences from ASHRAE RP-1485
 * (Herrmann, Kretzschmar and Gatley 2009) and IAPWS G8-10 at 70, 100, 101.325 and 110 kPa, rounded up. Nothing is said
 * colder than -80 °C or for other pressures; the figures end at 80 °C, where the difference has all but gone.
 */
final class RealGas {
    static final double LOWEST_PASCALS = 70_000;
    static final double HIGHEST_PASCALS = 110_000;

    private static final String COMPARED =
            "largest difference from ASHRAE RP-1485 and IAPWS G8-10 between 70 and 110 kPa, computed, no figure of its own";

    private RealGas() {}

    static UncertaintyTable greenspanOverWater() {
        return over("water")
                .with(
                        StatedUncertainty.Coverage.LIMIT,
                        Basis.COMPUTED,
                        COMPARED,
                        0,
                        3.2e-4,
                        20,
                        2.7e-4,
                        50,
                        2.0e-4,
                        100,
                        2.0e-4);
    }

    /** Supercooled water has no real-gas figures of its own; ice at the same temperature stands for it. */
    static UncertaintyTable greenspanOverSupercooledWater() {
        return over("supercooled water")
                .with(
                        StatedUncertainty.Coverage.LIMIT,
                        Basis.COMPUTED,
                        COMPARED + "; figures for ice at the same temperature",
                        -50,
                        8.4e-4,
                        -40,
                        7.0e-4,
                        -20,
                        4.9e-4,
                        0,
                        3.2e-4);
    }

    static UncertaintyTable greenspanOverIce() {
        return over("ice")
                .with(
                        StatedUncertainty.Coverage.LIMIT,
                        Basis.COMPUTED,
                        COMPARED,
                        -80,
                        1.94e-3,
                        -60,
                        1.06e-3,
                        -40,
                        7.0e-4,
                        -20,
                        4.9e-4,
                        0.01,
                        3.2e-4);
    }

    static UncertaintyTable wmoOverWater() {
        return over("water")
                .with(
                        StatedUncertainty.Coverage.LIMIT,
                        Basis.COMPUTED,
                        COMPARED,
                        -45,
                        1.5e-3,
                        -30,
                        7.2e-4,
                        40,
                        7.2e-4,
                        60,
                        1.2e-3);
    }

    static UncertaintyTable wmoOverIce() {
        return over("ice")
                .with(
                        StatedUncertainty.Coverage.LIMIT,
                        Basis.COMPUTED,
                        COMPARED,
                        -60,
                        2.7e-3,
                        -50,
                        1.9e-3,
                        -40,
                        1.2e-3,
                        -30,
                        7e-4,
                        0.01,
                        7e-4);
    }

    private static UncertaintyTable over(String phase) {
        return UncertaintyTable.of("the enhancement factor over " + phase);
    }

    static void requirePressure(double pascals) {
        if (!(pascals >= LOWEST_PASCALS && pascals <= HIGHEST_PASCALS)) {
            throw new OutsideRange(
                    "uncertainty of the enhancement factor at a total pressure",
                    pascals,
                    LOWEST_PASCALS,
                    HIGHEST_PASCALS,
                    "Pa");
        }
    }
}
