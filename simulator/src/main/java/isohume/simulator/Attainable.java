// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import isohume.quantity.Phase;

/**
 * What a simulated bench can hold for as long as it takes, worked out from its balances of heat and vapour with the flow
 * of holding; what a person would learn by trying. Within the limits of the chamber's registers.
 */
public final class Attainable {
    private static final double REGISTER_COLDEST = 5; // °C
    private static final double REGISTER_WARMEST = 50;
    private static final double DRIEST_SET = 3; // % RH
    private static final double WETTEST_SET = 97;
    private static final double STEP = 0.5; // K
    private static final double POWER_SHARE = 0.85; // of the drive; the rest is for control
    private static final double HOTTEST_WALL = 62; // °C, below the cut-out
    private static final double DEW_MARGIN = 0.98; // of saturation at the coldest surface
    private static final double SENSORS_OFF = 1; // % RH, for the chamber's own sensor
    private static final double DRY_CONTROL = 1.2; // the dry stream is mixed with something, or control has no hold
    private static final double DAY_GRAMS_PER_FLOW = 11; // water to the drying agent in 12 h, for each L/min

    private final BenchParameters parameters;
    private final double agentRatio;

    private Attainable(BenchParameters parameters) {
        this.parameters = parameters;
        Streams streams = parameters.streams();
        DryingAgent agent = new DryingAgent(streams);
        agent.take(DAY_GRAMS_PER_FLOW * streams.holdFlow() / Air.WATER_GRAMS);
        double point = agent.frostPoint();
        double total = parameters.surroundings().pressure();
        agentRatio = Air.ratio(Air.vapour(point, total, point < 0 ? Phase.ICE : Phase.WATER), total);
    }

    public static Attainable by(BenchParameters parameters) {
        return new Attainable(parameters);
    }

    /**
     * Lowest chamber temperature, °C.
     *
     * @throws IllegalArgumentException when it can hold none
     */
    public double coldest() {
        for (double celsius = REGISTER_COLDEST; celsius <= REGISTER_WARMEST; celsius += STEP) {
            if (holds(celsius)) {
                return celsius;
            }
        }
        throw new IllegalArgumentException("the bench holds no temperature from " + REGISTER_COLDEST + " to "
                + REGISTER_WARMEST + " °C in its room; give it more heating or cooling, or better insulation");
    }

    /** Highest chamber temperature, °C; as {@link #coldest()}. */
    public double warmest() {
        for (double celsius = REGISTER_WARMEST; celsius >= REGISTER_COLDEST; celsius -= STEP) {
            if (holds(celsius)) {
                return celsius;
            }
        }
        return coldest();
    }

    private boolean holds(double celsius) {
        Surroundings room = parameters.surroundings();
        double wander = 2 * parameters.noise() * room.temperatureWander();
        return holds(celsius, room.temperature() - wander) && holds(celsius, room.temperature() + wander);
    }

    private boolean holds(double celsius, double room) {
        Enclosure body = parameters.enclosure();
        double wall = wall(celsius, room);
        double watts = body.airToWall() * (wall - celsius) + body.wallToRoom() * (wall - room);
        return watts <= POWER_SHARE * body.heatingWatts()
                && -watts <= POWER_SHARE * body.coolingWatts() * HeatBalance.fading(room - wall)
                && wall <= HOTTEST_WALL;
    }

    private double wall(double celsius, double room) {
        Enclosure body = parameters.enclosure();
        return celsius - (body.airToRoom() * (room - celsius) + body.fanWatts()) / body.airToWall();
    }

    /** Lowest relative humidity at a chamber temperature, % RH. */
    public double driest(double celsius) {
        double percent = percent(withLeak(agentRatio), celsius);
        return Math.max(DRIEST_SET + SENSORS_OFF, DRY_CONTROL * percent + SENSORS_OFF);
    }

    /** Highest relative humidity at a chamber temperature, % RH. */
    public double wettest(double celsius) {
        double total = parameters.surroundings().pressure();
        double room = parameters.surroundings().temperature();
        Streams streams = parameters.streams();
        double saturator = Math.clamp(celsius, streams.saturatorLowest(), streams.saturatorHighest());
        double wet = Air.ratio(streams.saturatorEfficiency() * Air.saturation(saturator, total), total);
        double coldest =
                Math.min(wall(celsius, room), celsius + parameters.enclosure().doorChill() * (room - celsius));
        double dew = 100
                * Math.min(DEW_MARGIN, parameters.guard())
                * Air.saturation(coldest, total)
                / Air.saturation(celsius, total);
        double most = Math.min(percent(withLeak(wet), celsius), dew) - 2 * SENSORS_OFF;
        return Math.min(WETTEST_SET - SENSORS_OFF, most);
    }

    /** Dew point of the wet stream at its wettest, °C: under the saturator's temperature, since the air leaves it not quite saturated. */
    public double wetStream() {
        double total = parameters.surroundings().pressure();
        Streams streams = parameters.streams();
        double saturator = streams.saturatorHighest();
        double vapour = streams.saturatorEfficiency() * Air.saturation(saturator, total);
        return Air.point(vapour, total, Phase.WATER, saturator);
    }

    private double withLeak(double ratio) {
        Surroundings room = parameters.surroundings();
        double outside =
                Air.ratio(room.humidity() / 100 * Air.saturation(room.temperature(), room.pressure()), room.pressure());
        Streams streams = parameters.streams();
        return (streams.holdFlow() * ratio + streams.leakFlow() * outside) / (streams.holdFlow() + streams.leakFlow());
    }

    private double percent(double ratio, double celsius) {
        double total = parameters.surroundings().pressure();
        return Air.relativeHumidity(total * ratio / (1 + ratio), celsius, total);
    }
}
