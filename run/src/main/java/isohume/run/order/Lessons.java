// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import isohume.device.Setpoint;
import isohume.run.Phase;
import isohume.run.Plan;
import isohume.run.RunFact;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the facts of one run teach about its bench's times; a fold, like {@code run.Course}. A point teaches only if it was
 * approached from another that had been recorded, and nobody held, skipped or resumed anything and no fault
 * showed since. Observations teach
 * nothing here and may be left out.
 */
public final class Lessons {
    private final List<Lesson> learned = new ArrayList<>();
    private @Nullable Plan plan;
    private @Nullable Setpoint rest; // where the last recorded point was
    private @Nullable Instant asked;
    private @Nullable Instant settled;
    private int point;

    /** Adds the next fact. */
    public void take(Instant at, RunFact fact) {
        switch (fact) {
            case RunFact.Started started -> plan = started.plan();
            case RunFact.Asked a -> ask(a.point(), at);
            case RunFact.Detoured d -> ask(d.point(), at);
            case RunFact.Entered entered -> enter(entered, at);
            case RunFact.Recorded recorded -> record(recorded.point(), at);
            case RunFact.Ordered ordered -> forget();
            case RunFact.Resumed resumed -> forget();
            case RunFact.Finished finished -> forget();
            case RunFact.Answered answered -> {}
            case RunFact.Observed observed -> {}
            case RunFact.Rested rested -> {}
            case RunFact.Guarded guarded -> {}
            case RunFact.Noticed noticed -> forget();
            case RunFact.Over over -> forget();
            case RunFact.Acted acted -> forget();
            case RunFact.Withdrawn withdrawn -> forget();
            case RunFact.OfDisplay read -> forget(); // how long a person takes is no habit of a bench
        }
    }

    /** The first asking for a point counts, be it for a way-point; what follows is part of the approach. */
    private void ask(int number, Instant at) {
        if (number != point || asked == null) {
            point = number;
            asked = at;
            settled = null;
        }
    }

    private void enter(RunFact.Entered entered, Instant at) {
        if (entered.phase() == Phase.HELD) {
            forget();
        } else if (entered.phase() == Phase.SOAK && settled == null) {
            settled = at;
        }
    }

    private void record(int number, Instant at) {
        if (plan == null) {
            return;
        }
        var done = plan.point(number);
        Setpoint to = new Setpoint(done.temperature(), done.humidity());
        if (rest != null && asked != null && settled != null && asked.isBefore(settled) && settled.isBefore(at)) {
            learned.add(new Lesson(new Visit(rest, to), minutes(asked, settled), minutes(settled, at), plan.rules()));
        }
        rest = to;
        asked = null;
        settled = null;
    }

    private void forget() {
        rest = null;
        asked = null;
        settled = null;
    }

    /** What has been learned so far. */
    public List<Lesson> learned() {
        return List.copyOf(learned);
    }

    private static double minutes(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 60_000.0;
    }
}
