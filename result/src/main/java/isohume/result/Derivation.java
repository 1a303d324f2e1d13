// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.uncertainty.Model;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * How one reading follows from two others of the same instrument, in air of the chamber's pressure: a dew point from
 * relative humidity and temperature, or relative humidity from dew point and temperature.
 *
 * @param wanted what is computed
 * @param over the phase that the dew point is over
 */
record Derivation(MoistAir air, Quantity wanted, Phase over, double pascals) {
    private static final List<String> PARENTS = List.of("u1", "u2");

    /**
     * The value.
     *
     * @param first the other measure of humidity, % RH or °C
     * @param celsius the temperature
     * @throws isohume.moistair.OutsideRange where the formulation says nothing
     */
    double of(double first, double celsius) {
        Pressure pressure = Pressure.ofPascals(pascals);
        Temperature at = Temperature.ofCelsius(celsius);
        return wanted == Quantity.DEW_POINT
                ? air.dewPoint(RelativeHumidity.ofPercent(first), at, pressure, pressure, over)
                        .celsius()
                : air.relativeHumidity(new DewPoint(Temperature.ofCelsius(first), over), pressure, at, pressure)
                        .percent();
    }

    /** Symbols of a model's lines once its reading is derived: those of the parents come first. */
    static List<String> parts(List<String> others) {
        return Stream.concat(PARENTS.stream(), others.stream()).toList();
    }

    /**
     * A model whose reading is derived: {@code u1_} and {@code u2_} are the parents, and {@code u_} is what is added to
     * what follows from them.
     *
     * @param error a model whose first sum is its reading
     */
    Model within(Model error) {
        return sums -> {
            double[] inner = Arrays.copyOfRange(sums, PARENTS.size(), sums.length);
            inner[0] += of(sums[0], sums[1]);
            return error.of(inner);
        };
    }
}
