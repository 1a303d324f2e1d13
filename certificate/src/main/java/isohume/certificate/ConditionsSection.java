// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import static isohume.certificate.Table.cell;

import isohume.certificate.Table.Cell;
import isohume.certificate.Table.Column;
import isohume.quantity.Quantity;
import isohume.result.Characterisation;
import isohume.result.PointResult;
import isohume.result.PointResult.Conditions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The air during the readings, and how it was made (ISO/IEC 17025:2017, 7.8.4.1 b). */
final class ConditionsSection {
    private static final double PASCALS_PER_HECTOPASCAL = 100;

    private final Certificate certificate;
    private final Dates dates;

    ConditionsSection(Certificate certificate) {
        this.certificate = certificate;
        this.dates = new Dates(certificate.zone());
    }

    void write(Markup to) {
        to.element("h2", "Conditions of measurement");
        Table table = new Table(columns());
        TreeMap<Integer, List<PointResult>> byNumber = certificate.points().stream()
                .collect(Collectors.groupingBy(p -> p.point().number(), TreeMap::new, Collectors.toList()));
        byNumber.values().forEach(p -> table.row(cells(p)));
        table.write(to);
        to.sentence(
                "p",
                "Means over the readings, references corrected. n: number of paired readings; n eff.: how many"
                        + " independent readings they are worth, for " + effectiveOrder() + ".",
                "class",
                "caption");
        to.element("p", chamber());
        to.element("p", mirror());
        to.element("p", room());
    }

    private String effectiveOrder() {
        return certificate.quantities().stream().map(Names::of).collect(Collectors.joining(" / "));
    }

    private static List<Column> columns() {
        return List.of(
                Column.figures("No.", "", 5),
                Column.figures("Air", Quantity.TEMPERATURE.unit(), 8),
                Column.figures("Dew or frost point", Quantity.DEW_POINT.unit(), 11),
                Column.words("Deposit", 8),
                Column.figures("Humidity", Quantity.RELATIVE_HUMIDITY.unit(), 9),
                Column.figures("Pressure", "hPa", 9),
                Column.figures("n", "", 5),
                Column.words("n eff.", 9),
                Column.words("Readings taken", 36));
    }

    private List<Cell> cells(List<PointResult> ofPoint) {
        PointResult first = ofPoint.getFirst();
        Conditions c = first.conditions();
        return List.of(
                cell(Integer.toString(first.point().number())),
                cell(Figures.of(c.temperature(), 2)),
                cell(Figures.of(c.dewPoint(), 2)),
                cell(Names.of(c.deposit())),
                cell(Figures.of(c.relativeHumidity(), 1)),
                cell(Figures.of(c.pressure() / PASCALS_PER_HECTOPASCAL, 1)),
                cell(Integer.toString(first.readings())),
                cell(ofPoint.stream()
                        .map(p -> Figures.of(p.effectiveReadings(), 1))
                        .collect(Collectors.joining(" / "))),
                cell(dates.span(c.from(), c.to())));
    }

    private String chamber() {
        Characterisation study = certificate.job().characterisation();
        return "Chamber: " + certificate.job().benchTitle() + ", instrument at position "
                + certificate.item().position() + ". Differences between the references and the instrument are taken"
                + " from chamber study " + study.number() + " of " + study.made() + " (" + study.method() + "), due "
                + study.due() + ", and are part of U.";
    }

    private String mirror() {
        Map<String, List<Integer>> numbers = new LinkedHashMap<>();
        certificate.points().stream()
                .sorted(Comparator.comparingInt(p -> p.point().number()))
                .forEach(p -> numbers.computeIfAbsent(
                                Names.of(p.conditions().deposit()) + ", decided by "
                                        + p.conditions().depositBy(),
                                phase -> new ArrayList<>())
                        .add(p.point().number()));
        return numbers.entrySet().stream()
                .map(e -> e.getKey() + ", at points "
                        + DecisionSection.ranges(
                                e.getValue().stream().distinct().toList()))
                .collect(Collectors.joining("; ", "Deposit on the mirror: ", "."));
    }

    private String room() {
        return "Conditions in the room: " + certificate.room().orElse("not recorded") + ".";
    }
}
