// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/**
 * The chamber's own control, by its own two sensors: a thermoelectric drive for the temperature, and the share of the wet
 * stream for the humidity.
 */
final class ChamberController {
    /** What the controller does during a step: drive in W, flow of both streams in L/min, share of the wet one. */
    record Action(double watts, double flow, double wetShare) {
        static final Action REST = new Action(0, 0, 0);
    }

    private static final double TEMPERATURE_SECONDS = 6;
    private static final double HUMIDITY_SECONDS = 4;
    private static final double TEMPERATURE_OFFSET = 0.08; // K, half-width
    private static final double HUMIDITY_OFFSET = 0.8; // % RH, half-width
    private static final double CUT_OUT_CELSIUS = 65;
    private static final double FULL_FLOW_PERCENT = 1.5; // error from which the streams run at full flow
    private static final double DRY_RATIO = 2e-4; // of the dry stream, as the controller believes it

    private final Streams streams;
    private final Lag temperature;
    private final Lag humidity;
    private final double temperatureOffset;
    private final double humidityOffset;
    private final Wander temperatureNoise;
    private final Wander humidityNoise;
    private final double guard;
    private final double mostWatts;
    private final PiController drive;
    private final PiController mixer = new PiController(0.06, 70, 0, 1);
    private double wantedCelsius = 23;
    private double wantedPercent = 50;
    private boolean running;
    private boolean jammed;
    private boolean cutOut;
    private Action action = Action.REST;

    ChamberController(BenchParameters parameters, Chance chance, Climate start) {
        streams = parameters.streams();
        guard = parameters.guard();
        temperatureOffset = parameters.drawn() * TEMPERATURE_OFFSET * chance.rectangular();
        humidityOffset = parameters.drawn() * HUMIDITY_OFFSET * chance.rectangular();
        temperatureNoise = new Wander(parameters.noise() * 0.002, 0, chance);
        humidityNoise = new Wander(parameters.noise() * 0.015, 0, chance);
        temperature = new Lag(start.celsius());
        humidity = new Lag(start.relativeHumidity());
        Enclosure enclosure = parameters.enclosure();
        mostWatts = enclosure.heatingWatts();
        drive = new PiController(25, 240, -enclosure.coolingWatts(), enclosure.heatingWatts());
    }

    void want(double celsius, double percent) {
        wantedCelsius = celsius;
        wantedPercent = percent;
    }

    void run(boolean on) {
        if (running != on) {
            drive.reset();
            mixer.reset();
            cutOut = false;
        }
        running = on;
    }

    /** The drive heats as hard as it can while it runs, whatever it is told; the cut-out does not depend on it. */
    void jam(boolean on) {
        jammed = on;
    }

    /** Looks at the air and decides what to do next. */
    Action step(Climate air, double wall, double coldest, double saturator) {
        temperatureNoise.step();
        humidityNoise.step();
        temperature.follow(air.celsius(), TEMPERATURE_SECONDS);
        humidity.follow(air.relativeHumidity(), HUMIDITY_SECONDS);
        cutOut |= wall > CUT_OUT_CELSIUS;
        action = running ? act(air.pascals(), coldest, saturator) : Action.REST;
        return action;
    }

    private Action act(double total, double coldest, double saturator) {
        double error = wantedCelsius - sensedCelsius();
        double watts = cutOut ? 0 : jammed ? mostWatts : drive.output(error, 0);
        double air = Air.saturation(sensedCelsius(), total);
        double safe = 100 * guard * Air.saturation(coldest, total) / air;
        double percent = Math.min(wantedPercent, safe);
        double humidityError = percent - sensedPercent();
        double wet = Air.ratio(streams.saturatorEfficiency() * Air.saturation(saturator, total), total);
        double believed = (Air.ratio(percent / 100 * air, total) - DRY_RATIO) / (wet - DRY_RATIO);
        double share = mixer.output(humidityError, believed);
        double effort = Math.min(1, Math.abs(humidityError) / FULL_FLOW_PERCENT);
        return new Action(watts, streams.holdFlow() + effort * (streams.changeFlow() - streams.holdFlow()), share);
    }

    double sensedCelsius() {
        return temperature.value() + temperatureOffset + temperatureNoise.value();
    }

    double sensedPercent() {
        return Math.max(0, humidity.value() + humidityOffset + humidityNoise.value());
    }

    double wantedCelsius() {
        return wantedCelsius;
    }

    double wantedPercent() {
        return wantedPercent;
    }

    boolean running() {
        return running;
    }

    boolean cutOut() {
        return cutOut;
    }

    /** What it did in the last step. */
    Action action() {
        return action;
    }

    double temperatureOffset() {
        return temperatureOffset;
    }

    double humidityOffset() {
        return humidityOffset;
    }
}
