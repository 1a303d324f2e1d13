// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Point;
import isohume.quantity.Pressure;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.uncertainty.Budget;
import isohume.uncertainty.conformity.Decision;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What uncertainty a result at a planned point will have, before anything is measured: the lines of its budget with the
 * references' certificates and the chamber's study as they are, the noise that such instruments usually show, and
 * nothing still to settle but what the usual rule leaves.
 *
 * @param budget of the error, about 0, in the quantity's difference unit
 * @param tolerance half-width at the point; 0 when no decision was asked for
 * @param best what the job's rule would say of an instrument without any error; empty when no decision was asked for
 */
public record Prediction(
        String instrument, Quantity quantity, Point point, Budget budget, double tolerance, Optional<Decision> best) {
    /** What waiting by the usual rule leaves to settle, as a standard uncertainty, in shares of U. */
    private static final double LEFT_OF_EXPANDED = 0.1;

    private static final int READINGS = 10; // independent ones: common practice, no source
    private static final double MIRROR_NOISE = 0.01; // u of the mean, K: common practice, no source
    private static final double THERMOMETER_NOISE = 0.003; // u of the mean, K: common practice, no source

    /** The expanded uncertainty to expect, in the quantity's difference unit. */
    public double expanded() {
        return budget.expanded();
    }

    /** Whether a pass without reserve is possible: an instrument without any error would get it. */
    public boolean passPossible() {
        return best.map(d -> d.verdict().isAccepted() && d.acceptanceIsPossible())
                .orElse(true);
    }

    /**
     * Every channel of every item at every point.
     *
     * @throws IllegalArgumentException when a reference or the chamber's study does not cover a point, naming it
     * @throws isohume.moistair.OutsideRange when the formulation does not cover it
     */
    public static List<Prediction> of(Job job, List<Point> points) {
        List<Prediction> predictions = new ArrayList<>();
        for (Point point : points) {
            for (Item item : job.items()) {
                item.channels().forEach(channel -> of(job, item, channel, point).ifPresent(predictions::add));
            }
        }
        return List.copyOf(predictions);
    }

    /** One channel at one point; empty for a quantity that is not evaluated. Throws as {@link #of(Job, List)}. */
    public static Optional<Prediction> of(Job job, Item item, Specification channel, Point point) {
        if (channel.derived()) {
            return Optional.empty(); // its noise depends on how that of its parents hangs together
        }
        Situation situation = planned(job, point);
        return switch (channel.quantity()) {
            case RELATIVE_HUMIDITY -> {
                double percent = point.humidity().percent();
                yield Optional.of(predicted(situation, item, channel, point, percent, humidityNoise(percent)));
            }
            case TEMPERATURE -> {
                double celsius = point.temperature().celsius();
                yield Optional.of(predicted(situation, item, channel, point, celsius, temperatureNoise(channel)));
            }
            case DEW_POINT, PRESSURE, DEPOSIT, WATER_LEVEL -> Optional.empty();
        };
    }

    private static Prediction predicted(
            Situation situation, Item item, Specification channel, Point point, double reading, double noise) {
        Track shown = Track.assumed(reading, noise, READINGS);
        Budget settled = budget(situation, item, channel, shown, 0);
        Budget budget = budget(situation, item, channel, shown, LEFT_OF_EXPANDED * settled.expanded());
        Optional<Decision> best = situation.decide(channel, reading, 0, budget.expanded(), budget.coverageFactor());
        double tolerance = best.map(d -> d.tolerance().upper()).orElse(0.0);
        return new Prediction(item.id(), channel.quantity(), point, budget, tolerance, best);
    }

    private static Budget budget(Situation situation, Item item, Specification channel, Track shown, double left) {
        Lines lines = new Lines().reading(shown, channel).settlingLeft(left, channel.quantity());
        return channel.quantity() == Quantity.TEMPERATURE
                ? situation.temperature(item, lines)
                : situation.humidity(item, lines);
    }

    /** Repeatability of polymer sensors, % RH: 0.04, 0.06 and 0.08 at 10, 50 and 90 % RH; common practice, no source. */
    private static double humidityNoise(double percent) {
        return 0.035 + 0.0005 * percent;
    }

    /** As much as one digit may hide, and no less than a hundredth of a kelvin; common practice, no source. */
    private static double temperatureNoise(Specification channel) {
        return Math.max(0.01, channel.resolution() / Math.sqrt(12) / Math.sqrt(READINGS));
    }

    private static Situation planned(Job job, Point point) {
        MoistAir air = MoistAir.by(job.formulation());
        Pressure pressure = Pressure.ofPascals(pressure(job));
        DewPoint dewPoint = dewPoint(air, point.humidity(), point.temperature(), pressure);
        HumidityModel model = new HumidityModel(air, dewPoint.deposit(), pressure.pascals());
        return new Situation(
                job,
                model,
                Track.assumed(dewPoint.celsius(), MIRROR_NOISE, READINGS),
                Track.assumed(point.temperature().celsius(), THERMOMETER_NOISE, READINGS),
                0,
                point.humidity().percent());
    }

    /** Standard pressure where the gauge's certificate covers it, else the nearest that it does. */
    private static double pressure(Job job) {
        List<Reference.CertifiedPoint> points =
                job.reference(Quantity.PRESSURE).traceability().points();
        return Math.clamp(
                Pressure.STANDARD.pascals(),
                points.getFirst().at(),
                points.getLast().at());
    }

    /** Frost below 0 °C, as a mirror is made to show it. */
    private static DewPoint dewPoint(MoistAir air, RelativeHumidity humidity, Temperature at, Pressure pressure) {
        DewPoint water = air.dewPoint(humidity, at, pressure, pressure, Phase.WATER);
        return water.celsius() < 0 ? air.dewPoint(humidity, at, pressure, pressure, Phase.ICE) : water;
    }
}
