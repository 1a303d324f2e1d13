// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.moistair.MoistAir;
import isohume.moistair.OutsideRange;
import isohume.quantity.Quantity;
import isohume.result.PointResult.Conditions;
import isohume.uncertainty.Budget;
import isohume.uncertainty.montecarlo.Propagation;
import java.util.List;
import java.util.Optional;

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
        List<String> keys = channel.derived()
                ? List.of(item.key(channel.parent()), item.key(Quantity.TEMPERATURE))
                : List.of(item.key(channel.quantity()));
        List<Recording.Row> rows = recording.rows().stream()
                .filter(r -> r.shown().keySet().containsAll(keys))
                .toList();
        if (rows.size() < 2) {
            return Optional.empty();
        }
        if (rows.size() < recording.rows().size()) { // the references count where they stand beside a reading
            return new PointEvaluation(job, air, recording.of(rows), before).of(item, channel);
        }
        return switch (channel.quantity()) {
            case RELATIVE_HUMIDITY -> shown(item, channel).map(shown -> humidity(item, shown));
            case TEMPERATURE -> shown(item, channel).map(shown -> temperature(item, shown));
            case DEW_POINT -> dewPoint(item, channel);
            case PRESSURE, DEPOSIT, WATER_LEVEL -> Optional.empty();
        };
    }

    /** None also where a frost point comes so near to 0 °C that what is uncertain of it lies beyond the formulas of ice. */
    private Optional<PointResult> dewPoint(Item item, Specification channel) {
        try {
            return shown(item, channel).map(shown -> dewPoint(item, shown));
        } catch (OutsideRange beyond) {
            return Optional.empty();
        }
    }

    private Optional<Shown> shown(Item item, Specification channel) {
        return Shown.of(item, channel, recording.rows(), situation.model().air(), conditions.pressure());
    }

    private PointResult humidity(Item item, Shown shown) {
        HumidityModel model = situation.model();
        Track difference = Track.of(
                shown.rows(),
                r -> shown.in(r) - model.reference(r.dewPoint(), r.temperature(), r.mirrorPressure() - r.pressure()));
        Lines lines = settling(shown, difference, shown.parents().isPresent() ? "" : "u_creep");
        return result(item, shown, difference, situation.humidity(item, lines, shown.derivation()));
    }

    private PointResult temperature(Item item, Shown shown) {
        Track difference = Track.of(shown.rows(), shown.channel().resolution(), r -> shown.in(r) - r.temperature());
        Lines lines = settling(shown, difference, "");
        return result(item, shown, difference, situation.temperature(item, lines));
    }

    private PointResult dewPoint(Item item, Shown shown) {
        DewPointModel model =
                new DewPointModel(situation.model().air(), recording.deposit(), conditions.pressure(), shown.over());
        Track difference = Track.of(
                shown.rows(), r -> shown.in(r) - model.reference(r.dewPoint(), r.mirrorPressure() - r.pressure()));
        Lines lines = settling(shown, difference, shown.parents().isPresent() ? "u1_creep" : "");
        return result(item, shown, difference, situation.dewPoint(item, lines, model, shown.derivation()));
    }

    /** @param creep the symbol of what a polymer sensor still owes, where one measures; else empty */
    private Lines settling(Shown shown, Track difference, String creep) {
        Quantity quantity = shown.channel().quantity();
        Optional<StillToCome> toCome = shown.toCome(recording.toCome());
        if (toCome.isPresent()) {
            return shown.lines().settling(toCome.get(), quantity);
        }
        Lines lines = shown.lines().settling(difference, quantity);
        return creep.isEmpty() ? lines : lines.creep(creep, conditions.relativeHumidity() - before);
    }

    private PointResult result(Item item, Shown shown, Track difference, Budget budget) {
        Specification channel = shown.channel();
        double reading = shown.track().mean();
        Propagation both = BothMethods.of(
                budget, job.number(), String.valueOf(recording.point().number()), item.key(channel.quantity()));
        return new PointResult(
                item.id(),
                channel.quantity(),
                recording.point(),
                reading - budget.value(),
                reading,
                both,
                situation.decide(channel, reading, budget.value(), both.expanded(), both.coverageFactor()),
                shown.rows().size(),
                difference.effectiveNumber(),
                conditions,
                channel.quantity() == Quantity.DEW_POINT ? Optional.of(shown.over()) : Optional.empty());
    }
}
