// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;

/** Short words for what tests of humid air say over and over. */
final class Air {
    private Air() {}

    static Temperature celsius(double celsius) {
        return Temperature.ofCelsius(celsius);
    }

    static Pressure pascals(double pascals) {
        return Pressure.ofPascals(pascals);
    }

    static RelativeHumidity percent(double percent) {
        return RelativeHumidity.ofPercent(percent);
    }

    static DewPoint dew(double celsius) {
        return DewPoint.overWater(celsius(celsius));
    }

    static DewPoint frost(double celsius) {
        return DewPoint.overIce(celsius(celsius));
    }

    static Phase phase(String name) {
        return name.startsWith("ice") ? Phase.ICE : Phase.WATER;
    }

    /** A total pressure that every formula of the formulation takes. */
    static double highestPascals(Formulation formulation) {
        return formulation == Formulation.WMO_MAGNUS ? 110_000 : 600_000;
    }
}
