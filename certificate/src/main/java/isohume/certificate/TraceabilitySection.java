// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import static isohume.certificate.Table.cell;

import isohume.certificate.Table.Column;
import isohume.result.Reference;
import isohume.result.Reference.CertifiedPoint;
import isohume.result.Reference.Traceability;
import java.util.List;

/** How the results are tied to the SI (ISO/IEC 17025:2017, 7.8.4.1 c). */
final class TraceabilitySection {
    private final Certificate certificate;

    TraceabilitySection(Certificate certificate) {
        this.certificate = certificate;
    }

    void write(Markup to) {
        to.element("h2", "Traceability");
        to.element(
                "p",
                "The results are traceable to the SI through an unbroken chain of calibrations, by way of the"
                        + " references below and their certificates.");
        Table table = new Table(List.of(
                Column.words("Reference", 19),
                Column.words("Id, serial no.", 11),
                Column.words("Measures", 11),
                Column.words("Certificate", 12),
                Column.words("Laboratory", 15),
                Column.words("Calibrated", 10),
                Column.words("Due", 10),
                Column.words("U (k)", 12)));
        for (Reference r : certificate.references()) {
            Traceability t = r.traceability();
            table.row(List.of(
                    cell(r.title()),
                    cell(r.id() + ", " + r.serial()),
                    cell(Names.of(r.quantity())),
                    cell(t.number()),
                    cell(t.laboratory()),
                    cell(t.calibrated().toString()),
                    cell(t.due().toString()),
                    cell(uncertainty(r))));
        }
        table.write(to);
    }

    private static String uncertainty(Reference r) {
        var span = r.traceability().points().stream()
                .mapToDouble(CertifiedPoint::expanded)
                .summaryStatistics();
        String least = certified(span.getMin());
        String most = certified(span.getMax());
        return Figures.withUnit(
                        least.equals(most) ? least : least + " to " + most,
                        r.quantity().differenceUnit())
                + " (k" + Figures.THIN + "=" + Figures.THIN
                + Figures.of(r.traceability().k(), 2) + ")";
    }

    private static String certified(double expanded) {
        return Figures.brief(expanded, 5);
    }
}
