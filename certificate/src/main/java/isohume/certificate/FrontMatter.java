// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import isohume.result.Item;
import isohume.result.Job.Party;
import isohume.result.PointResult;
import java.time.Instant;
import java.util.Comparator;

/** Who, for whom, what, where, when (ISO/IEC 17025:2017, 7.8.2.1 a to j, o). */
final class FrontMatter {
    private final Certificate certificate;
    private final Dates dates;

    FrontMatter(Certificate certificate) {
        this.certificate = certificate;
        this.dates = new Dates(certificate.zone());
    }

    void write(Markup to) {
        to.element("h1", "Calibration certificate");
        to.open("p", "class", "number").text(certificate.number());
        to.element("span", state(), "class", "state").close();
        to.open("table", "class", "parties").open("tbody").open("tr");
        party(to, "Laboratory", certificate.job().laboratory());
        party(to, "Customer", certificate.job().customer());
        to.close().close().close();
        to.element("h2", "Instrument and calibration");
        to.open("table", "class", "facts").open("tbody");
        instrument(to);
        calibration(to);
        to.close().close();
    }

    private String state() {
        return switch (certificate.kind()) {
            case AS_FOUND -> "As found: results before any adjustment or repair";
        };
    }

    private static void party(Markup to, String role, Party party) {
        to.open("td").element("p", role, "class", "role").element("p", party.name(), "class", "name");
        party.address().forEach(line -> to.element("p", line));
        to.close();
    }

    private void instrument(Markup to) {
        Item item = certificate.item();
        fact(to, "Instrument", item.kind() + ", " + item.maker() + " " + item.model());
        fact(to, "Identification", item.id());
        fact(to, "Serial number", item.serial());
        fact(to, "Condition on receipt", item.condition());
        fact(to, "Date of receipt", item.received().toString());
    }

    private void calibration(Markup to) {
        fact(to, "Date of calibration", performed());
        fact(to, "Date of issue", dates.moment(certificate.issuedAt()));
        fact(to, "Order", certificate.job().number());
        fact(to, "Place of calibration", certificate.job().place());
        fact(to, "Method", certificate.job().method());
        fact(to, "Performed by", certificate.performedBy());
        fact(to, "Authorised by", authorised());
    }

    private String performed() {
        Instant from = certificate.points().stream()
                .map(p -> p.conditions().from())
                .min(Comparator.naturalOrder())
                .orElseThrow();
        Instant until = certificate.points().stream()
                .map(PointResult::conditions)
                .map(PointResult.Conditions::to)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        return dates.span(from, until);
    }

    private String authorised() {
        return certificate
                .authorisation()
                .map(a -> a.name() + ", " + dates.moment(a.at()))
                .orElse("not authorised: this is a draft and no certificate");
    }

    private static void fact(Markup to, String name, String value) {
        to.open("tr").element("th", name, "scope", "row").element("td", value).close();
    }
}
