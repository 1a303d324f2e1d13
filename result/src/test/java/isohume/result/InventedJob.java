// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.moistair.Formulation;
import isohume.quantity.Quantity;
import java.time.LocalDate;
import java.util.List;

/** A job of one probe, on a bench studied at 23 °C. Everything in it is invented. */
final class InventedJob {
    private InventedJob() {}

    static Item probe(Specification... channels) {
        return new Item(
                "P-1",
                "probe",
                "maker",
                "model",
                "1",
                "centre",
                LocalDate.parse("2026-03-01"),
                "clean",
                List.of(channels));
    }

    static Job of(Job.Decision decision, Item item, Reference... references) {
        return new Job(
                "J-1",
                new Job.Party("laboratory", List.of()),
                new Job.Party("customer", List.of()),
                "here",
                "method",
                "operator",
                Formulation.SONNTAG_1990,
                decision,
                "bench",
                List.of(references),
                new Characterisation(
                        "CH-1",
                        LocalDate.parse("2026-01-01"),
                        LocalDate.parse("2027-12-31"),
                        "method",
                        List.of(new Characterisation.AtTemperature(23, 0.1, 0.03, 0.03, 0.03, 0.01)),
                        0.03,
                        0.02,
                        0.05,
                        50),
                List.of(item));
    }

    /** A reference that is certified at two points, with the same correction and expanded uncertainty. */
    static Reference reference(
            Quantity quantity,
            double from,
            double to,
            double correction,
            double expanded,
            double drift,
            double resolution) {
        return new Reference(
                quantity.key(),
                quantity.key(),
                "1",
                quantity,
                new Reference.Traceability(
                        "C-" + quantity.key(),
                        "laboratory",
                        LocalDate.parse("2026-01-01"),
                        LocalDate.parse("2027-01-31"),
                        2,
                        List.of(
                                new Reference.CertifiedPoint(from, correction, expanded),
                                new Reference.CertifiedPoint(to, correction, expanded))),
                drift,
                resolution);
    }
}
