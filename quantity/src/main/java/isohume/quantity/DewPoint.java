// SPDX-License-Identifier: Apache-2.0
package isohume.quantity;

/**
 * The temperature at which vapour is in equilibrium with a deposit of a known phase: a dew point over water, a frost
 * point over ice. The two differ by about a tenth of their distance from 0 °C, so the phase belongs to the value.
 */
public record DewPoint(Temperature temperature, Phase deposit) {
    public static DewPoint overWater(Temperature temperature) {
        return new DewPoint(temperature, Phase.WATER);
    }

    public static DewPoint overIce(Temperature temperature) {
        return new DewPoint(temperature, Phase.ICE);
    }

    public double celsius() {
        return temperature.celsius();
    }
}
