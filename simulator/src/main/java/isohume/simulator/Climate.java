// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** Air at one place and instant: temperature in °C, total and vapour pressure in Pa. */
record Climate(double celsius, double pascals, double vapour) {
    /** Relative humidity over water, %. */
    double relativeHumidity() {
        return relativeHumidityAt(celsius);
    }

    /** The humidity that a body of another temperature in this air has at its surface, %. */
    double relativeHumidityAt(double bodyCelsius) {
        return Air.relativeHumidity(vapour, bodyCelsius, pascals);
    }

    Climate warmerBy(double kelvin) {
        return new Climate(celsius + kelvin, pascals, vapour);
    }

    /** The same gas at another total pressure. */
    Climate at(double otherPascals) {
        return new Climate(celsius, otherPascals, vapour * otherPascals / pascals);
    }
}
