// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.alignment;

import isohume.result.alignment.TimedValues;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;

/**
 * The records of a reference and of a logger in one chamber, with the logger's clock known. Everything that is not given
 * is drawn anew for each pair: what the chamber does, the sensors' lags, gains, creep, wander, noise and resolution,
 * rows that are lost.
 */
final class SimulatedPair {
    /** What the chamber does. */
    enum Course {
        STEPS,
        FLAT,
        RAMP,
        CYCLES
    }

    private static final double DAY = 86_400;
    private static final double GRID = 5;
    private static final double MARGIN = 3.5 * 3600;

    private final SplittableRandom random;
    private final double interval;
    private final double offset;
    private final double drift;
    private final double length;
    private final double[] chamber;

    SimulatedPair(long seed, Course course) {
        random = new SplittableRandom(seed);
        double[] minutes = {1, 2, 5, 10, 15};
        interval = 60 * minutes[random.nextInt(minutes.length)];
        offset = uniform(-7200, 7200);
        drift = uniform(-5, 5);
        List<double[]> targets = targets(course);
        length = targets.stream().mapToDouble(t -> t[1]).sum();
        chamber = chamber(course, targets);
    }

    double interval() {
        return interval;
    }

    /** The logger's clock minus the reference's, in seconds, at a time of the logger's clock. */
    double offsetAt(double logger) {
        return offset + drift * (logger - offset - length / 2) / DAY;
    }

    double drift() {
        return drift;
    }

    private double uniform(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double logUniform(double low, double high) {
        return low * Math.exp(Math.log(high / low) * random.nextDouble());
    }

    /** Levels in % RH with how long each is held, in seconds. */
    private List<double[]> targets(Course course) {
        List<double[]> targets = new ArrayList<>();
        int count = course == Course.FLAT ? 1 : 2 + random.nextInt(6);
        double level = uniform(15, 85);
        for (int i = 0; i < count; i++) {
            double held = Math.max(1800, interval * uniform(8, 20)) * (course == Course.FLAT ? 6 : 1);
            targets.add(new double[] {level, held});
            double change = logUniform(5, 60) * (random.nextBoolean() ? 1 : -1);
            level = level + change < 8 || level + change > 92 ? level - change : level + change;
            level = Math.clamp(level, 8, 92);
        }
        return targets;
    }

    /** The chamber's humidity on a grid that reaches beyond both ends, by a first-order approach and some wander. */
    private double[] chamber(Course course, List<double[]> targets) {
        int count = (int) ((length + 2 * MARGIN) / GRID) + 1;
        double[] values = new double[count];
        double approach = logUniform(20, 900);
        double wander = course == Course.STEPS ? logUniform(0.01, 0.3) : 0;
        double wanderTime = logUniform(60, 3600);
        double period = uniform(1200, 5000);
        double walk = 0;
        double air = targets.getFirst()[0];
        for (int i = 0; i < count; i++) {
            double time = i * GRID - MARGIN;
            double wanted = switch (course) {
                case STEPS, FLAT -> level(targets, time);
                case RAMP -> 30 + 40 * (time + MARGIN) / (length + 2 * MARGIN);
                case CYCLES -> Math.floorMod((long) (time + MARGIN), (long) period) < period / 2 ? 40 : 60;
            };
            air += (wanted - air) * (1 - Math.exp(-GRID / approach));
            walk += -walk * GRID / wanderTime + wander * Math.sqrt(2 * GRID / wanderTime) * normal();
            values[i] = air + walk;
        }
        return values;
    }

    private double level(List<double[]> targets, double time) {
        double end = 0;
        for (double[] target : targets) {
            end += target[1];
            if (time < end) {
                return target[0];
            }
        }
        return targets.getLast()[0];
    }

    private double normal() {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }

    /** The reference's record over the chamber's time and up to an hour on each side. */
    TimedValues reference() {
        double[] shown = lagged(chamber, logUniform(5, 60));
        double step = new double[] {5, 10, 30, 60}[random.nextInt(4)];
        double noise = logUniform(0.01, 0.1);
        double from = -uniform(0, 3600);
        return sampled(from, length + uniform(0, 3600), step, 0.01, noise, 0, time -> time, shown);
    }

    /** The logger's record: the chamber's time and up to an hour on each side. */
    TimedValues logger() {
        double[] shown = lagged(chamber, logUniform(5, 400));
        double creep = uniform(0, 0.03);
        double[] slow = lagged(chamber, 7200);
        double gain = uniform(0.95, 1.05);
        double level = uniform(-3, 3);
        for (int i = 0; i < shown.length; i++) {
            shown[i] = gain * ((1 - creep) * shown[i] + creep * slow[i]) + level;
        }
        double resolution = new double[] {0.01, 0.1, 0.1, 0.5}[random.nextInt(4)];
        double noise = logUniform(0.02, 0.5);
        double lost = random.nextInt(3) == 0 ? 0.05 : 0;
        double from = -uniform(0, 3600) + uniform(0, interval);
        return sampled(from, length + uniform(0, 3600), interval, resolution, noise, lost, this::clock, shown);
    }

    /** What the logger's clock shows, to a second, at a time of the reference's. */
    private double clock(double time) {
        return Math.floor(time + offset + drift * (time - length / 2) / DAY);
    }

    private TimedValues sampled(
            double from,
            double to,
            double step,
            double resolution,
            double noise,
            double lost,
            DoubleUnaryOperator clock,
            double[] shown) {
        List<Double> seconds = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (double time = from; time < to; time += step) {
            if (random.nextDouble() >= lost) {
                double value = shown[(int) ((time + MARGIN) / GRID)] + noise * normal();
                seconds.add(clock.applyAsDouble(time));
                values.add(Math.rint(value / resolution) * resolution);
            }
        }
        return new TimedValues(
                seconds.stream().mapToDouble(d -> d).toArray(),
                values.stream().mapToDouble(d -> d).toArray());
    }

    private static double[] lagged(double[] input, double seconds) {
        double[] output = input.clone();
        double keep = Math.exp(-GRID / seconds);
        for (int i = 1; i < output.length; i++) {
            output[i] = keep * output[i - 1] + (1 - keep) * input[i];
        }
        return output;
    }
}
