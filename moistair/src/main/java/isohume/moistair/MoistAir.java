// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;

/**
 * Humid air by one formulation. Relative humidity is over liquid water at every temperature, unless a name says ice.
 *
 * <p>For one question, ask here; for a state with all its measures, start at {@link #at}; for arrays, at {@link #batch}.
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

    /** The same over arrays: the same bits as one by one, on every machine. */
    public MoistAirBatch batch() {
        return new MoistAirBatch(formulas);
    }

    /**
     * The same over arrays for previews: faster, and a few units of the last place off, not always the same ones. Never
     * for what is released.
     */
    public MoistAirBatch preview() {
        return new MoistAirBatch(FormulaSet.of(formulas.formulation(), Elementary.FAST));
    }

    /** Air of a temperature and total pressure, whose vapour is told next by any measure. */
    public Surroundings at(Temperature t, Pressure total) {
        return new Surroundings(formulas, t, total);
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
        return Pressure.ofPascals(formulas.vapourPressure(kelvin, total.pascals(), point.deposit()));
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
        double kelvin =
                formulas.dewPoint(humidity.fraction(), t.kelvin(), chamber.pascals(), mirror.pascals(), deposit);
        return new DewPoint(Temperature.ofKelvin(kelvin), deposit);
    }

    /** Dew or frost point of air with a vapour pressure at a total pressure. */
    public DewPoint dewPoint(Pressure vapour, Pressure total, Phase deposit) {
        double kelvin = formulas.dewPoint(StrictMath.log(vapour.pascals()), total.pascals(), deposit);
        return new DewPoint(Temperature.ofKelvin(kelvin), deposit);
    }

    /** The derivatives of {@link #relativeHumidity}. */
    public HumiditySlopes relativeHumiditySlopes(DewPoint point, Pressure mirror, Temperature t, Pressure chamber) {
        double fraction = relativeHumidity(point, mirror, t, chamber).fraction();
        double kelvin = point.temperature().kelvin();
        Surface deposit = formulas.surface(kelvin, point.deposit());
        Surface air = formulas.surface(t.kelvin(), Phase.WATER);
        double pm = mirror.pascals();
        double pc = chamber.pascals();
        return new HumiditySlopes(
                fraction * deposit.logSlope(kelvin, pm),
                -fraction * air.logSlope(t.kelvin(), pc),
                fraction * (deposit.logPressureSlope(kelvin, pm) - 1 / pm),
                fraction * (1 / pc - air.logPressureSlope(t.kelvin(), pc)));
    }

    /** The coldest dew or frost point that this formulation knows in air. */
    public DewPoint coldest(Phase deposit) {
        Span span = formulas.coldest(deposit).span();
        return new DewPoint(Temperature.ofCelsius(span.lowestCelsius()), deposit);
    }

    /** The warmest dew or frost point that this formulation knows in air. */
    public DewPoint warmest(Phase deposit) {
        Span span = formulas.warmest(deposit).span();
        return new DewPoint(Temperature.ofCelsius(span.highestCelsius()), deposit);
    }

    /** Where the saturation formula over a phase is printed. */
    public Citation saturationSource(Phase phase) {
        return formulas.saturation(phase).source();
    }

    /** Where the enhancement factor over a phase is printed. */
    public Citation enhancementSource(Phase phase) {
        return formulas.warmest(phase).enhancement().source();
    }

    /** What the saturation formula may be wrong by; {@link OutsideRange} where its source states nothing. */
    public StatedUncertainty saturationUncertainty(Temperature t, Phase phase) {
        return formulas.saturation(phase).uncertaintyAt(t.celsius());
    }

    /** What the enhancement factor may be wrong by; from 70 to 110 kPa. */
    public StatedUncertainty enhancementUncertainty(Temperature t, Pressure total, Phase phase) {
        RealGas.requirePressure(total.pascals());
        return formulas.surface(t.kelvin(), phase).enhancement().uncertaintyAt(t.celsius());
    }
}
