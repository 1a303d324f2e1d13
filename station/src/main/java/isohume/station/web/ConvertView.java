// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import io.quarkus.qute.TemplateData;
import isohume.moistair.Formulation;
import isohume.station.convert.Conversion;
import isohume.station.convert.Measure;
import isohume.station.convert.NotUnderstood;
import isohume.station.convert.Question;
import isohume.uncertainty.Budget;
import isohume.uncertainty.Rounded;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The Convert page as it is shown.
 *
 * @param trouble why there are no rows; empty when there are
 * @param field the field that the trouble is about, as it is named on the page
 * @param api the address of the same answer as data
 */
@TemplateData
public record ConvertView(
        ConvertForm form,
        List<Known> known,
        List<Choice> formulations,
        List<Row> rows,
        List<Missing> missing,
        List<String> notes,
        String basis,
        String trouble,
        String field,
        String api) {

    /** One line of the answer. */
    @TemplateData
    public record Row(Measure measure, Figure figure, String uncertainty, String unit) {
        static Row of(Conversion conversion, Measure measure, double value) {
            Budget budget = conversion.budgets().get(measure);
            if (budget == null || !(budget.expanded() > 0)) {
                return new Row(measure, Figure.of(value, measure.decimals()), "", measure.unit());
            }
            Rounded rounded = Rounded.of(value, budget.expanded());
            return new Row(
                    measure,
                    Figure.of(rounded.value()),
                    rounded.uncertainty().toPlainString() + (measure.unit().equals("°C") ? " K" : ""),
                    measure.unit());
        }
    }

    /** A measure that has no value here, and why. */
    @TemplateData
    public record Missing(Measure measure, String why) {}

    /** A measure that can be given. */
    @TemplateData
    public record Known(Measure measure, String key, String unit, boolean chosen) {}

    /** One entry of a choice. */
    @TemplateData
    public record Choice(String key, String title, boolean chosen) {}

    static ConvertView of(ConvertForm form, Conversion conversion) {
        List<Row> rows = conversion.measures().entrySet().stream()
                .map(e -> Row.of(conversion, e.getKey(), e.getValue()))
                .toList();
        List<Missing> missing = conversion.leftOut().entrySet().stream()
                .map(e -> new Missing(e.getKey(), e.getValue()))
                .toList();
        String basis = conversion.question().formulation().title();
        return new ConvertView(
                form, known(form), choices(form), rows, missing, conversion.notes(), basis, "", "", api(form));
    }

    static ConvertView refused(ConvertForm form, NotUnderstood said) {
        String field = Question.HUMIDITIES.contains(said.field()) ? "value" : said.field();
        return new ConvertView(
                form, known(form), choices(form), List.of(), List.of(), List.of(), "", said.why(), field, "");
    }

    private static List<Known> known(ConvertForm form) {
        return Measure.ofHumidity().stream()
                .map(m -> new Known(m, m.key(), m.unit(), m.key().equals(form.known())))
                .toList();
    }

    private static List<Choice> choices(ConvertForm form) {
        return Arrays.stream(Formulation.values())
                .map(f -> new Choice(Question.key(f), f.title(), Question.key(f).equals(form.formulation())))
                .toList();
    }

    private static String api(ConvertForm form) {
        return form.typed().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&", "/api/convert?", ""));
    }
}
