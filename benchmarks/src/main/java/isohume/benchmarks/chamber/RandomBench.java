// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.chamber;

import isohume.simulator.BenchParameters;
import isohume.simulator.Enclosure;
import isohume.simulator.HumidityResponse;
import isohume.simulator.MirrorSpecification;
import isohume.simulator.Sorption;
import isohume.simulator.Streams;
import isohume.simulator.Surroundings;
import isohume.simulator.TemperatureResponse;
import isohume.simulator.ThermometerSpecification;
import isohume.simulator.TransmitterSpecification;
import isohume.simulator.Uniformity;
import java.util.List;
import java.util.Random;

/**
 * A bench that nobody has seen before, drawn from what portable and bench-top chambers may be like; the ranges stand in
 * {@code docs/formats/simulated-bench.md}. What belongs together grows together: a chamber of 30 L has the walls, the drive
 * and the flow of one.
 */
final class RandomBench {
    private final Random random;

    private RandomBench(long seed) {
        random = new Random(seed);
    }

    static BenchParameters drawn(long seed) {
        return new RandomBench(seed).bench();
    }

    private BenchParameters bench() {
        double litres = between(0.8, 30);
        return new BenchParameters(
                enclosure(litres),
                new Sorption(evenly(0, 0.3), between(40, 300), evenly(0, 0.6), between(400, 5000), evenly(0, 5)),
                streams(litres),
                new Surroundings(
                        evenly(17, 28),
                        evenly(0.1, 1.2),
                        evenly(25, 70),
                        evenly(80_000, 105_000),
                        evenly(50, 300),
                        evenly(0, 100),
                        evenly(0, 150)),
                new Uniformity(
                        between(0.03, 0.25), evenly(0, 0.01), evenly(0, 0.01), evenly(0, 0.06), evenly(0, 0.015)),
                mirror(),
                thermometer(),
                List.of(transmitter("A-1042", 0.01), transmitter("B-2077", 0.1), transmitter("C-3310", 0.1)),
                BenchParameters.portable().guard(),
                between(0.5, 2),
                1);
    }

    private Enclosure enclosure(double litres) {
        double area = Math.pow(litres, 0.67); // surfaces grow so
        return new Enclosure(
                litres,
                area * between(40, 90),
                area * between(300, 1200),
                area * between(1.5, 4),
                area * between(0.03, 0.12),
                area * between(0.04, 0.16),
                evenly(0, 0.06),
                evenly(0.3, 2),
                area * between(20, 60),
                area * between(15, 45));
    }

    private Streams streams(double litres) {
        double change = litres / between(0.5, 2.5); // minutes to change the air over
        double hold = change * between(0.2, 0.6);
        return new Streams(
                hold,
                change,
                hold * evenly(0, 0.02),
                5,
                evenly(30, 45),
                between(100, 600),
                evenly(0.93, 1),
                60 + 80 * hold,
                300 + 500 * hold,
                0.20,
                evenly(0, 0.03) * (300 + 500 * hold),
                evenly(-50, -32));
    }

    private MirrorSpecification mirror() {
        return new MirrorSpecification(
                between(8, 60),
                0.01,
                between(0.002, 0.02),
                between(0.001, 0.015),
                between(0.06, 0.2),
                between(0.02, 0.1),
                between(0.01, 0.05),
                between(0.005, 0.04));
    }

    private ThermometerSpecification thermometer() {
        return new ThermometerSpecification(
                between(8, 60),
                0.001,
                between(0.0005, 0.005),
                between(0.02, 0.08),
                between(0.01, 0.05),
                evenly(0, 0.02),
                evenly(0, 0.05),
                between(10, 100),
                between(10, 100));
    }

    private TransmitterSpecification transmitter(String id, double finest) {
        HumidityResponse humidity = new HumidityResponse(
                finest * (random.nextBoolean() ? 1 : 10),
                evenly(-2, 2),
                evenly(-1, 1),
                evenly(-0.5, 0.5),
                evenly(0, 3),
                evenly(-0.02, 0.02),
                evenly(0.1, 2),
                between(0.0005, 0.006),
                between(600, 4000),
                between(5, 120),
                between(0.005, 0.06));
        TemperatureResponse temperature = new TemperatureResponse(
                random.nextBoolean() ? 0.01 : 0.1,
                evenly(-0.3, 0.3),
                evenly(-0.003, 0.003),
                evenly(0, 0.15),
                between(20, 300),
                between(0.001, 0.02));
        return new TransmitterSpecification(id, humidity, temperature, 0.15);
    }

    private double evenly(double lowest, double highest) {
        return lowest + random.nextDouble() * (highest - lowest);
    }

    /** Evenly in proportion, for what may be several times as much. */
    private double between(double lowest, double highest) {
        return lowest * Math.pow(highest / lowest, random.nextDouble());
    }
}
