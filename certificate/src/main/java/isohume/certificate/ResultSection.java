// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import static isohume.certificate.Table.cell;

import isohume.certificate.Table.Cell;
import isohume.certificate.Table.Column;
import isohume.quantity.Direction;
import isohume.quantity.Quantity;
import isohume.result.PointResult;
import java.util.ArrayList;
import java.util.List;

/** The results of one quantity, as a table and as a picture (ISO/IEC 17025:2017, 7.8.2.1 m, 7.8.4.1 a and e). */
final class ResultSection {
    private final Certificate certificate;
    private final Quantity quantity;
    private final List<PointResult> points;
    private final boolean judged;

    ResultSection(Certificate certificate, Quantity quantity) {
        this.certificate = certificate;
        this.quantity = quantity;
        this.points = certificate.of(quantity);
        this.judged = points.stream().anyMatch(Verdicts::given);
    }

    void write(Markup to) {
        to.element("h2", "Results: " + Names.of(quantity));
        Table table = new Table(columns());
        points.forEach(p -> table.row(cells(p)));
        table.write(to);
        to.open("div", "class", "plot")
                .made(ErrorPlot.forPrint(points, certificate.job().decision()))
                .close();
        to.sentence("p", caption(), "class", "caption");
        String remark = certificate
                .item()
                .channel(quantity)
                .map(channel -> DewPoints.remark(channel, points))
                .orElse("");
        if (!remark.isEmpty()) {
            to.sentence("p", remark);
        }
    }

    private List<Column> columns() {
        String unit = quantity.unit();
        String difference = quantity.differenceUnit();
        List<Column> columns = new ArrayList<>(List.of(
                Column.figures("No.", "", 4.5),
                Column.words("Direction", judged ? 11.5 : 16),
                beside(),
                Column.figures("Reference", unit, 9.6),
                Column.figures("Reading", unit, 8.4),
                Column.figures("Error", difference, 7.6),
                Column.figures("U", difference, 6.5),
                Column.figures("k", "", 5.4)));
        if (judged) {
            columns.add(Column.figures("Tolerance", "\u00B1" + Figures.THIN + difference, 9.5));
            columns.add(Column.words("Conformity", 28.5));
        }
        return columns;
    }

    private Column beside() {
        return quantity == Quantity.TEMPERATURE
                ? Column.figures("Humidity", Quantity.RELATIVE_HUMIDITY.unit(), 8.5)
                : Column.figures("Air", Quantity.TEMPERATURE.unit(), 8.5);
    }

    private List<Cell> cells(PointResult p) {
        Rounding place = new Rounding(p.expanded());
        List<Cell> cells = new ArrayList<>(List.of(
                cell(Integer.toString(p.point().number())),
                cell(direction(p.point().direction())),
                cell(besideAt(p)),
                cell(place.print(p.reference())),
                cell(place.print(p.reading())),
                cell(place.printSigned(p.error())),
                cell(place.print()),
                cell(Figures.of(p.coverageFactor(), 2))));
        if (judged) {
            cells.add(cell(Verdicts.given(p) ? tolerance(p, place) : Figures.NOTHING));
            cells.add(new Cell.Verdict(p.verdict()));
        }
        return cells;
    }

    /** To the place of the error, and to as many more as it was agreed on with, up to two. */
    private static String tolerance(PointResult p, Rounding place) {
        int agreed = Figures.decimalsOf(Figures.brief(p.tolerance(), 2));
        return Figures.of(p.tolerance(), Math.max(place.decimals(), agreed));
    }

    private String besideAt(PointResult p) {
        return quantity == Quantity.TEMPERATURE
                ? Figures.of(p.conditions().relativeHumidity(), 1)
                : Figures.of(p.conditions().temperature(), 2);
    }

    private static String direction(Direction direction) {
        return switch (direction) {
            case ASCENDING -> "\u25B2" + Figures.NO_BREAK + "ascending";
            case DESCENDING -> "\u25BC" + Figures.NO_BREAK + "descending";
        };
    }

    private String band() {
        return switch (certificate.job().decision()) {
            case NONE -> "";
            case SIMPLE_ACCEPTANCE -> " Band: tolerance.";
            case GUARD_BAND, GUARD_BAND_FOUR_ANSWERS ->
                " Band: tolerance; its lighter edge: guard band, where points share a reference that of the largest U.";
        };
    }

    private String caption() {
        return "Error against reference. Bars: expanded uncertainty."
                + band()
                + " Points whose bars would hide each other are set side by side.";
    }
}
