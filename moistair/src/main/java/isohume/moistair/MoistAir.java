// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;

/**
 * Humid air by one formulation. Relative humidity is over liquid water at every temperature.
 *
 * <p>Every method throws {@link OutsideRange} where a formula's source no longer vouches for it, and where air of the
 * total pressure cannot hold the vapour. Inverses agree with their functions to 1e-10 of the vapour pressure or throw
 * {@link SolverFailed}.
 */
public final class MoistAir {
    private final FormulaSet formulas;

    private MoistAir(FormulaSet formulas) {
        this.formulas = formulas;
    }

    public static MoistAir by(Formulation formulation) {
        return new MoistAir(FormulaSet.of(formulation, Elementary.STRICT));
    }

    public Formulation formulation() {
        return formulas.formulation();
    }

    /** Saturation vapour pressure of pure water substance over a phase, without air. */
    public Pressure saturation(Temperature t, Phase phase) {
        return Pressure.ofPascals(StrictMath.exp(formulas.saturation(phase).logAt(t.kelvin())));
    }

    /** {@code d ln e / dT} of {@link #saturation} in 1/K. */
    public double saturationSlope(Temperature t, Phase phase) {
        return formulas.saturation(phase).logSlopeAt(t.kelvin());
    }

    /** The factor by which air at a total pressure raises the saturation vapour pressure. */
    public double enhancement(Temperature t, Pressure total, Phase phase) {
        return formulas.surface(t.kelvin(), phase).factor(t.kelvin(), total.pascals());
    }

    /** Partial pressure of vapour in air of a total pressure that is saturated at a dew or frost point. */
    public Pressure vapourPressure(DewPoint point, Pressure total) {
        double kelvin = point.temperature().kelvin();
        return Pressure.ofPascals(StrictMath.exp(formulas.logPressure(kelvin, total.pascals(), point.deposit())));
    }

    /**
     * Relative humidity where the air is, from the dew or frost point where the mirror is.
     *
     * @param mirror pressure at the mirror
     * @param chamber pressure where the humidity is wanted
     */
    public RelativeHumidity relativeHumidity(DewPoint point, Pressure mirror, Temperature t, Pressure chamber) {
        double kelvin = point.temperature().kelvin();
        return RelativeHumidity.ofFraction(
                formulas.relativeHumidity(kelvin, mirror.pascals(), point.deposit(), t.kelvin(), chamber.pascals()));
    }

    /** The inverse of {@link #relativeHumidity}: what a mirror with a deposit of that phase would show. */
    public DewPoint dewPoint(
            RelativeHumidity humidity, Temperature t, Pressure chamber, Pressure mirror, Phase deposit) {
        double logVapour = StrictMath.log(humidity.fraction() * mirror.pascals() / chamber.pascals())
                + formulas.logPressure(t.kelvin(), chamber.pascals(), Phase.WATER);
        return dewPoint(logVapour, mirror, deposit);
    }

    /** Dew or frost point of air with a vapour pressure at a total pressure. */
    public DewPoint dewPoint(Pressure vapour, Pressure total, Phase deposit) {
        return dewPoint(StrictMath.log(vapour.pascals()), total, deposit);
    }

    private DewPoint dewPoint(double logVapour, Pressure total, Phase deposit) {
        double kelvin = formulas.dewPoint(logVapour, total.pascals(), deposit);
        return new DewPoint(Temperature.ofKelvin(kelvin), deposit);
    }
}
