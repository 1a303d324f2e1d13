// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import isohume.quantity.Quantity;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The whole certificate as XHTML, with what runs along the head and foot of each page. */
final class CertificatePage {
    private final Certificate certificate;
    private final Lettering lettering;

    CertificatePage(Certificate certificate, Lettering lettering) {
        this.certificate = certificate;
        this.lettering = lettering;
    }

    String title() {
        return "Calibration certificate " + certificate.number();
    }

    String xhtml() {
        Markup to = new Markup(lettering::legible);
        to.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en");
        head(to);
        to.open("body");
        runningHead(to);
        runningFoot(to);
        new FrontMatter(certificate).write(to);
        for (Quantity quantity : certificate.quantities()) {
            new ResultSection(certificate, quantity).write(to);
        }
        new HysteresisSection(certificate).write(to);
        new DecisionSection(certificate).write(to);
        new MethodSection(certificate).write(to);
        new ConditionsSection(certificate).write(to);
        new TraceabilitySection(certificate).write(to);
        new ClosingSection(certificate).write(to);
        return to.close().close().finish();
    }

    private void head(Markup to) {
        to.open("head").element("title", title());
        to.empty(
                "meta",
                "name",
                "author",
                "content",
                lettering.legible(certificate.job().laboratory().name()));
        to.empty("meta", "name", "subject", "content", lettering.legible(subject()));
        to.open("style").made(style()).close().close();
    }

    private String subject() {
        return "Calibration of " + certificate.item().kind() + ", "
                + certificate.item().id() + ", serial " + certificate.item().serial();
    }

    private void runningHead(Markup to) {
        to.open("div", "class", "running-head").open("table").open("tr");
        to.element("td", certificate.job().laboratory().name());
        to.element("td", certificate.authorisation().isPresent() ? "" : "DRAFT, not authorised", "class", "draft");
        to.element("td", "Certificate " + certificate.number(), "class", "right");
        to.close().close().close();
    }

    private void runningFoot(Markup to) {
        to.open("div", "class", "running-foot").open("table").open("tr");
        to.element("td", "Certificate " + certificate.number());
        to.open("td", "class", "right").text("Page ");
        to.open("span", "class", "page").close().text(" of ");
        to.open("span", "class", "pages").close().close();
        to.close().close().close();
    }

    static String style() {
        try (InputStream file = CertificatePage.class.getResourceAsStream("certificate.css")) {
            return new String(Objects.requireNonNull(file, "certificate.css").readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException("the program's own certificate.css cannot be read", broken);
        }
    }
}
