// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import io.quarkus.qute.TemplateData;
import isohume.station.convert.Measure;
import isohume.station.convert.Question;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The Convert page's fields as they were typed.
 *
 * @param known which measure of humidity {@code value} is, one of {@link Question#HUMIDITIES}
 */
@TemplateData
public record ConvertForm(String temperature, String known, String value, String pressure, String formulation) {
    /** Filled in as on a first visit where nothing was typed yet. */
    static ConvertForm from(MultivaluedMap<String, String> query) {
        if (!query.containsKey(Question.TEMPERATURE)) {
            return new ConvertForm("23", Measure.DEW_POINT.key(), "12", "101325", Question.key(Question.USUAL));
        }
        return new ConvertForm(
                text(query.getFirst(Question.TEMPERATURE)),
                text(query.getFirst("known")),
                text(query.getFirst("value")),
                text(query.getFirst(Question.PRESSURE)),
                text(query.getFirst(Question.FORMULATION)));
    }

    /** As a question is read. */
    Map<String, String> typed() {
        String measure = Question.HUMIDITIES.contains(known) ? known : Measure.DEW_POINT.key();
        return Map.of(
                Question.TEMPERATURE,
                temperature,
                measure,
                value,
                Question.PRESSURE,
                pressure,
                Question.FORMULATION,
                formulation);
    }

    private static String text(@Nullable String typed) {
        return typed == null ? "" : typed.strip();
    }
}
