// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * Density of moist air, CIPM-2007.
 *
 * <p>Source: Picard, Davis, Glaeser and Fujii 2008, Metrologia 45, 149. Range: 15 to 27 °C, 600 to 1100 hPa. Stated
 * relative standard uncertainty of the equation: 22e-6 (from memory). The molar mass of water is from memory, the
 * other constants were read. Its own saturation pressure and enhancement factor serve only where the humidity comes as
 * a relative humidity.
 */
final class CipmDensity {
    static final double STANDARD_CO2 = 0.0004;

    private static final Span VOUCHED_FOR = Span.ofCelsius("air density after CIPM-2007", 15, 27);
    private static final double LOWEST_PASCALS = 60_000;
    private static final double HIGHEST_PASCALS = 110_000;
    private static final double R = 8.314472;
    private static final double MOLAR_MASS_AIR = 28.96546e-3;
    private static final double MOLAR_MASS_PER_CO2 = 12.011e-3;
    static final double MOLAR_MASS_WATER = 18.01528e-3;

    private CipmDensity() {}

    /**
     * In kg/m³.
     *
     * @param vapour mole fraction of water vapour
     * @param co2 mole fraction of carbon dioxide
     */
    static double at(double kelvin, double p, double vapour, double co2) {
        require(kelvin, p);
        double molarMass = MOLAR_MASS_AIR + MOLAR_MASS_PER_CO2 * (co2 - STANDARD_CO2);
        return p
                * molarMass
                / (compressibility(kelvin, p, vapour) * R * kelvin)
                * (1 - vapour * (1 - MOLAR_MASS_WATER / molarMass));
    }

    static double compressibility(double kelvin, double p, double vapour) {
        double t = Celsius.of(kelvin);
        double ratio = p / kelvin;
        return 1
                - ratio
                        * (1.58123e-6
                                + t * (-2.9331e-8 + t * 1.1043e-10)
                                + (5.707e-6 - 2.051e-8 * t) * vapour
                                + (1.9898e-4 - 2.376e-6 * t) * vapour * vapour)
                + ratio * ratio * (1.83e-11 - 0.765e-8 * vapour * vapour);
    }

    /** Mole fraction of vapour from a relative humidity, as a fraction, by the equation's own saturation pressure. */
    static double vapourFraction(double humidity, double kelvin, double p) {
        require(kelvin, p);
        return humidity * enhancement(kelvin, p) * saturation(kelvin) / p;
    }

    static double saturation(double kelvin) {
        return StrictMath.exp(
                1.2378847e-5 * kelvin * kelvin - 1.9121316e-2 * kelvin + 33.93711047 - 6.3431645e3 / kelvin);
    }

    static double enhancement(double kelvin, double p) {
        double t = Celsius.of(kelvin);
        return 1.00062 + 3.14e-8 * p + 5.60e-7 * t * t;
    }

    private static void require(double kelvin, double p) {
        VOUCHED_FOR.require(kelvin);
        if (!(p >= LOWEST_PASCALS && p <= HIGHEST_PASCALS)) {
            throw new OutsideRange(
                    "air density after CIPM-2007 at a total pressure", p, LOWEST_PASCALS, HIGHEST_PASCALS, "Pa");
        }
    }
}
