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
 * <p>Every method throws {@link OutsideRange} where a formula's source no longer vouches for it.
 */
public final class MoistAir {
    private static final double COLDEST_DEPOSIT_CELSIUS = -95;
    private static final double TOLERANCE_KELVIN = 1e-10;
    private static final int MOST_HALVINGS = 200;

    private final Formulation formulation;
    private final Saturation water;
    private final Saturation ice;
    private final Enhancement overWater = Enhancement.overWater();
    private final Enhancement overSupercooledWater = Enhancement.overSupercooledWater();
    private final Enhancement overIce = Enhancement.overIce();

    private MoistAir(Formulation formulation, Saturation water, Saturation ice) {
        this.formulation = formulation;
        this.water = water;
        this.ice = ice;
    }

    public static MoistAir by(Formulation formulation) {
        return switch (formulation) {
            case SONNTAG_1990 ->
                new MoistAir(formulation, LogPolynomialSaturation.sonntagWater(), LogPolynomialSaturation.sonntagIce());
            case HARDY_1998 ->
                new MoistAir(formulation, LogPolynomialSaturation.hardyWater(), LogPolynomialSaturation.hardyIce());
        };
    }

    public Formulation formulation() {
        return formulation;
    }

    /** Saturation vapour pressure of pure water substance over a phase. */
    public Pressure saturation(Temperature t, Phase phase) {
        return Pressure.ofPascals(over(phase).pascalsAt(t));
    }

    /** The factor by which air at a total pressure raises the saturation vapour pressure. */
    public double enhancement(Temperature t, Pressure total, Phase phase) {
        return enhancementFor(t, phase).at(t, over(phase).pascalsAt(t), total.pascals());
    }

    /** Partial pressure of vapour in air of a total pressure that is saturated at a dew or frost point. */
    public Pressure vapourPressure(DewPoint point, Pressure total) {
        return Pressure.ofPascals(inAir(point.temperature(), total, point.deposit()));
    }

    /**
     * Relative humidity where the air is, from the dew or frost point where the mirror is.
     *
     * @param mirror pressure at the mirror
     * @param chamber pressure where the humidity is wanted
     */
    public RelativeHumidity relativeHumidity(DewPoint point, Pressure mirror, Temperature t, Pressure chamber) {
        double vapour = inAir(point.temperature(), mirror, point.deposit()) * chamber.pascals() / mirror.pascals();
        return RelativeHumidity.ofFraction(vapour / inAir(t, chamber, Phase.WATER));
    }

    /** The inverse of {@link #relativeHumidity}: what a mirror with a deposit of that phase would show. */
    public DewPoint dewPoint(
            RelativeHumidity humidity, Temperature t, Pressure chamber, Pressure mirror, Phase deposit) {
        double vapour = humidity.fraction() * inAir(t, chamber, Phase.WATER) * mirror.pascals() / chamber.pascals();
        return dewPoint(Pressure.ofPascals(vapour), mirror, deposit);
    }

    /** Dew or frost point of air with a vapour pressure at a total pressure. */
    public DewPoint dewPoint(Pressure vapour, Pressure total, Phase deposit) {
        Span span = enhancementSpan(deposit);
        double low = span.lowest();
        double high = span.highest();
        double wanted = vapour.pascals();
        requireBetween(wanted, inAir(Temperature.ofCelsius(low), total, deposit), low, high, total, deposit);
        for (int i = 0; i < MOST_HALVINGS && high - low > TOLERANCE_KELVIN; i++) {
            double middle = (low + high) / 2;
            if (inAir(Temperature.ofCelsius(middle), total, deposit) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new DewPoint(Temperature.ofCelsius((low + high) / 2), deposit);
    }

    private void requireBetween(
            double wanted, double atLowest, double low, double high, Pressure total, Phase deposit) {
        double atHighest = inAir(Temperature.ofCelsius(high), total, deposit);
        if (!(wanted >= atLowest && wanted <= atHighest)) {
            String what = (deposit == Phase.ICE ? "frost point" : "dew point") + " between " + low + " and " + high
                    + " °C; its vapour pressure";
            throw new OutsideRange(what, wanted, atLowest, atHighest, "Pa");
        }
    }

    private static Span enhancementSpan(Phase deposit) {
        return switch (deposit) {
            case WATER -> new Span("dew point", -50, 100);
            case ICE -> new Span("frost point", COLDEST_DEPOSIT_CELSIUS, 0.01);
        };
    }

    private double inAir(Temperature t, Pressure total, Phase phase) {
        double e = over(phase).pascalsAt(t);
        return e * enhancementFor(t, phase).at(t, e, total.pascals());
    }

    private Saturation over(Phase phase) {
        return switch (phase) {
            case WATER -> water;
            case ICE -> ice;
        };
    }

    private Enhancement enhancementFor(Temperature t, Phase phase) {
        return switch (phase) {
            case ICE -> overIce;
            case WATER -> t.celsius() < 0 ? overSupercooledWater : overWater;
        };
    }
}
