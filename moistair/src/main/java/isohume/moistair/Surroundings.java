// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;

/**
 * Temperature and total pressure of air whose vapour is still to be told, by any of the usual measures.
 *
 * <p>Each method throws {@link OutsideRange} where no formula vouches for the answer or the air cannot hold the vapour.
 */
public final class Surroundings {
    private final FormulaSet formulas;
    private final Temperature temperature;
    private final Pressure pressure;

    Surroundings(FormulaSet formulas, Temperature temperature, Pressure pressure) {
        this.formulas = formulas;
        this.temperature = temperature;
        this.pressure = pressure;
    }

    /** Relative humidity over liquid water, supercooled below 0 °C. */
    public HumidAir withRelativeHumidity(RelativeHumidity humidity) {
        return withVapour(humidity.fraction() * saturated(Phase.WATER));
    }

    /** Relative humidity over ice; the air is not warmer than 0.01 °C. */
    public HumidAir withRelativeHumidityOverIce(RelativeHumidity humidity) {
        return withVapour(humidity.fraction() * saturated(Phase.ICE));
    }

    /** Dew or frost point at the total pressure of the air. */
    public HumidAir withDewPoint(DewPoint point) {
        double kelvin = point.temperature().kelvin();
        return withVapour(StrictMath.exp(formulas.logPressure(kelvin, pressure.pascals(), point.deposit())));
    }

    /** Partial pressure of vapour. */
    public HumidAir withVapourPressure(Pressure vapour) {
        return withVapour(vapour.pascals());
    }

    /** Mass of vapour over mass of dry air, in kg/kg. */
    public HumidAir withMixingRatio(double ratio) {
        return withVolumeRatio(notNegative("mixing ratio", ratio, "kg/kg") / Water.MASS_RATIO);
    }

    /** Mass of vapour over mass of moist air, in kg/kg. */
    public HumidAir withSpecificHumidity(double humidity) {
        if (!(humidity < 1)) {
            throw new OutsideRange("specific humidity", humidity, 0, 1, "kg/kg");
        }
        return withMixingRatio(notNegative("specific humidity", humidity, "kg/kg") / (1 - humidity));
    }

    /** Mass of vapour in a volume of moist air, in kg/m³; the vapour is taken for an ideal gas. */
    public HumidAir withAbsoluteHumidity(double density) {
        double moles = notNegative("absolute humidity", density, "kg/m³") / Water.MOLAR_MASS;
        return withVapour(moles * Water.GAS_CONSTANT * temperature.kelvin());
    }

    /** Amount of vapour over amount of moist air, in mol/mol; 1e-6 of it is a ppmv of moist air. */
    public HumidAir withVolumeFraction(double fraction) {
        return withVapour(notNegative("volume fraction", fraction, "mol/mol") * pressure.pascals());
    }

    /** Amount of vapour over amount of dry air, in mol/mol; 1e-6 of it is a ppmv of dry air. */
    public HumidAir withVolumeRatio(double ratio) {
        return withVapour(notNegative("volume ratio", ratio, "mol/mol") / (1 + ratio) * pressure.pascals());
    }

    /** Temperature of a wet or iced bulb. */
    public HumidAir withWetBulb(Temperature bulb, Psychrometer psychrometer) {
        double total = pressure.pascals();
        double saturated = StrictMath.exp(formulas.logPressure(bulb.kelvin(), total, psychrometer.bulb()));
        double depression = psychrometer.depression(temperature.kelvin(), bulb.kelvin(), total);
        if (!(depression <= saturated)) {
            throw new OutsideRange(
                    "wet bulb in dry air; the vapour pressure that the depression takes",
                    depression,
                    0,
                    saturated,
                    "Pa");
        }
        return withVapour(saturated - depression);
    }

    private HumidAir withVapour(double pascals) {
        return new HumidAir(formulas, temperature, pressure, Pressure.ofPascals(pascals));
    }

    private double saturated(Phase phase) {
        return StrictMath.exp(formulas.logPressure(temperature.kelvin(), pressure.pascals(), phase));
    }

    private static double notNegative(String what, double value, String unit) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be finite and not negative, was " + value + " " + unit);
        }
        return value;
    }
}
