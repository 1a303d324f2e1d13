// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.endurance;

import isohume.device.Answer;
import isohume.device.Chamber;
import isohume.device.Channel;
import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.device.Setpoint;
import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.Bench;
import isohume.run.Timekeeper;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * A bench of 24 channels without any line: air that goes to its target with a time constant of four minutes, references,
 * and instruments that lag behind it by two, all with noise. Its physics are simple on purpose: what is measured is the
 * program.
 */
final class ManyChannels implements Timekeeper {
    static final int INSTRUMENTS = 8; // of a humidity and a temperature each, beside 5 references and 3 of the chamber
    private static final double AIR_SECONDS = 240;
    private static final double PROBE_SECONDS = 120;

    private final MoistAir moist = MoistAir.by(Formulation.SONNTAG_1990);
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final Random chance = new Random(7);
    private final double[] probes = new double[INSTRUMENTS];
    private Instant now = Instant.parse("2026-03-02T18:00:00Z");
    private double celsius = 23;
    private double percent = 45;
    private double wantedCelsius = 23;
    private double wantedPercent = 45;
    private long spent;

    ManyChannels() {
        Arrays.fill(probes, percent);
    }

    Bench bench() {
        return new Bench(new Chest(), List.of(new References(), new Probes()));
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public void waitUntil(Instant when, BooleanSupplier unless) {
        long begun = threads.getCurrentThreadCpuTime();
        long seconds = Duration.between(now, when).toSeconds();
        for (long i = 0; i < seconds; i++) {
            step();
        }
        now = when;
        spent += threads.getCurrentThreadCpuTime() - begun;
    }

    /** What its physics took since it was last asked, ns. */
    long spent() {
        long all = spent;
        spent = 0;
        return all;
    }

    private void step() {
        celsius += (wantedCelsius - celsius) / AIR_SECONDS;
        percent += (wantedPercent - percent) / AIR_SECONDS;
        for (int i = 0; i < INSTRUMENTS; i++) {
            probes[i] += (percent - probes[i]) / PROBE_SECONDS;
        }
    }

    private Reading value(String instrument, String name, Quantity quantity, double value, double noise, int digits) {
        return new Reading.Value(
                new Channel(instrument, name, quantity),
                now,
                BigDecimal.valueOf(value + noise * chance.nextGaussian()).setScale(digits, RoundingMode.HALF_EVEN),
                "0000");
    }

    private final class Chest implements Chamber {
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
            return List.of(
                    value("chamber", "temperature", Quantity.TEMPERATURE, celsius + 0.05, 0.003, 2),
                    value("chamber", "relative_humidity", Quantity.RELATIVE_HUMIDITY, percent - 0.3, 0.02, 2),
                    value("chamber", "water_level", Quantity.WATER_LEVEL, 80, 0, 1));
        }

        @Override
        public Answer request(Setpoint target) {
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

    private final class References implements Instrument {
        @Override
        public String id() {
            return "references";
        }

        @Override
        public List<Channel> channels() {
            return List.of();
        }

        @Override
        public List<Reading> read() {
            double dewPoint = moist.dewPoint(
                            RelativeHumidity.ofPercent(percent),
                            Temperature.ofCelsius(celsius),
                            Pressure.STANDARD,
                            Pressure.STANDARD,
                            Phase.WATER)
                    .celsius();
            return List.of(
                    value("mirror", "dew_point", Quantity.DEW_POINT, dewPoint, 0.004, 3),
                    value("mirror", "deposit", Quantity.DEPOSIT, 1, 0, 0),
                    value("thermometer", "temperature", Quantity.TEMPERATURE, celsius, 0.001, 3),
                    value("thermometer", "pressure", Quantity.PRESSURE, 101_325, 1.5, 0),
                    value("thermometer", "mirror_pressure", Quantity.PRESSURE, 101_325, 1.5, 0));
        }

        @Override
        public void close() {}
    }

    private final class Probes implements Instrument {
        @Override
        public String id() {
            return "probes";
        }

        @Override
        public List<Channel> channels() {
            return List.of();
        }

        @Override
        public List<Reading> read() {
            List<Reading> readings = new ArrayList<>();
            for (int i = 0; i < INSTRUMENTS; i++) {
                double own = 0.4 - 0.1 * i;
                readings.add(
                        value(probe(i), "relative_humidity", Quantity.RELATIVE_HUMIDITY, probes[i] + own, 0.02, 2));
                readings.add(value(probe(i), "temperature", Quantity.TEMPERATURE, celsius + own / 10, 0.003, 2));
            }
            return readings;
        }

        @Override
        public void close() {}
    }

    static String probe(int number) {
        return "P-" + (number + 1);
    }
}
