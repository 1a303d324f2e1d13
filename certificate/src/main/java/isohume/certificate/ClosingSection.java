// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import isohume.result.PointResult;
import isohume.result.Reference;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Deviations, remarks, what the certificate is good for, and its end (ISO/IEC 17025:2017, 7.8.2.1 d, l, n, o). */
final class ClosingSection {
    private final Certificate certificate;

    ClosingSection(Certificate certificate) {
        this.certificate = certificate;
    }

    void write(Markup to) {
        to.element("h2", "Deviations from the method");
        list(to, deviations(), "No additions to, deviations or exclusions from the method.");
        if (!certificate.remarks().isEmpty()) {
            to.element("h2", "Remarks");
            list(to, certificate.remarks(), "");
        }
        to.open("div", "class", "closing");
        to.element(
                "p",
                "The results relate only to the instrument named above, in the condition in which it was received. This"
                        + " certificate shall not be reproduced except in full without written approval of the"
                        + " laboratory.");
        to.element("p", "Evaluated and printed with " + certificate.software() + ".");
        to.element("p", end(), "class", "end").close();
    }

    private String end() {
        String what = certificate.authorisation().isPresent() ? "End of certificate " : "End of draft certificate ";
        return "\u2014 " + what + certificate.number() + " \u2014";
    }

    private List<String> deviations() {
        List<String> all = new ArrayList<>(certificate.deviations());
        LocalDate day = certificate.points().stream()
                .map(PointResult::conditions)
                .map(PointResult.Conditions::to)
                .max(Comparator.naturalOrder())
                .orElseThrow()
                .atZone(certificate.zone())
                .toLocalDate();
        for (Reference late : certificate.job().overdue(day)) {
            all.add("The certificate " + late.traceability().number() + " of reference " + late.id() + " was due on "
                    + late.traceability().due() + ", before the readings of " + day + ".");
        }
        return all;
    }

    private static void list(Markup to, List<String> lines, String ifNone) {
        if (lines.isEmpty()) {
            to.element("p", ifNone);
            return;
        }
        to.open("ul");
        lines.forEach(line -> to.element("li", line));
        to.close();
    }
}
