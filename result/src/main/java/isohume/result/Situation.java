// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.quantity.Quantity;
import isohume.result.Characterisation.AtTemperature;
import isohume.uncertainty.Budget;
import isohume.uncertainty.Input;
import isohume.uncertainty.Model;
import isohume.uncertainty.Origin;
import isohume.uncertainty.conformity.Conformity;
import isohume.uncertainty.conformity.Decision;
import isohume.uncertainty.conformity.DecisionRule;
import isohume.uncertainty.conformity.Tolerance;
import java.util.List;
import java.util.Optional;

/**
 * The air at one point as the references show it, and the budget of whatever is compared with it there. The same lines
 * serve readings that were taken and readings that are only planned.
 *
 * @param dewPoint the dew or frost point as the reference shows it, °C
 * @param temperature of the air as the reference shows it, °C
 * @param mirrorAboveChamber pressure difference, Pa
 * @param humidity reference relative humidity, % RH
 */
record Situation(
        Job job, HumidityModel model, Track dewPoint, Track temperature, double mirrorAboveChamber, double humidity) {
    private static final double DRY_PERCENT = 20; // below, sorption in the sample line counts for more

    /** A value with its certificate's correction. */
    static double corrected(Job job, Quantity quantity, double reading) {
        return reading + Certified.at(job.reference(quantity), reading).correction();
    }

    /** Lines of a reading of relative humidity, completed. */
    Budget humidity(Item item, Lines reading) {
        return humidity(item, reading, Optional.empty());
    }

    /** The same, of a reading that is derived from others. */
    Budget humidity(Item item, Lines reading, Optional<Derivation> derivation) {
        String evidence = "characterisation " + job.characterisation().number();
        Lines lines = mirror(reading)
                .reference("t_", "air temperature", job.reference(Quantity.TEMPERATURE), temperature)
                .place(place(), evidence);
        addFormulas(lines);
        return budget(item, Quantity.RELATIVE_HUMIDITY, lines, HumidityModel.PARTS, model, derivation);
    }

    /**
     * Lines of a reading of dew point, completed. What the formulas may be wrong by counts where they were used: to derive
     * the reading, or to get from the mirror's phase to the reading's.
     */
    Budget dewPoint(Item item, Lines reading, DewPointModel other, Optional<Derivation> derivation) {
        Lines lines = mirror(reading);
        if (derivation.isPresent()) {
            addFormulas(lines);
        } else if (other.over() != other.deposit()) {
            double mirror = corrected(job, Quantity.DEW_POINT, dewPoint.mean());
            StatedLines.addConversionTo(
                    lines,
                    model,
                    mirror,
                    model.chamberPascals() + mirrorAboveChamber,
                    other.reference(mirror, mirrorAboveChamber),
                    other.over());
        }
        return budget(item, Quantity.DEW_POINT, lines, DewPointModel.PARTS, other, derivation);
    }

    private void addFormulas(Lines lines) {
        StatedLines.addTo(
                lines,
                model,
                corrected(job, Quantity.DEW_POINT, dewPoint.mean()),
                model.chamberPascals() + mirrorAboveChamber,
                corrected(job, Quantity.TEMPERATURE, temperature.mean()));
    }

    private static Budget budget(
            Item item,
            Quantity quantity,
            Lines lines,
            List<String> parts,
            Model model,
            Optional<Derivation> derivation) {
        List<Input> inputs = lines.all();
        return Budget.of(
                "error of " + item.id() + ", " + quantity.key().replace('_', ' '),
                quantity.differenceUnit(),
                inputs,
                derivation
                        .map(d -> Parts.over(inputs, Derivation.parts(parts), d.within(model)))
                        .orElseGet(() -> Parts.over(inputs, parts, model)));
    }

    /** The mirror's lines. */
    private Lines mirror(Lines reading) {
        Characterisation study = job.characterisation();
        String evidence = "characterisation " + study.number();
        return reading.reference("d_", "dew point", job.reference(Quantity.DEW_POINT), dewPoint)
                .halfWidth("d_cont", "dew point: condensate", study.condensate(), "K", Origin.ASSUMED, evidence)
                .halfWidth(
                        "d_line",
                        "dew point: sample line",
                        humidity < DRY_PERCENT ? study.dryLine() : study.line(),
                        "K",
                        Origin.CERTIFICATE,
                        evidence)
                .pressureDifference(mirrorAboveChamber, study.pressureDifference(), evidence);
    }

    /** Lines of a reading of temperature, completed. */
    Budget temperature(Item item, Lines reading) {
        String evidence = "characterisation " + job.characterisation().number();
        Lines lines = reading.reference("t_", "air temperature", job.reference(Quantity.TEMPERATURE), temperature)
                .place(place(), evidence)
                .halfWidth("t_stem", "heat along the stem or port", place().stem(), "K", Origin.CERTIFICATE, evidence);
        return TemperatureModel.budget("error of " + item.id() + ", temperature", lines.all());
    }

    private AtTemperature place() {
        return job.characterisation().at(temperature.mean());
    }

    /** What the job's rule says of an error; empty when it asks for no decision. */
    Optional<Decision> decide(
            Specification channel, double reading, double error, double expanded, double coverageFactor) {
        Tolerance tolerance = Tolerance.symmetric(channel.toleranceAt(reading));
        Optional<DecisionRule> rule = switch (job.decision()) {
            case NONE -> Optional.empty();
            case SIMPLE_ACCEPTANCE -> Optional.of(DecisionRule.SIMPLE_ACCEPTANCE);
            case GUARD_BAND -> Optional.of(DecisionRule.GUARD_BAND_U);
            case GUARD_BAND_FOUR_ANSWERS -> Optional.of(DecisionRule.FOUR_OUTCOMES);
        };
        return rule.map(r -> Conformity.decide(error, expanded, coverageFactor, tolerance, r));
    }
}
