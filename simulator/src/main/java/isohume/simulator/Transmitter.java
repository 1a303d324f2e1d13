// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/**
 * An instrument under test with a capacitive polymer sensor. The sensor has its own temperature; the polymer follows the
 * humidity at that temperature with a lag, a small part of it late (creep), and with hysteresis.
 */
final class Transmitter {
    private static final double NOISE_SECONDS = 5;

    private final HumidityResponse humidity;
    private final TemperatureResponse temperature;
    private final Place place;
    private final Lag sensor;
    private final Lag quick;
    private final Lag late;
    private final Play play;
    private final Wander humidityNoise;
    private final Wander temperatureNoise;
    private Climate local;

    Transmitter(TransmitterSpecification specification, BenchParameters parameters, Chance chance, Climate start) {
        TransmitterSpecification own = specification.drawn(chance, parameters.drawn());
        humidity = own.humidity();
        temperature = own.temperature();
        place = new Place(parameters, chance);
        humidityNoise = new Wander(parameters.noise() * humidity.noise(), NOISE_SECONDS, chance);
        temperatureNoise = new Wander(parameters.noise() * temperature.noise(), NOISE_SECONDS, chance);
        local = start;
        sensor = new Lag(settledSensor());
        double percent = local.relativeHumidityAt(sensor.value());
        quick = new Lag(percent);
        late = new Lag(percent);
        play = new Play(humidity.loopWidth(), percent);
    }

    void step(Climate reference, double room) {
        place.step();
        humidityNoise.step();
        temperatureNoise.step();
        local = place.climate(reference, room);
        sensor.follow(settledSensor(), temperature.seconds());
        quick.follow(local.relativeHumidityAt(sensor.value()), humidity.secondsAt(sensor.value()));
        late.follow(quick.value(), humidity.creepSeconds());
        play.follow(quick.value());
    }

    private double settledSensor() {
        return local.celsius() + temperature.selfHeating();
    }

    Place place() {
        return place;
    }

    Shown relativeHumidity() {
        return new Shown(this::shownHumidity, () -> local.relativeHumidity(), this::humidityError);
    }

    private double shownHumidity() {
        double at = quick.value();
        double signal = at
                - humidity.creepShare() * (at - late.value())
                + humidity.staticError(at, sensor.value())
                + play.offsetAt(at);
        return Shown.rounded(Math.clamp(signal + humidityNoise.value(), 0, 100), humidity.resolution());
    }

    private double humidityError() {
        double settled = settledSensor();
        double at = local.relativeHumidityAt(settled);
        return at + humidity.staticError(at, settled) + play.offsetAt(at) - local.relativeHumidity();
    }

    Shown temperature() {
        return new Shown(
                () -> Shown.rounded(
                        temperature.shownFor(sensor.value()) + temperatureNoise.value(), temperature.resolution()),
                () -> local.celsius(),
                () -> temperature.shownFor(settledSensor()) - local.celsius());
    }
}
