// SPDX-License-Identifier: Apache-2.0
package isohume.station.convert;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import isohume.uncertainty.Budget;
import isohume.uncertainty.Contribution;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/**
 * A conversion as data, for the command line and for {@code /api/convert}: all measures, each under its key, with their
 * units beside them.
 *
 * @param measures null where no formula vouches for one
 * @param leftOut why a measure is null
 * @param uncertainty U of each measure at k = 2, in the unit of its difference; missing when none was asked for
 * @param budget the lines behind each U
 */
@Schema(description = "Besides these keys there is one for each measure, as units lists them.")
@JsonInclude(JsonInclude.Include.ALWAYS)
@JsonPropertyOrder({"temperature", "pressure", "formulation"})
public record Answer(
        double temperature,
        double pressure,
        String formulation,
        @JsonAnyGetter @Schema(hidden = true) Map<String, @Nullable Double> measures,
        Map<String, String> units,
        @JsonProperty("left_out") Map<String, String> leftOut,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) Map<String, Double> uncertainty,

        @JsonProperty("coverage_factor") @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
        Double coverageFactor,

        @JsonInclude(JsonInclude.Include.NON_EMPTY) Map<String, List<Line>> budget,
        List<String> notes) {

    /**
     * One line of a budget.
     *
     * @param u standard uncertainty, in {@code unit}
     * @param contribution to the measure, in the unit of its difference
     */
    public record Line(
            String symbol,
            String description,
            String unit,
            double u,
            double sensitivity,
            double contribution,
            String evidence) {
        static Line of(Contribution part) {
            return new Line(
                    part.input().symbol(),
                    part.input().description(),
                    part.input().unit(),
                    part.standardUncertainty(),
                    part.sensitivity(),
                    part.contribution(),
                    part.input().evidence());
        }
    }

    public static Answer of(Conversion conversion) {
        Map<String, @Nullable Double> measures = new LinkedHashMap<>();
        Map<String, String> units = new LinkedHashMap<>();
        Map<String, String> leftOut = new LinkedHashMap<>();
        units.put(Question.TEMPERATURE, "°C");
        units.put(Question.PRESSURE, "Pa");
        for (Measure measure : Measure.values()) {
            measures.put(measure.key(), conversion.measures().get(measure));
            units.put(measure.key(), measure.unit());
        }
        conversion.leftOut().forEach((measure, why) -> leftOut.put(measure.key(), why));
        Map<String, Double> uncertainty = new LinkedHashMap<>();
        Map<String, List<Line>> lines = new LinkedHashMap<>();
        conversion.budgets().forEach((measure, budget) -> {
            uncertainty.put(measure.key(), budget.expanded());
            lines.put(
                    measure.key(), budget.contributions().stream().map(Line::of).toList());
        });
        Question question = conversion.question();
        return new Answer(
                question.temperature().value(),
                question.pressure().value(),
                Question.key(question.formulation()),
                measures,
                units,
                leftOut,
                uncertainty,
                conversion.budgets().values().stream()
                        .map(Budget::coverageFactor)
                        .findFirst()
                        .orElse(null),
                lines,
                conversion.notes());
    }
}
