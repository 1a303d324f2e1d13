// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;

/**
 * A state of humid air, told by any measure and asked for any other. Made by {@link MoistAir#at}.
 *
 * <p>Vapour pressure is mole fraction times total pressure. Each question throws {@link OutsideRange} where no formula
 * vouches for the answer: the dew point of dry air, the density at 40 °C.
 */
public final class HumidAir {
    private static final Span ENTHALPY = Span.ofCelsius("enthalpy after ASHRAE", -100, 200);

    private final FormulaSet formulas;
    private final Temperature temperature;
    private final Pressure pressure;
    private final Pressure vapour;

    HumidAir(FormulaSet formulas, Temperature temperature, Pressure pressure, Pressure vapour) {
        if (!(vapour.pascals() <= pressure.pascals())) {
            throw new OutsideRange(
                    "vapour pressure in air of this total pressure", vapour.pascals(), 0, pressure.pascals(), "Pa");
        }
        this.formulas = formulas;
        this.temperature = temperature;
        this.pressure = pressure;
        this.vapour = vapour;
    }

    public Formulation formulation() {
        return formulas.formulation();
    }

    public Temperature temperature() {
        return temperature;
    }

    /** Total pressure. */
    public Pressure pressure() {
        return pressure;
    }

    /** Partial pressure of vapour. */
    public Pressure vapourPressure() {
        return vapour;
    }

    /** Over liquid water, supercooled below 0 °C. */
    public RelativeHumidity relativeHumidity() {
        return relativeTo(Phase.WATER);
    }

    /** Over ice; the air is not warmer than 0.01 °C. */
    public RelativeHumidity relativeHumidityOverIce() {
        return relativeTo(Phase.ICE);
    }

    private RelativeHumidity relativeTo(Phase phase) {
        double saturated = formulas.logPressure(temperature.kelvin(), pressure.pascals(), phase);
        return RelativeHumidity.ofFraction(vapour.pascals() / StrictMath.exp(saturated));
    }

    /** Over liquid water, supercooled below 0 °C. */
    public DewPoint dewPoint() {
        return point(Phase.WATER);
    }

    /** Over ice, not warmer than 0.01 °C. */
    public DewPoint frostPoint() {
        return point(Phase.ICE);
    }

    private DewPoint point(Phase deposit) {
        double kelvin = formulas.dewPoint(StrictMath.log(vapour.pascals()), pressure.pascals(), deposit);
        return new DewPoint(Temperature.ofKelvin(kelvin), deposit);
    }

    /** Mass of vapour over mass of dry air, in kg/kg. */
    public double mixingRatio() {
        return Water.MASS_RATIO * volumeRatio();
    }

    /** Mass of vapour over mass of moist air, in kg/kg. */
    public double specificHumidity() {
        double ratio = mixingRatio();
        return ratio / (1 + ratio);
    }

    /** Mass of vapour in a volume, in kg/m³; the vapour is taken for an ideal gas. */
    public double absoluteHumidity() {
        return Water.MOLAR_MASS * vapour.pascals() / (Water.GAS_CONSTANT * temperature.kelvin());
    }

    /** Amount of vapour over amount of moist air, in mol/mol; a millionth of it is a ppmv of moist air. */
    public double volumeFraction() {
        return vapour.pascals() / pressure.pascals();
    }

    /** Amount of vapour over amount of dry air, in mol/mol; a millionth of it is a ppmv of dry air. */
    public double volumeRatio() {
        double dry = pressure.pascals() - vapour.pascals();
        if (!(dry > 0)) {
            throw new OutsideRange("vapour for each part of dry air; the pressure of dry air", dry, 0, 1e9, "Pa");
        }
        return vapour.pascals() / dry;
    }

    /** What the wet or iced bulb of a psychrometer would show. */
    public Temperature wetBulb(Psychrometer psychrometer) {
        return Temperature.ofKelvin(
                formulas.wetBulb(psychrometer, temperature.kelvin(), pressure.pascals(), vapour.pascals()));
    }

    /**
     * In joules for each kilogram of dry air, zero for dry air at 0 °C. Source: ASHRAE Fundamentals 2017, chapter 1,
     * eq. 30, an ideal mixture; within 0.5 % of real-gas tables from 0 to 50 °C.
     */
    public double enthalpy() {
        double t = ENTHALPY.requireCelsius(temperature.kelvin());
        return 1000 * (1.006 * t + mixingRatio() * (2501 + 1.86 * t));
    }

    /** In kg/m³, CIPM-2007 with 400 ppm of carbon dioxide; from 15 to 27 °C and 600 to 1100 hPa. */
    public double density() {
        return density(CipmDensity.STANDARD_CO2);
    }

    /** In kg/m³, CIPM-2007, for a mole fraction of carbon dioxide. */
    public double density(double carbonDioxide) {
        return CipmDensity.at(temperature.kelvin(), pressure.pascals(), volumeFraction(), carbonDioxide);
    }

    @Override
    public String toString() {
        return "air of " + temperature.celsius() + " °C and " + pressure.pascals() + " Pa with " + vapour.pascals()
                + " Pa of vapour, by " + formulation().title();
    }
}
