// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.runs;

import isohume.device.Answer;
import isohume.device.Reading;
import isohume.device.Setpoint;
import isohume.run.RunFact;
import isohume.run.watch.Fault;
import isohume.run.watch.Policy;
import isohume.station.web.Figure;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A fact in words.
 *
 * @param kind one word that says what it is; the ledger's text for it stands in the messages
 * @param text what it says
 */
record Telling(String kind, String text) {
    static Telling of(RunFact fact) {
        return switch (fact) {
            case RunFact.Started s ->
                new Telling("started", s.plan().title() + ", " + s.bench() + ", " + s.operator() + ", " + s.program());
            case RunFact.Resumed r -> new Telling("resumed", r.operator());
            case RunFact.Detoured d ->
                new Telling(
                        "asked",
                        "on the way to point " + d.point() + ", " + d.aim().words() + ": " + target(d.target()));
            case RunFact.Asked a -> new Telling("asked", "point " + a.point() + ": " + target(a.target()));
            case RunFact.Answered a -> new Telling("answered", answer(a.answer()));
            case RunFact.Observed o -> new Telling("observed", observed(o));
            case RunFact.Entered e ->
                new Telling("entered", e.phase().word() + ", point " + e.point() + ": " + e.why());
            case RunFact.Ordered o ->
                new Telling(
                        "ordered",
                        o.order().name().toLowerCase(Locale.ROOT) + ", " + o.operator()
                                + (o.reason().isBlank() ? "" : ": " + o.reason()));
            case RunFact.Recorded r ->
                new Telling("recorded", "point " + r.point() + ", facts " + r.first() + " to " + r.last());
            case RunFact.Rested r -> new Telling("rested", answer(r.answer()));
            case RunFact.Finished f ->
                new Telling("finished", f.ending().name().toLowerCase(Locale.ROOT) + ": " + f.why());
            case RunFact.Guarded g -> new Telling("guarded", guarded(g));
            case RunFact.Noticed n ->
                new Telling("noticed", n.channel() + " " + n.fault().words() + ": " + n.evidence());
            case RunFact.Over o ->
                new Telling("over", o.channel() + ": " + o.fault().key());
            case RunFact.Acted a -> new Telling("acted", a.measure().key() + ", point " + a.point() + ": " + a.why());
            case RunFact.Withdrawn w -> new Telling("withdrawn", "point " + w.point() + ": " + w.why());
            case RunFact.OfDisplay d -> display(d);
        };
    }

    private static Telling display(RunFact.OfDisplay fact) {
        return switch (fact) {
            case RunFact.Wanted w ->
                new Telling(
                        "wanted",
                        "point " + w.point() + ", to be read by a person: " + String.join(", ", w.channels()));
            case RunFact.Typed t ->
                new Telling(
                        "typed",
                        t.channel() + " shows " + t.shown() + ", read by " + t.operator() + ", beside fact "
                                + t.observed()
                                + (t.remark().isEmpty() ? "" : "; " + t.remark())
                                + t.photo().map(p -> "; photo " + p.sha256()).orElse(""));
            case RunFact.Declined d ->
                new Telling("declined", d.channel() + ", " + d.shown() + " by " + d.operator() + ": " + d.why());
            case RunFact.TakenBack t ->
                new Telling("taken back", "fact " + t.entry() + ", by " + t.operator() + ": " + t.reason());
            case RunFact.LeftOut l ->
                new Telling(
                        "left out",
                        l.channel() + " at point " + l.point() + ", by " + l.operator() + ": " + l.reason());
        };
    }

    private static String guarded(RunFact.Guarded guarded) {
        Map<Fault, Policy> given = new TreeMap<>(guarded.policies().given());
        return given.isEmpty()
                ? "usual policies"
                : given.entrySet().stream()
                        .map(e -> e.getKey().key() + " "
                                + e.getValue().patience().toSeconds() + "\u202fs, then "
                                + e.getValue().then().key())
                        .collect(Collectors.joining("; "));
    }

    private static String target(Setpoint target) {
        return Figure.of(target.temperature().celsius(), 2) + "\u202f°C, "
                + Figure.of(target.humidity().percent(), 2) + "\u202f% RH";
    }

    private static String answer(Answer answer) {
        return switch (answer) {
            case Answer.Taken taken -> "taken: " + target(taken.target());
            case Answer.AtRest rest -> "at rest";
            case Answer.Refused refused -> "refused: " + refused.why();
            case Answer.None none -> "no usable answer: " + none.detail();
        };
    }

    private static String observed(RunFact.Observed observed) {
        StringBuilder out = new StringBuilder();
        for (Reading reading : observed.readings()) {
            out.append(out.isEmpty() ? "" : ", ").append(reading.channel().id()).append(' ');
            out.append(
                    switch (reading) {
                        case Reading.Value v -> shown(Figure.of(v.shown()), reading);
                        case Reading.Doubtful d ->
                            shown(Figure.of(d.shown()), reading) + " (doubtful: " + d.flag() + ")";
                        case Reading.Absent a -> "absent (" + a.detail() + ")";
                    });
        }
        return out.toString();
    }

    private static String shown(Figure figure, Reading reading) {
        String unit = reading.channel().quantity().unit();
        return unit.isEmpty() ? figure.toString() : figure + "\u202f" + unit;
    }
}
