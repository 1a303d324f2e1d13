// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.device.Reading;
import isohume.journal.Fact;
import isohume.journal.JournalLost;
import isohume.moistair.Formulation;
import isohume.run.entry.DisplayedChannel;
import isohume.run.reach.WayPoint;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * How the facts of a run are written down, by hand, one numbered form each. A form never changes its meaning; a change
 * gets a new number and the old one stays readable. The forms are described in {@code docs/formats/run-facts.md}.
 */
public final class RunNotation {
    static final JsonMapper JSON = JsonMapper.builder().build();

    private static final int STARTED = 1;
    private static final int RESUMED = 2;
    private static final int ASKED = 3;
    private static final int ANSWERED = 4;
    private static final int OBSERVED = 5;
    private static final int ENTERED = 6;
    private static final int ORDERED = 7;
    private static final int RECORDED = 8;
    private static final int RESTED = 9;
    private static final int FINISHED = 10;
    private static final int DETOURED = 11;
    private static final int STARTED_WITH_TARGETS = 21;
    private static final int RECORDED_WITH_TO_COME = 28;
    private static final int GUARDED = 40;
    private static final int NOTICED = 41;
    private static final int OVER = 42;
    private static final int ACTED = 43;
    private static final int WITHDRAWN = 44;
    private static final int STARTED_WITH_DISPLAYS = 50;

    private RunNotation() {}

    /** Writes a fact down. */
    public static Fact encode(RunFact fact) {
        ObjectNode node = JSON.createObjectNode();
        return switch (fact) {
            case RunFact.Started s -> started(node, s);
            case RunFact.Resumed r -> fact(RESUMED, node.put("operator", r.operator()));
            case RunFact.Asked a ->
                fact(ASKED, node.put("point", a.point()).set("target", DeviceNotation.setpoint(a.target())));
            case RunFact.Detoured d ->
                fact(
                        DETOURED,
                        node.put("point", d.point())
                                .put("aim", d.aim().name())
                                .set("target", DeviceNotation.setpoint(d.target())));
            case RunFact.Answered a -> fact(ANSWERED, node.set("answer", DeviceNotation.answer(a.answer())));
            case RunFact.Observed o -> observed(node, o);
            case RunFact.Entered e ->
                fact(
                        ENTERED,
                        node.put("phase", e.phase().name())
                                .put("point", e.point())
                                .put("why", e.why()));
            case RunFact.Ordered o ->
                fact(
                        ORDERED,
                        node.put("order", o.order().name())
                                .put("operator", o.operator())
                                .put("reason", o.reason()));
            case RunFact.Recorded r -> fact(RECORDED_WITH_TO_COME, RulesNotation.recorded(r));
            case RunFact.Rested r -> fact(RESTED, node.set("answer", DeviceNotation.answer(r.answer())));
            case RunFact.Finished f ->
                fact(FINISHED, node.put("ending", f.ending().name()).put("why", f.why()));
            case RunFact.Guarded g -> fact(GUARDED, WatchNotation.guarded(g));
            case RunFact.Noticed n -> fact(NOTICED, WatchNotation.noticed(n));
            case RunFact.Over o -> fact(OVER, WatchNotation.over(o));
            case RunFact.Acted a -> fact(ACTED, WatchNotation.acted(a));
            case RunFact.Withdrawn w ->
                fact(WITHDRAWN, node.put("point", w.point()).put("why", w.why()));
            case RunFact.OfDisplay d -> EntryNotation.encode(d);
        };
    }

    private static Fact fact(int form, JsonNode node) {
        return new Fact(form, node.toString());
    }

    private static Fact started(ObjectNode node, RunFact.Started s) {
        node.set("plan", PlanNotation.plan(s.plan()));
        node.put("bench", s.bench());
        node.set("roles", PlanNotation.roles(s.roles()));
        node.put("formulation", s.formulation().name());
        node.put("operator", s.operator()).put("program", s.program()).put("job", s.job());
        node.set("targets", RulesNotation.targets(s.targets()));
        node.set("displays", EntryNotation.displays(s.displays()));
        return fact(STARTED_WITH_DISPLAYS, node);
    }

    private static Fact observed(ObjectNode node, RunFact.Observed o) {
        node.put("at", o.at().toString());
        ArrayNode readings = node.putArray("readings");
        o.readings().forEach(reading -> readings.add(DeviceNotation.reading(reading, o.at())));
        return fact(OBSERVED, node);
    }

    /**
     * Reads a fact back.
     *
     * @throws JournalLost when the form is not known or its text is not what the form says
     */
    public static RunFact decode(Fact fact) {
        try {
            return decode(fact.form(), JSON.readTree(fact.text()));
        } catch (JsonProcessingException | IllegalArgumentException | NullPointerException damaged) {
            throw new JournalLost("a fact of a run, form " + fact.form() + ", cannot be read: " + fact.text(), damaged);
        }
    }

    /** Whether a fact is an observation, which most are, without reading it. */
    public static boolean observes(Fact fact) {
        return fact.form() == OBSERVED;
    }

    private static RunFact decode(int form, JsonNode node) {
        return switch (form) {
            case STARTED -> started(node, PlanNotation.planOfForm1(node.get("plan")), Targets.none(), List.of());
            case STARTED_WITH_TARGETS -> started(node, List.of());
            case STARTED_WITH_DISPLAYS -> started(node, EntryNotation.displays(node.get("displays")));
            case RESUMED -> new RunFact.Resumed(node.get("operator").textValue());
            case ASKED -> new RunFact.Asked(node.get("point").intValue(), DeviceNotation.setpoint(node.get("target")));
            case DETOURED ->
                new RunFact.Detoured(
                        node.get("point").intValue(),
                        DeviceNotation.setpoint(node.get("target")),
                        WayPoint.Aim.valueOf(node.get("aim").textValue()));
            case ANSWERED -> new RunFact.Answered(DeviceNotation.answer(node.get("answer")));
            case OBSERVED -> observed(node);
            case ENTERED ->
                new RunFact.Entered(
                        Phase.valueOf(node.get("phase").textValue()),
                        node.get("point").intValue(),
                        node.get("why").textValue());
            case ORDERED ->
                new RunFact.Ordered(
                        Order.valueOf(node.get("order").textValue()),
                        node.get("operator").textValue(),
                        node.get("reason").textValue());
            case RECORDED ->
                new RunFact.Recorded(
                        node.get("point").intValue(),
                        node.get("first").longValue(),
                        node.get("last").longValue());
            case RECORDED_WITH_TO_COME -> RulesNotation.recorded(node);
            case RESTED -> new RunFact.Rested(DeviceNotation.answer(node.get("answer")));
            case FINISHED ->
                new RunFact.Finished(
                        Ending.valueOf(node.get("ending").textValue()),
                        node.get("why").textValue());
            case GUARDED -> WatchNotation.guarded(node);
            case NOTICED -> WatchNotation.noticed(node);
            case OVER -> WatchNotation.over(node);
            case ACTED -> WatchNotation.acted(node);
            case WITHDRAWN ->
                new RunFact.Withdrawn(
                        node.get("point").intValue(), node.get("why").textValue());
            default -> EntryNotation.decode(form, node);
        };
    }

    private static RunFact started(JsonNode node, List<DisplayedChannel> displays) {
        Targets targets = RulesNotation.targets(node.get("targets"));
        return started(node, PlanNotation.plan(node.get("plan")), targets, displays);
    }

    private static RunFact started(JsonNode node, Plan plan, Targets targets, List<DisplayedChannel> displays) {
        return new RunFact.Started(
                plan,
                node.get("bench").textValue(),
                PlanNotation.roles(node.get("roles")),
                Formulation.valueOf(node.get("formulation").textValue()),
                node.get("operator").textValue(),
                node.get("program").textValue(),
                node.get("job").textValue(),
                targets,
                displays);
    }

    private static RunFact observed(JsonNode node) {
        Instant at = Instant.parse(node.get("at").textValue());
        List<Reading> readings = new ArrayList<>();
        node.get("readings").forEach(reading -> readings.add(DeviceNotation.reading(reading, at)));
        return new RunFact.Observed(at, readings);
    }
}
