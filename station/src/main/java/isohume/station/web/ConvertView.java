// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import io.quarkus.qute.TemplateData;
import isohume.moistair.Formulation;
import isohume.station.convert.Conversion;
import isohume.station.convert.Measure;
import isohume.station.convert.NotUnderstood;
import isohume.station.convert.Question;
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
        List<Choice> formulations,
        List<Row> rows,
        List<String> notes,
        String basis,
        String trouble,
        String field,
        String api) {

    /** One line of the answer. */
    @TemplateData
    public record Row(Measure measure, Figure figure, String unit) {}

    /** One entry of a choice. */
    @TemplateData
    public record Choice(String key, String title, boolean chosen) {}

    static ConvertView of(ConvertForm form, Conversion conversion) {
        List<Row> rows = conversion.measures().entrySet().stream()
                .map(e -> new Row(
                        e.getKey(),
                        Figure.of(e.getValue(), e.getKey().decimals()),
                        e.getKey().unit()))
                .toList();
        String basis = conversion.question().formulation().title();
        return new ConvertView(form, choices(form), rows, conversion.notes(), basis, "", "", api(form));
    }

    static ConvertView refused(ConvertForm form, NotUnderstood said) {
        String field = Question.HUMIDITIES.contains(said.field()) ? "value" : said.field();
        return new ConvertView(form, choices(form), List.of(), List.of(), "", said.why(), field, "");
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
