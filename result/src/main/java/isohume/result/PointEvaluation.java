// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.moistair.MoistAir;
import isohume.quantity.Quantity;
import isohume.result.PointResult.Conditions;
import isohume.uncertainty.Budget;
import isohume.uncertainty.montecarlo.Propagation;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One recording: the references once, then each instrument against them. */
final class PointEvaluation {
    private final Recording recording;
    private final Job job;
    private final MoistAir air;
    private final Situation situation;
    private final Conditions conditions;
    private final double before;

    /**
     * A recording to evaluate.
     *
     * @param before % RH in which the instruments were before this point
     */
    PointEvaluation(Job job, MoistAir air, Recording recording, double before) {
        this.before = before;
        this.job = job;
        this.air = air;
        this.recording = recording;
        List<Recording.Row> rows = recording.rows();
        Track dewPoint = Track.of(rows, Recording.Row::dewPoint);
        Track temperature = Track.of(rows, Recording.Row::temperature);
        double pressure = Situation.corrected(
                job, Quantity.PRESSURE, Track.of(rows, Recording.Row::pressure).mean());
        HumidityModel model = new HumidityModel(air, recording.deposit(), pressure);
        double dew = Situation.corrected(job, Quantity.DEW_POINT, dewPoint.mean());
        double celsius = Situation.corrected(job, Quantity.TEMPERATURE, temperature.mean());
        double humidity = model.reference(dew, celsius, mirrorAboveChamber());
        this.situation = new Situation(job, model, dewPoint, temperature, mirrorAboveChamber(), humidity);
        this.conditions = new Conditions(
                dew,
                recording.deposit(),
                recording.depositBy(),
                celsius,
                humidity,
                pressure,
                rows.getFirst().at(),
                rows.getLast().at());
    }

    /** Reference humidity of this point, % RH. */
    double humidity() {
        return conditions.relativeHumidity();
    }

    private double mirrorAboveChamber() {
        return recording.rows().stream()
                .mapToDouble(r -> r.mirrorPressure() - r.pressure())
                .average()
                .orElseThrow();
    }

    /** Empty when the instrument has no such channel, or too few readings of it were taken. */
    Optional<PointResult> of(Item item, Specification channel) {
        String key = item.key(channel.quantity());
        List<Recording.Row> rows = recording.rows().stream()
                .filter(r -> r.shown().containsKey(key))
                .toList();
        if (rows.size() < 2) {
            return Optional.empty();
        }
        if (rows.size() < recording.rows().size()) { // the references count where they stand beside a reading
            return new PointEvaluation(job, air, recording.of(rows), before).of(item, channel);
        }
        Track shown = Track.of(rows, channel.resolution(), r -> shown(r, key));
        return switch (channel.quantity()) {
            case RELATIVE_HUMIDITY -> Optional.of(humidity(item, channel, rows, shown));
            case TEMPERATURE -> Optional.of(temperature(item, channel, rows, shown));
            case DEW_POINT, PRESSURE, DEPOSIT, WATER_LEVEL -> Optional.empty();
        };
    }

    private PointResult humidity(Item item, Specification channel, List<Recording.Row> rows, Track shown) {
        String key = item.key(channel.quantity());
        Track difference = Track.of(
                rows,
                r -> shown(r, key)
                        - situation
                                .model()
                                .reference(r.dewPoint(), r.temperature(), r.mirrorPressure() - r.pressure()));
        Lines lines = new Lines().reading(shown, channel);
        StillToCome toCome = recording.toCome().get(key);
        if (toCome == null) {
            lines = lines.settling(difference, channel.quantity()).creep(conditions.relativeHumidity() - before);
        } else {
            lines = lines.settling(toCome, channel.quantity());
        }
        return result(item, channel, shown, difference, situation.humidity(item, lines));
    }

    private PointResult temperature(Item item, Specification channel, List<Recording.Row> rows, Track shown) {
        String key = item.key(channel.quantity());
        Track difference = Track.of(rows, channel.resolution(), r -> shown(r, key) - r.temperature());
        Lines lines = new Lines().reading(shown, channel);
        @Nullable StillToCome toCome = recording.toCome().get(key);
        lines = toCome == null
                ? lines.settling(difference, channel.quantity())
                : lines.settling(toCome, channel.quantity());
        return result(item, channel, shown, difference, situation.temperature(item, lines));
    }

    private PointResult result(Item item, Specification channel, Track shown, Track difference, Budget budget) {
        Propagation both = BothMethods.of(
                budget, job.number(), String.valueOf(recording.point().number()), item.key(channel.quantity()));
        return new PointResult(
                item.id(),
                channel.quantity(),
                recording.point(),
                shown.mean() - budget.value(),
                shown.mean(),
                both,
                situation.decide(channel, shown.mean(), budget.value(), both.expanded(), both.coverageFactor()),
                recording.rows().size(),
                difference.effectiveNumber(),
                conditions);
    }

    private static double shown(Recording.Row row, String key) {
        Double value = row.shown().get(key);
        if (value == null) {
            throw new IllegalStateException("rows without " + key + " were left out before");
        }
        return value;
    }
}
