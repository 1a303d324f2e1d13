// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/**
 * The room, and the pressures that follow from it.
 *
 * @param temperature mean room temperature, °C
 * @param temperatureWander standard deviation of its slow wandering, K
 * @param humidity relative humidity of the room, %
 * @param pressure mean barometric pressure, Pa
 * @param pressureWander standard deviation of its slow wandering, Pa
 * @param overpressure excess of the chamber over the room at full flow, Pa
 * @param mirrorDrop drop from the chamber to the mirror, Pa
 */
public record Surroundings(
        double temperature,
        double temperatureWander,
        double humidity,
        double pressure,
        double pressureWander,
        double overpressure,
        double mirrorDrop) {
    public Surroundings {
        Limits.between("room temperature", temperature, 5, 40, "°C");
        Limits.between("wandering of the room temperature", temperatureWander, 0, 3, "K");
        Limits.between("humidity of the room", humidity, 5, 95, "% RH");
        Limits.between("barometric pressure", pressure, 60_000, 110_000, "Pa");
        Limits.between("wandering of the pressure", pressureWander, 0, 1000, "Pa");
        Limits.between("overpressure of the chamber", overpressure, 0, 2000, "Pa");
        Limits.between("pressure drop to the mirror", mirrorDrop, 0, 2000, "Pa");
    }

    /** A laboratory. Common practice, no source. */
    public static Surroundings laboratory() {
        return new Surroundings(23, 0.4, 45, 100_900, 120, 30, 45);
    }

    public Surroundings withTemperature(double celsius, double wander) {
        return new Surroundings(celsius, wander, humidity, pressure, pressureWander, overpressure, mirrorDrop);
    }

    public Surroundings withPressure(double pascals, double wander) {
        return new Surroundings(temperature, temperatureWander, humidity, pascals, wander, overpressure, mirrorDrop);
    }
}
