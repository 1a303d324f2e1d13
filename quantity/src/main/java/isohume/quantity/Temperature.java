// SPDX-License-Identifier: Apache-2.0
package isohume.quantity;

/** Thermodynamic temperature on ITS-90, held in kelvin; finite and above 0 K. */
public record Temperature(double kelvin) implements Comparable<Temperature> {
    private static final double ICE_POINT_KELVIN = 273.15; // the only place in the program that knows it

    public Temperature {
        if (!(kelvin > 0) || Double.isInfinite(kelvin)) { // the negation also catches NaN
            throw new IllegalArgumentException("temperature must be finite and above 0 K, was " + kelvin + " K");
        }
    }

    public static Temperature ofKelvin(double kelvin) {
        return new Temperature(kelvin);
    }

    public static Temperature ofCelsius(double celsius) {
        return new Temperature(celsius + ICE_POINT_KELVIN);
    }

    public double celsius() {
        return kelvin - ICE_POINT_KELVIN;
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(kelvin, other.kelvin);
    }
}
