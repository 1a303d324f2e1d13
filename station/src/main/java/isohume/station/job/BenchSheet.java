// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.device.sheet.Sheet;
import isohume.quantity.Quantity;
import isohume.result.Characterisation;
import isohume.result.Characterisation.AtTemperature;
import isohume.result.Reference;
import isohume.result.Reference.CertifiedPoint;
import isohume.result.Reference.Traceability;
import isohume.run.Roles;
import isohume.run.reach.Range;
import isohume.run.reach.Reach;
import isohume.run.watch.Bounds;
import isohume.run.watch.Policies;
import isohume.run.watch.WatchSheet;
import isohume.station.notice.Hook;
import isohume.station.notice.HookSheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A bench as a person writes it: what it reaches, its references with their certificates, the study of its chamber. */
final class BenchSheet {
    private static final double BEYOND = 1; // K, for which the ends of the chamber's study hold
    private static final double HOTTER = 10; // K above what it reaches: something is wrong

    private final String title;
    private final Capacity capacity;
    private final List<String> devices = new ArrayList<>();
    private final Optional<Sheet> roles;
    private final List<Reference> references;
    private final Characterisation characterisation;
    private final Bounds bounds;
    private final Policies policies;
    private final List<Hook> hooks;

    BenchSheet(Sheet sheet) {
        title = sheet.text("bench");
        capacity = CapacitySheet.read(sheet);
        sheet.optional("devices").ifPresent(this::addDevices);
        roles = sheet.optional("roles");
        Sheet named = sheet.section("references");
        references = List.of(
                reference(Quantity.DEW_POINT, named.section("dew-point")),
                reference(Quantity.TEMPERATURE, named.section("temperature")),
                reference(Quantity.PRESSURE, named.section("pressure")));
        named.refuseOthers();
        characterisation = characterisation(sheet.section("characterisation"));
        Optional<Sheet> watch = sheet.optional("watch");
        Bounds usual = Bounds.usual().withHottest(capacity.reach().warmest().celsius() + HOTTER);
        bounds = watch.map(w -> WatchSheet.bounds(w, usual)).orElse(usual);
        policies = WatchSheet.policies(watch.flatMap(w -> w.optional("faults")));
        watch.ifPresent(Sheet::refuseOthers);
        hooks = sheet.optional("notify").map(HookSheet::read).orElse(List.of());
        sheet.refuseOthers();
    }

    String title() {
        return title;
    }

    Capacity capacity() {
        return capacity.with(capacity.reach().and(ranges()));
    }

    /** What the chamber itself reaches, whatever is certified there. */
    Reach reach() {
        return capacity.reach();
    }

    List<String> devices() {
        return devices;
    }

    List<Reference> references() {
        return references;
    }

    Characterisation characterisation() {
        return characterisation;
    }

    Bounds bounds() {
        return bounds;
    }

    Policies policies() {
        return policies;
    }

    List<Hook> hooks() {
        return hooks;
    }

    private void addDevices(Sheet sheet) {
        devices.add(sheet.text("chamber"));
        devices.addAll(sheet.texts("references"));
        sheet.refuseOthers();
    }

    /** Which channels are the references; those of the usual names where the sheet does not say. */
    Roles roles(List<String> instruments) {
        Roles read = new Roles(
                role("dew-point", "mirror/dew_point"),
                role("deposit", "mirror/deposit"),
                role("temperature", "thermometer/temperature"),
                role("pressure", "thermometer/pressure"),
                role("mirror-pressure", "thermometer/mirror_pressure"),
                instruments);
        roles.ifPresent(Sheet::refuseOthers);
        return read;
    }

    private String role(String key, String usual) {
        return roles.map(sheet -> sheet.textOr(key, usual)).orElse(usual);
    }

    /** From where to where the references are certified and the chamber was studied. */
    private List<Range> ranges() {
        List<Range> ranges = new ArrayList<>();
        for (Reference reference : references) {
            List<CertifiedPoint> points = reference.traceability().points();
            if (reference.quantity() != Quantity.PRESSURE) {
                ranges.add(new Range(
                        "the certificate of " + reference.id(),
                        reference.quantity(),
                        points.getFirst().at(),
                        points.getLast().at()));
            }
        }
        List<AtTemperature> studied = characterisation.temperatures();
        ranges.add(new Range(
                "the study of the chamber",
                Quantity.TEMPERATURE,
                studied.getFirst().celsius() - BEYOND,
                studied.getLast().celsius() + BEYOND));
        return ranges;
    }

    private static Reference reference(Quantity quantity, Sheet sheet) {
        String unit = quantity.differenceUnit();
        Reference reference = new Reference(
                sheet.text("id"),
                sheet.text("title"),
                sheet.text("serial"),
                quantity,
                traceability(sheet.section("certificate"), unit),
                halfWidth(sheet, "drift", unit),
                halfWidth(sheet, "resolution", unit));
        sheet.refuseOthers();
        return reference;
    }

    private static Traceability traceability(Sheet sheet, String unit) {
        List<CertifiedPoint> points = new ArrayList<>();
        for (Sheet point : sheet.list("points")) {
            double expanded = point.number("expanded", unit).doubleValue();
            if (!(expanded > 0)) {
                throw point.wrong("expanded", "U is " + expanded + " " + unit, "every certificate states a U above 0");
            }
            points.add(new CertifiedPoint(
                    point.number("at").doubleValue(),
                    point.number("correction", unit).doubleValue(),
                    expanded));
            point.refuseOthers();
        }
        points.sort(Comparator.comparingDouble(CertifiedPoint::at));
        Traceability traceability = new Traceability(
                sheet.text("number"),
                sheet.text("laboratory"),
                sheet.date("calibrated"),
                sheet.date("due"),
                coverageFactor(sheet),
                points);
        sheet.refuseOthers();
        return traceability;
    }

    private static double coverageFactor(Sheet sheet) {
        double k = sheet.number("k").doubleValue();
        if (!(k >= 1)) {
            throw sheet.wrong(
                    "k", "a coverage factor of " + k + " is below 1", "give the k that belongs to U, usually 2");
        }
        return k;
    }

    private static Characterisation characterisation(Sheet sheet) {
        List<AtTemperature> temperatures = new ArrayList<>();
        for (Sheet at : sheet.list("temperatures")) {
            temperatures.add(new AtTemperature(
                    at.number("at", "°C").doubleValue(),
                    kelvin(at, "uniformity"),
                    kelvin(at, "radiation"),
                    kelvin(at, "loading"),
                    kelvin(at, "stem"),
                    kelvin(at, "self-heating")));
            at.refuseOthers();
        }
        temperatures.sort(Comparator.comparingDouble(AtTemperature::celsius));
        Characterisation read = new Characterisation(
                sheet.text("number"),
                sheet.date("made"),
                sheet.date("due"),
                sheet.text("method"),
                temperatures,
                kelvin(sheet, "condensate"),
                kelvin(sheet, "line"),
                kelvin(sheet, "dry-line"),
                halfWidth(sheet, "pressure-difference", "Pa"));
        sheet.refuseOthers();
        return read;
    }

    private static double kelvin(Sheet sheet, String key) {
        return halfWidth(sheet, key, "K");
    }

    private static double halfWidth(Sheet sheet, String key, String unit) {
        double halfWidth = sheet.number(key, unit).doubleValue();
        if (!(halfWidth >= 0)) {
            throw sheet.wrong(key, "a half-width cannot be negative", "give it in " + unit);
        }
        return halfWidth;
    }
}
