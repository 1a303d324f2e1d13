// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;

/** Vapour at standard pressure, in Pa, and back. */
final class Vapour {
    private static final Temperature ICE_POINT = Temperature.ofCelsius(0);

    private final MoistAir air;
    private final double atIcePoint;

    Vapour(MoistAir air) {
        this.air = air;
        atIcePoint = of(DewPoint.overWater(ICE_POINT));
    }

    double of(DewPoint point) {
        return air.vapourPressure(point, Pressure.STANDARD).pascals();
    }

    double saturated(double celsius) {
        return of(DewPoint.overWater(Temperature.ofCelsius(celsius)));
    }

    double at(double celsius, double percent) {
        return percent / 100 * saturated(celsius);
    }

    double percent(double pascals, double celsius) {
        return 100 * pascals / saturated(celsius);
    }

    RelativeHumidity humidity(double pascals, double celsius) {
        return RelativeHumidity.ofPercent(percent(pascals, celsius));
    }

    /** Where water would settle: dew above 0 °C, frost below. */
    DewPoint point(double pascals) {
        Phase deposit = pascals >= atIcePoint ? Phase.WATER : Phase.ICE;
        return air.dewPoint(Pressure.ofPascals(pascals), Pressure.STANDARD, deposit);
    }

    /** Vapour of air whose dew or frost point is at a temperature. */
    double settlingAt(double celsius) {
        Phase deposit = celsius >= 0 ? Phase.WATER : Phase.ICE;
        return of(new DewPoint(Temperature.ofCelsius(celsius), deposit));
    }

    /** Vapour for each part of dry gas, mol/mol. */
    static double ratio(double pascals) {
        return pascals / (Pressure.STANDARD.pascals() - pascals);
    }

    /** The inverse of {@link #ratio}. */
    static double pascals(double ratio) {
        return ratio / (1 + ratio) * Pressure.STANDARD.pascals();
    }
}
