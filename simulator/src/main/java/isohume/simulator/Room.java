// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** The room around the chamber: its temperature and pressure wander slowly, its humidity stands. */
final class Room {
    private static final double TEMPERATURE_SECONDS = 3 * 3600;
    private static final double PRESSURE_SECONDS = 8 * 3600;
    private static final double OWN_LAG_SECONDS = 300; // no room jumps from second to second

    private final Surroundings surroundings;
    private final Wander temperature;
    private final Wander pressure;
    private final Lag smooth;

    Room(Surroundings surroundings, double noise, Chance chance) {
        this.surroundings = surroundings;
        temperature = new Wander(noise * surroundings.temperatureWander(), TEMPERATURE_SECONDS, chance);
        pressure = new Wander(noise * surroundings.pressureWander(), PRESSURE_SECONDS, chance);
        smooth = new Lag(surroundings.temperature() + temperature.value());
    }

    void step() {
        temperature.step();
        pressure.step();
        smooth.follow(surroundings.temperature() + temperature.value(), OWN_LAG_SECONDS);
    }

    double celsius() {
        return smooth.value();
    }

    double pascals() {
        return surroundings.pressure() + pressure.value();
    }

    /** Vapour per dry gas in the room. */
    double ratio() {
        double vapour = surroundings.humidity() / 100 * Air.saturation(celsius(), pascals());
        return Air.ratio(vapour, pascals());
    }
}
