// SPDX-License-Identifier: Apache-2.0
package isohume.station.notice;

import com.fasterxml.jackson.databind.json.JsonMapper;
import isohume.journal.Entry;
import isohume.run.Phase;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.run.watch.Measure;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/**
 * One thing that people are told.
 *
 * @param run the run's id
 * @param number of the fact that it is about; 0 when it could not be written any more
 * @param what what happened
 * @param next what to do next; may be empty
 */
record Notice(String run, long number, Instant at, Occasion occasion, String what, String next) {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** Some facts are worth telling. */
    static Optional<Notice> of(Entry entry) {
        String run = entry.stream().id();
        return switch (RunNotation.decode(entry.fact())) {
            case RunFact.Noticed n ->
                notice(
                        entry,
                        Occasion.NOTICED,
                        n.channel() + " " + n.fault().words() + ": " + n.evidence(),
                        n.fault().remedy());
            case RunFact.Over o ->
                notice(
                        entry,
                        Occasion.OVER,
                        o.channel() + ": over, " + o.fault().key(),
                        "");
            case RunFact.Acted a ->
                a.measure() == Measure.SKIP
                        ? notice(
                                entry,
                                Occasion.POINT,
                                "point " + a.point() + " was left out: " + a.why(),
                                a.fault().remedy())
                        : Optional.empty();
            case RunFact.Withdrawn w ->
                notice(entry, Occasion.POINT, "point " + w.point() + " is taken again: " + w.why(), "");
            case RunFact.Entered e ->
                e.phase() == Phase.HELD
                        ? notice(
                                entry,
                                Occasion.HELD,
                                "held at point " + e.point() + ": " + e.why(),
                                "Resume, skip or stop it on the Bench page.")
                        : Optional.empty();
            case RunFact.Finished f ->
                notice(
                        entry,
                        Occasion.ENDED,
                        f.ending().name().toLowerCase(Locale.ROOT) + ": " + f.why(),
                        next(run, f));
            case RunFact.Started s -> Optional.empty();
            case RunFact.Resumed r -> Optional.empty();
            case RunFact.Asked a -> Optional.empty();
            case RunFact.Detoured d -> Optional.empty();
            case RunFact.Answered a -> Optional.empty();
            case RunFact.Observed o -> Optional.empty();
            case RunFact.Ordered o -> Optional.empty();
            case RunFact.Recorded r -> Optional.empty();
            case RunFact.Rested r -> Optional.empty();
            case RunFact.Guarded g -> Optional.empty();
            case RunFact.Wanted w ->
                notice(
                        entry,
                        Occasion.READING,
                        "point " + w.point() + " has settled; a person is to read " + String.join(", ", w.channels()),
                        "Type what the display shows on the Bench page.");
            case RunFact.OfDisplay d -> Optional.empty();
        };
    }

    private static Optional<Notice> notice(Entry entry, Occasion occasion, String what, String next) {
        return Optional.of(new Notice(entry.stream().id(), entry.number(), entry.at(), occasion, what, next));
    }

    private static String next(String run, RunFact.Finished finished) {
        return switch (finished.ending()) {
            case COMPLETED, ABANDONED -> "";
            case STOPPED, INTERRUPTED ->
                "Run " + run + " can be resumed on the Bench page; points that are whole stay.";
        };
    }

    /** In one line. */
    String message() {
        return "run " + run + ", " + what + (next.isEmpty() ? "" : " " + next);
    }

    String json() {
        return JSON.createObjectNode()
                .put("run", run)
                .put("number", number)
                .put("at", at.toString())
                .put("occasion", occasion.name().toLowerCase(Locale.ROOT))
                .put("what", what)
                .put("next", next)
                .toString();
    }
}
