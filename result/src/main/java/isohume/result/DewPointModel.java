// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Temperature;
import isohume.uncertainty.Model;
import java.util.List;

/**
 * Error of a dew or frost point against a mirror's: {@code u − D(e(d) f(d, Pm)/Pm · P · (1 + e + f))}, where D is the
 * dew point of a vapour pressure in the chamber, over the phase that the reading is over; the mirror's deposit may be
 * another.
 *
 * <p>Lines enter by their symbols: {@code u_} the reading (°C), {@code d_} the mirror's dew or frost point (°C),
 * {@code dp_} the mirror's pressure above the chamber's (Pa), {@code e_} and {@code f_} the relative errors of the
 * saturation equations and of the enhancement factors, as in {@link HumidityModel}.
 *
 * @param over the phase that the reading is over
 */
record DewPointModel(MoistAir air, Phase deposit, double chamberPascals, Phase over) implements Model {
    static final List<String> PARTS = List.of("u", "d", "dp", "e", "f");

    @Override
    public double of(double[] sums) {
        return sums[0] - reference(sums[1], sums[2], sums[3] + sums[4]);
    }

    /** What a mirror at the chamber's pressure with this model's phase on it would show, °C. */
    double reference(double mirrorCelsius, double mirrorAboveChamberPascals) {
        return reference(mirrorCelsius, mirrorAboveChamberPascals, 0);
    }

    private double reference(double mirrorCelsius, double mirrorAboveChamberPascals, double relative) {
        double mirrorPascals = chamberPascals + mirrorAboveChamberPascals;
        double vapour = air.vapourPressure(
                        new DewPoint(Temperature.ofCelsius(mirrorCelsius), deposit), Pressure.ofPascals(mirrorPascals))
                .pascals();
        return air.dewPoint(
                        Pressure.ofPascals(vapour * chamberPascals / mirrorPascals * (1 + relative)),
                        Pressure.ofPascals(chamberPascals),
                        over)
                .celsius();
    }
}
