// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import isohume.device.Answer;
import isohume.device.Chamber;
import isohume.device.Channel;
import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.device.Setpoint;
import isohume.device.Trouble;
import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.Bench;
import isohume.run.Roles;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Random;

/** Air that follows its target exponentially, references that show it, and two probes that lag behind and err. */
final class InventedBench {
    static final Roles ROLES = new Roles(
            "mirror/dew_point",
            "mirror/deposit",
            "thermometer/temperature",
            "gauge/pressure",
            "gauge/mirror_pressure",
            List.of("A-1042/relative_humidity", "A-1042/temperature", "A-1043/relative_humidity"));

    private static final double AIR_SECONDS = 240;
    private static final double PROBE_SECONDS = 300;
    private static final MoistAir MOIST = MoistAir.by(Formulation.SONNTAG_1990);

    private final InstantSource clock;
    private final Random noise = new Random(7);
    volatile boolean silent;
    private Instant reached;
    private double celsius = 22.4;
    private double percent = 41;
    private double probe = 41;
    private double wantedCelsius = 22.4;
    private double wantedPercent = 41;

    InventedBench(InstantSource clock) {
        this.clock = clock;
        this.reached = clock.instant();
    }

    Bench bench() {
        return new Bench(new InventedChamber(), List.of(new Shown()));
    }

    private void follow() {
        double seconds = Duration.between(reached, clock.instant()).toMillis() / 1000.0;
        reached = clock.instant();
        double left = Math.exp(-seconds / AIR_SECONDS);
        celsius = wantedCelsius + (celsius - wantedCelsius) * left;
        percent = wantedPercent + (percent - wantedPercent) * left;
        probe = percent + (probe - percent) * Math.exp(-seconds / PROBE_SECONDS);
    }

    private Reading value(String instrument, String name, Quantity quantity, double value, double scatter, int digits) {
        return new Reading.Value(
                new Channel(instrument, name, quantity),
                clock.instant(),
                BigDecimal.valueOf(value + scatter * noise.nextGaussian()).setScale(digits, RoundingMode.HALF_EVEN),
                "invented");
    }

    private final class InventedChamber implements Chamber {
        @Override
        public String id() {
            return "chamber";
        }

        @Override
        public List<Channel> channels() {
            return List.of();
        }

        @Override
        public List<Reading> read() {
            follow();
            return List.of();
        }

        @Override
        public Answer request(Setpoint target) {
            follow();
            wantedCelsius = target.temperature().celsius();
            wantedPercent = target.humidity().percent();
            return new Answer.Taken(target);
        }

        @Override
        public Answer rest() {
            return new Answer.AtRest();
        }

        @Override
        public void close() {}
    }

    private final class Shown implements Instrument {
        @Override
        public String id() {
            return "references and probes";
        }

        @Override
        public List<Channel> channels() {
            return List.of();
        }

        @Override
        public List<Reading> read() {
            double dewPoint = MOIST.dewPoint(
                            RelativeHumidity.ofPercent(percent),
                            Temperature.ofCelsius(celsius),
                            Pressure.STANDARD,
                            Pressure.STANDARD,
                            Phase.WATER)
                    .celsius();
            Channel silenced = new Channel("A-1043", "relative_humidity", Quantity.RELATIVE_HUMIDITY);
            return List.of(
                    value("mirror", "dew_point", Quantity.DEW_POINT, dewPoint, 0.004, 3),
                    value("mirror", "deposit", Quantity.DEPOSIT, 1, 0, 0),
                    value("thermometer", "temperature", Quantity.TEMPERATURE, celsius, 0.001, 3),
                    value("gauge", "pressure", Quantity.PRESSURE, 101_325, 2, 0),
                    value("gauge", "mirror_pressure", Quantity.PRESSURE, 101_325, 2, 0),
                    value("A-1042", "relative_humidity", Quantity.RELATIVE_HUMIDITY, 0.5 + probe * 1.004, 0.02, 2),
                    value("A-1042", "temperature", Quantity.TEMPERATURE, celsius + 0.08, 0.003, 2),
                    silent
                            ? new Reading.Absent(silenced, clock.instant(), Trouble.SILENCE, "no reply within 1000 ms")
                            : value(
                                    "A-1043",
                                    "relative_humidity",
                                    Quantity.RELATIVE_HUMIDITY,
                                    probe * 0.985 - 0.3,
                                    0.02,
                                    2));
        }

        @Override
        public void close() {}
    }
}
