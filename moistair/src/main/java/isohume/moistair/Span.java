// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.quantity.Temperature;

/** The temperatures for which a formula's source vouches; both ends belong to it. */
final class Span {
    private static final double ROUNDING_KELVIN = 1e-9; // a value converted to kelvin and back is still inside

    private final String what;
    private final double lowestCelsius;
    private final double highestCelsius;
    private final double lowestKelvin;
    private final double highestKelvin;
    private final double from;
    private final double to;

    private Span(String what, double lowestCelsius, double highestCelsius) {
        this.what = what;
        this.lowestCelsius = lowestCelsius;
        this.highestCelsius = highestCelsius;
        this.lowestKelvin = Temperature.ofCelsius(lowestCelsius).kelvin();
        this.highestKelvin = Temperature.ofCelsius(highestCelsius).kelvin();
        this.from = lowestKelvin - ROUNDING_KELVIN;
        this.to = highestKelvin + ROUNDING_KELVIN;
    }

    static Span ofCelsius(String what, double lowest, double highest) {
        return new Span(what, lowest, highest);
    }

    String what() {
        return what;
    }

    double lowestCelsius() {
        return lowestCelsius;
    }

    double highestCelsius() {
        return highestCelsius;
    }

    double lowestKelvin() {
        return lowestKelvin;
    }

    double highestKelvin() {
        return highestKelvin;
    }

    boolean contains(double kelvin) {
        return kelvin >= from && kelvin <= to;
    }

    /** Whether the first temperatures all lie between the ends, so that no other span holds any of them. */
    boolean encloses(double[] kelvin, int count) {
        for (int i = 0; i < count; i++) {
            if (!(kelvin[i] > lowestKelvin && kelvin[i] < highestKelvin)) {
                return false;
            }
        }
        return true;
    }

    /** The same temperature in kelvin, or {@link OutsideRange}. */
    @CanIgnoreReturnValue
    double require(double kelvin) {
        if (!contains(kelvin)) {
            double celsius = Temperature.ofKelvin(kelvin).celsius();
            throw new OutsideRange(what, celsius, lowestCelsius, highestCelsius, "°C");
        }
        return kelvin;
    }

    /** The same temperature in degrees Celsius, or {@link OutsideRange}. */
    double requireCelsius(double kelvin) {
        return Celsius.of(require(kelvin));
    }

    /** What both vouch for, under a new name. */
    Span meeting(Span other, String name) {
        return new Span(
                name, Math.max(lowestCelsius, other.lowestCelsius), Math.min(highestCelsius, other.highestCelsius));
    }
}
