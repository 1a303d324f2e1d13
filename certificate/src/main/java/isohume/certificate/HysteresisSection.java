// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import static isohume.certificate.Table.cell;

import isohume.certificate.Table.Column;
import isohume.quantity.Quantity;
import isohume.result.PointResult;
import isohume.result.Results.Hysteresis;
import java.util.List;

/** What the instrument shows differently on the way up and on the way down. */
final class HysteresisSection {
    private final Certificate certificate;

    HysteresisSection(Certificate certificate) {
        this.certificate = certificate;
    }

    void write(Markup to) {
        if (certificate.hysteresis().isEmpty()) {
            return;
        }
        to.element("h2", "Hysteresis");
        to.sentence(
                "p",
                "Error descending minus error ascending at the same condition. It is not part of U, because each"
                        + " direction has its own result.");
        Table table = new Table(List.of(
                Column.words("Quantity", 28),
                Column.figures("Air temperature", Quantity.TEMPERATURE.unit(), 22),
                Column.figures("Humidity", Quantity.RELATIVE_HUMIDITY.unit(), 22),
                Column.figures("Descending minus ascending", "", 18),
                Column.words("", 10)));
        for (Hysteresis h : certificate.hysteresis()) {
            table.row(List.of(
                    cell(Names.of(h.quantity())),
                    cell(Figures.brief(h.celsius(), 1)),
                    cell(Figures.brief(h.humidityPercent(), 1)),
                    cell(place(h.quantity()).printSigned(h.difference())),
                    cell(Figures.unit(h.quantity().differenceUnit()))));
        }
        table.write(to);
    }

    /** The place of the smallest U among the quantity's results. */
    private Rounding place(Quantity quantity) {
        return new Rounding(certificate.of(quantity).stream()
                .mapToDouble(PointResult::expanded)
                .min()
                .orElse(0.01));
    }
}
