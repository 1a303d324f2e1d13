// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import isohume.station.convert.Conversion;
import isohume.station.convert.Measure;
import isohume.station.convert.Question;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestQuery;
import org.jspecify.annotations.Nullable;

/** The Convert page's data. */
@Path("/api/convert")
@Tag(name = "convert")
@Produces(MediaType.APPLICATION_JSON)
public final class ConvertApi {
    /** All measures, each under its key, with their units beside them. */
    @Schema(description = "Besides these keys there is one for each measure, as units lists them.")
    @JsonPropertyOrder({"temperature", "pressure", "formulation"})
    public record Answer(
            double temperature,
            double pressure,
            String formulation,
            @JsonAnyGetter @Schema(hidden = true) Map<String, Double> measures,
            Map<String, String> units,
            List<String> notes) {}

    @GET
    @Operation(
            summary = "Converts one measure of humidity into the others",
            description = "Give the temperature and exactly one of dew_point, frost_point and relative_humidity.")
    public Answer convert(
            @Parameter(description = "air temperature, °C", required = true) @RestQuery("temperature") @Nullable
                    String temperature,
            @Parameter(description = "°C, over the phase given") @RestQuery("dew_point") @Nullable String dewPoint,
            @Parameter(description = "°C, over ice") @RestQuery("frost_point") @Nullable String frostPoint,
            @Parameter(description = "% RH over liquid water") @RestQuery("relative_humidity") @Nullable
                    String relativeHumidity,
            @Parameter(description = "Pa; 101325 when not given") @RestQuery("pressure") @Nullable String pressure,
            @Parameter(description = "of a dew point's deposit: water or ice") @RestQuery("phase") @Nullable
                    String phase,
            @Parameter(description = "sonntag_1990 or hardy_1998") @RestQuery("formulation") @Nullable
                    String formulation) {
        Map<String, String> typed = new HashMap<>();
        put(typed, Question.TEMPERATURE, temperature);
        put(typed, Question.DEW_POINT, dewPoint);
        put(typed, Question.FROST_POINT, frostPoint);
        put(typed, Question.RELATIVE_HUMIDITY, relativeHumidity);
        put(typed, Question.PRESSURE, pressure);
        put(typed, Question.PHASE, phase);
        put(typed, Question.FORMULATION, formulation);
        return answer(Conversion.of(Question.read(typed)));
    }

    private static void put(Map<String, String> typed, String field, @Nullable String text) {
        if (text != null) {
            typed.put(field, text);
        }
    }

    private static Answer answer(Conversion conversion) {
        Map<String, Double> measures = new LinkedHashMap<>();
        Map<String, String> units = new LinkedHashMap<>();
        units.put(Question.TEMPERATURE, "°C");
        units.put(Question.PRESSURE, "Pa");
        for (Map.Entry<Measure, Double> entry : conversion.measures().entrySet()) {
            measures.put(entry.getKey().key(), entry.getValue());
            units.put(entry.getKey().key(), entry.getKey().unit());
        }
        Question question = conversion.question();
        return new Answer(
                question.temperature().celsius(),
                question.pressure().pascals(),
                Question.key(question.formulation()),
                measures,
                units,
                conversion.notes());
    }
}
