// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.moistair.MoistAir;
import isohume.quantity.Quantity;
import isohume.result.Characterisation.AtTemperature;
import isohume.result.PointResult.Conditions;
import isohume.uncertainty.Budget;
import isohume.uncertainty.Origin;
import isohume.uncertainty.conformity.Conformity;
import isohume.uncertainty.conformity.Decision;
import isohume.uncertainty.conformity.DecisionRule;
import isohume.uncertainty.conformity.Tolerance;
import isohume.uncertainty.montecarlo.Propagation;
import java.util.List;
import java.util.Optional;

/** One recording: the references once, then each instrument against them. */
final class PointEvaluation {
    private static final double DRY_PERCENT = 20; // below, sorption in the sample line counts for more

    private final Job job;
    private final Recording recording;
    private final HumidityModel model;
    private final Track dewPoint;
    private final Track temperature;
    private final AtTemperature place;
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
        this.recording = recording;
        List<Recording.Row> rows = recording.rows();
        this.dewPoint = Track.of(rows, Recording.Row::dewPoint);
        this.temperature = Track.of(rows, Recording.Row::temperature);
        double pressure = corrected(Quantity.PRESSURE, Track.of(rows, Recording.Row::pressure));
        this.model = new HumidityModel(air, recording.deposit(), pressure);
        this.place = job.characterisation().at(temperature.mean());
        this.conditions = conditions(rows, pressure);
    }

    /** Reference humidity of this point, % RH. */
    double humidity() {
        return conditions.relativeHumidity();
    }

    private Conditions conditions(List<Recording.Row> rows, double pressure) {
        double dew = corrected(Quantity.DEW_POINT, dewPoint);
        double celsius = corrected(Quantity.TEMPERATURE, temperature);
        return new Conditions(
                dew,
                recording.deposit(),
                recording.depositBy(),
                celsius,
                model.reference(dew, celsius, mirrorAboveChamber()),
                pressure,
                rows.getFirst().at(),
                rows.getLast().at());
    }

    private double corrected(Quantity quantity, Track track) {
        return track.mean()
                + Certified.at(job.reference(quantity), track.mean()).correction();
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
        Track shown = Track.of(rows, channel.resolution(), r -> shown(r, key));
        return switch (channel.quantity()) {
            case RELATIVE_HUMIDITY -> Optional.of(humidity(item, channel, rows, shown));
            case TEMPERATURE -> Optional.of(temperature(item, channel, rows, shown));
            case DEW_POINT, PRESSURE, DEPOSIT, WATER_LEVEL -> Optional.empty();
        };
    }

    private PointResult humidity(Item item, Specification channel, List<Recording.Row> rows, Track shown) {
        Track difference = Track.of(
                rows,
                r -> shown(r, item.key(channel.quantity()))
                        - model.reference(r.dewPoint(), r.temperature(), r.mirrorPressure() - r.pressure()));
        Characterisation study = job.characterisation();
        String evidence = "characterisation " + study.number();
        boolean dry = conditions.relativeHumidity() < DRY_PERCENT;
        Lines lines = new Lines()
                .reading(shown, difference, channel)
                .creep(conditions.relativeHumidity() - before)
                .reference("d_", "dew point", job.reference(Quantity.DEW_POINT), dewPoint)
                .halfWidth("d_cont", "dew point: condensate", study.condensate(), "K", Origin.ASSUMED, evidence)
                .halfWidth(
                        "d_line",
                        "dew point: sample line",
                        dry ? study.dryLine() : study.line(),
                        "K",
                        Origin.CERTIFICATE,
                        evidence)
                .pressureDifference(mirrorAboveChamber(), study.pressureDifference(), evidence)
                .reference("t_", "air temperature", job.reference(Quantity.TEMPERATURE), temperature)
                .place(place, evidence);
        StatedLines.addTo(
                lines,
                model,
                conditions.dewPoint(),
                conditions.pressure() + mirrorAboveChamber(),
                conditions.temperature());
        Budget budget = model.budget("error of " + item.id() + ", relative humidity", lines.all());
        return result(item, channel, shown, difference, budget);
    }

    private PointResult temperature(Item item, Specification channel, List<Recording.Row> rows, Track shown) {
        Track difference =
                Track.of(rows, channel.resolution(), r -> shown(r, item.key(channel.quantity())) - r.temperature());
        String evidence = "characterisation " + job.characterisation().number();
        Lines lines = new Lines()
                .reading(shown, difference, channel)
                .reference("t_", "air temperature", job.reference(Quantity.TEMPERATURE), temperature)
                .place(place, evidence)
                .halfWidth("t_stem", "heat along the stem or port", place.stem(), "K", Origin.CERTIFICATE, evidence);
        Budget budget = TemperatureModel.budget("error of " + item.id() + ", temperature", lines.all());
        return result(item, channel, shown, difference, budget);
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
                decide(channel, shown.mean(), both),
                recording.rows().size(),
                difference.effectiveNumber(),
                conditions);
    }

    private Optional<Decision> decide(Specification channel, double reading, Propagation both) {
        Tolerance tolerance = Tolerance.symmetric(channel.toleranceAt(reading));
        return switch (job.decision()) {
            case NONE -> Optional.empty();
            case SIMPLE_ACCEPTANCE -> Optional.of(decide(both, tolerance, DecisionRule.SIMPLE_ACCEPTANCE));
            case GUARD_BAND -> Optional.of(decide(both, tolerance, DecisionRule.GUARD_BAND_U));
            case GUARD_BAND_FOUR_ANSWERS -> Optional.of(decide(both, tolerance, DecisionRule.FOUR_OUTCOMES));
        };
    }

    private static Decision decide(Propagation both, Tolerance tolerance, DecisionRule rule) {
        return Conformity.decide(both.budget().value(), both.expanded(), both.coverageFactor(), tolerance, rule);
    }

    private static double shown(Recording.Row row, String key) {
        Double value = row.shown().get(key);
        if (value == null) {
            throw new IllegalStateException("rows without " + key + " were left out before");
        }
        return value;
    }
}
