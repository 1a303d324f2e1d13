// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.plans;

import isohume.moistair.MoistAir;
import isohume.run.order.Sequence;
import isohume.run.reach.Attainment;
import isohume.station.job.Worksheet;
import isohume.station.plan.PlanText;
import isohume.station.plan.PlanText.Leg;
import isohume.station.plan.Rearranged;
import isohume.station.plan.Shelf;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** One plan under an editor's hands. */
final class Editing {
    private static final double STEP = 1; // °C and % RH, to which a finger is accurate
    private static final double FINE = 0.1; // of a dew point

    private final Shelf shelf;
    private final Shelf.Plan plan;

    Editing(Shelf shelf, Shelf.Plan plan) {
        this.shelf = shelf;
        this.plan = plan;
    }

    /** As the plan stands in its file. */
    PlanView shown(boolean dew) {
        Worksheet worksheet = plan.worksheet();
        List<Leg> legs =
                PlanText.legs(worksheet.plan().points(), worksheet.ordering().stated());
        PlanForm form = PlanForm.of(worksheet.plan().title(), legs).onDewAxis(dew);
        return PlanView.of(plan.name(), worksheet, form, shelf.prospect(plan), List.of());
    }

    /** What is wrong with what was typed; empty when nothing is. */
    List<String> trouble(PlanForm form) {
        List<String> trouble = new ArrayList<>();
        for (int i = 0; i < form.rows().size(); i++) {
            PlanForm.Row row = form.rows().get(i);
            Typed.trouble(i + 1, row.temperature(), row.humidity()).ifPresent(trouble::add);
        }
        if (form.rows().isEmpty()) {
            trouble.add("A plan needs at least one point.");
        }
        return trouble;
    }

    /** Keeps what was typed as a new plan and says under what name. */
    String keep(PlanForm form) {
        Shelf.Plan edited = plan.with(form.legs());
        return shelf.keep(form.title().isBlank() ? edited : edited.titled(form.title()));
    }

    /** The form after one step. */
    PlanView edited(PlanForm sent, MultivaluedMap<String, String> fields) {
        String wanted = Optional.ofNullable(fields.getFirst("do")).orElse("check");
        PlanForm form = stepped(sent, wanted, fields);
        List<String> trouble = trouble(form);
        if (!trouble.isEmpty()) {
            return PlanView.troubled(plan.name(), plan.worksheet(), form, shelf.prospect(plan), trouble);
        }
        Shelf.Plan edited = plan.with(form.legs());
        List<String> said = new ArrayList<>();
        if (wanted.equals("order")) {
            Rearranged rearranged = shelf.rearranged(edited);
            form = form.withLegs(legs(edited, rearranged.shortest()));
            edited = plan.with(form.legs());
            said.addAll(said(rearranged));
        }
        return PlanView.of(plan.name(), edited.worksheet(), form, shelf.prospect(edited), said);
    }

    private PlanForm stepped(PlanForm form, String wanted, MultivaluedMap<String, String> fields) {
        if (wanted.startsWith("remove-")) {
            return form.without(index(wanted));
        }
        if (wanted.startsWith("earlier-")) {
            return form.earlier(index(wanted));
        }
        return switch (wanted) {
            case "add" -> form.with(form.rows().isEmpty() ? PlanForm.Row.at(23, 50) : another(form));
            case "undo" -> form.back();
            case "axis-dew" -> form.onDewAxis(true);
            case "axis-humidity" -> form.onDewAxis(false);
            default -> moved(form, fields);
        };
    }

    private static PlanForm.Row another(PlanForm form) {
        PlanForm.Row last = form.rows().getLast();
        return new PlanForm.Row(last.temperature(), "50", "");
    }

    private static int index(String wanted) {
        return Typed.number(wanted.substring(wanted.indexOf('-') + 1))
                        .map(Double::intValue)
                        .orElse(0)
                - 1;
    }

    /** A point that was dragged on the map, or a new one that was tapped there: number 0. */
    private PlanForm moved(PlanForm form, MultivaluedMap<String, String> fields) {
        Optional<Double> point = number(fields, "moved");
        Optional<Double> across = number(fields, "at-across");
        Optional<Double> up = number(fields, "at-up");
        if (point.isEmpty() || across.isEmpty() || up.isEmpty()) {
            return form;
        }
        double celsius = rounded(across.get(), STEP);
        Attainment attainment = new Attainment(
                plan.worksheet().capacity().reach(),
                MoistAir.by(plan.worksheet().job().formulation()));
        double percent = new MapScale(attainment, form.dew()).percent(celsius, up.get());
        double least = form.dew() ? FINE : STEP;
        PlanForm.Row row = PlanForm.Row.at(celsius, Math.clamp(rounded(percent, least), least, 100));
        return point.get() < 1 ? form.with(row) : form.with(point.get().intValue() - 1, row);
    }

    private static Optional<Double> number(MultivaluedMap<String, String> fields, String key) {
        return Optional.ofNullable(fields.getFirst(key)).map(Typed::plain).flatMap(Typed::number);
    }

    private static double rounded(double value, double step) {
        return Math.round(value / step) * step;
    }

    private static List<Leg> legs(Shelf.Plan edited, Sequence sequence) {
        Set<Integer> before = edited.worksheet().ordering().stated();
        Set<Integer> stated = IntStream.range(0, sequence.points().size())
                .filter(i -> before.contains(sequence.were().get(i)))
                .mapToObj(i -> i + 1)
                .collect(Collectors.toSet());
        return PlanText.legs(sequence.points(), stated);
    }

    private static List<String> said(Rearranged rearranged) {
        List<String> said = new ArrayList<>();
        Sequence shortest = rearranged.shortest();
        said.add(String.format(
                Locale.ROOT,
                "Put in order: about %.1f h instead of %.1f h. %s",
                shortest.expected().minutes() / 60,
                rearranged.given().expected().minutes() / 60,
                shortest.exact()
                        ? "No order that keeps to the rules takes less."
                        : String.format(
                                Locale.ROOT,
                                "None that keeps to the rules takes less than %.1f h.",
                                shortest.bound() / 60)));
        rearranged.given().broken().ifPresent(broken -> said.add("Before, the order broke a rule: " + broken + "."));
        rearranged
                .relaxed()
                .ifPresent(relaxed -> said.add(String.format(
                        Locale.ROOT,
                        "With wet points last at each temperature only it would take about %.1f h; for that the plan"
                                + " needs “order: {wet: last_at_temperature}”.",
                        relaxed.expected().minutes() / 60)));
        return said;
    }
}
