// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Answer;
import isohume.device.Setpoint;
import isohume.journal.Entry;
import isohume.moistair.MoistAir;
import isohume.run.watch.Fault;
import isohume.run.watch.Measure;
import isohume.run.watch.Sighting;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What the facts of one run add up to so far. The engine folds its own facts into one of these; a page folds the same
 * facts, read back from the journal, into another, and so shows what the engine knows. One thread at a time.
 */
public final class Course {
    private RunFact.@Nullable Started started;
    private @Nullable Settling settling;
    private @Nullable MoistAir air;

    private Phase phase = Phase.APPROACH;
    private int point;
    private String why = "";
    private Instant since = Instant.EPOCH;
    private Instant began = Instant.EPOCH;
    private @Nullable Setpoint target;
    private @Nullable Answer answer;
    private @Nullable Moment latest;
    private @Nullable Ending ending;
    private long taken;
    private long recordFrom;
    private long recordTo;
    private int recordRows;
    private final Map<Integer, RunFact.Recorded> recorded = new TreeMap<>();
    private final TreeSet<Integer> skipped = new TreeSet<>();
    private final Map<Integer, Instant> lastReadings = new TreeMap<>();
    private final Incidents incidents = new Incidents();
    private Optional<String> lastPoint = Optional.empty();

    /** Adds the next fact; entries must come in order, from the first. */
    public void take(Entry entry) {
        take(entry, RunNotation.decode(entry.fact()));
    }

    /** As {@link #take(Entry)}, for a caller that knows already which fact the entry holds. */
    public void take(Entry entry, RunFact fact) {
        if (entry.number() != taken + 1) {
            throw new IllegalArgumentException("entry " + entry.number() + " came after " + taken);
        }
        taken = entry.number();
        switch (fact) {
            case RunFact.Started s -> start(s, entry.at());
            case RunFact.Resumed r -> resume();
            case RunFact.Asked a -> ask(a);
            case RunFact.Answered a -> answer = a.answer();
            case RunFact.Observed o -> observe(o, entry.number());
            case RunFact.Entered e -> enter(e, entry.at());
            case RunFact.Ordered o -> obey(o);
            case RunFact.Recorded r -> keep(r);
            case RunFact.Rested r -> answer = r.answer();
            case RunFact.Finished f -> finish(f, entry.at());
            case RunFact.Guarded g -> {}
            case RunFact.Noticed n -> notice(n, entry.at());
            case RunFact.Over o -> end(o, entry.at());
            case RunFact.Acted a -> act(a);
            case RunFact.Withdrawn w -> recorded.remove(w.point());
        }
    }

    private void start(RunFact.Started s, Instant at) {
        started = s;
        settling = new Settling(s.plan().rules(), s.roles());
        air = MoistAir.by(s.formulation());
        began = at;
        since = at;
    }

    private void ask(RunFact.Asked asked) {
        phase = Phase.APPROACH;
        recordRows = 0;
        point = asked.point();
        target = asked.target();
        need(settling).restart();
    }

    private void observe(RunFact.Observed observed, long number) {
        Moment moment = Moment.of(observed, roles(), need(air));
        latest = moment;
        need(settling).take(moment);
        if (phase == Phase.RECORD && moment.whole(roles())) {
            recordFrom = recordRows == 0 ? number : recordFrom;
            recordTo = number;
            recordRows++;
        }
    }

    private void notice(RunFact.Noticed noticed, Instant at) {
        incidents.take(noticed, at);
        touched(noticed.fault());
    }

    private void end(RunFact.Over over, Instant at) {
        incidents.take(over, at);
        touched(over.fault());
    }

    /** What was still before a fault, or came with one, says nothing about what comes after it. */
    private void touched(Fault fault) {
        if (fault.touches()) {
            recordRows = 0;
            need(settling).restart();
        }
    }

    private void act(RunFact.Acted acted) {
        incidents.take(acted);
        if (acted.measure() == Measure.SKIP) {
            skipped.add(acted.point());
            incidents.rearm();
        } else if (acted.measure() == Measure.STOP_AFTER_POINT) {
            lastPoint = Optional.of(acted.why());
        }
    }

    private void keep(RunFact.Recorded whole) {
        recorded.put(whole.point(), whole);
        lastReadings.put(whole.point(), need(latest).at());
        incidents.rearm();
    }

    private void resume() {
        ending = null;
        lastPoint = Optional.empty();
        incidents.forget();
    }

    private void enter(RunFact.Entered entered, Instant at) {
        phase = entered.phase();
        point = entered.point();
        why = entered.why();
        since = at;
        recordRows = 0;
    }

    private void obey(RunFact.Ordered ordered) {
        switch (ordered.order()) {
            case SKIP -> {
                skipped.add(point);
                incidents.rearm();
            }
            case RESUME -> incidents.rearm();
            case HOLD, STOP, ABANDON -> {}
        }
    }

    private void finish(RunFact.Finished finished, Instant at) {
        ending = finished.ending();
        why = finished.why();
        since = at;
        phase = switch (finished.ending()) {
            case COMPLETED -> Phase.FINISHED;
            case ABANDONED -> Phase.ABANDONED;
            case STOPPED, INTERRUPTED -> Phase.SAFE_STOP;
        };
    }

    /** Whether the first fact has been taken; nothing else may be asked before. */
    public boolean hasStarted() {
        return started != null;
    }

    public RunFact.Started started() {
        return need(started);
    }

    public Plan plan() {
        return started().plan();
    }

    public Roles roles() {
        return started().roles();
    }

    public Phase phase() {
        return phase;
    }

    /** The point's number in the plan; 0 before the first. */
    public int point() {
        return point;
    }

    /** Why the run is in its phase, in words. */
    public String why() {
        return why;
    }

    public Instant since() {
        return since;
    }

    public Instant began() {
        return began;
    }

    public Optional<Setpoint> target() {
        return Optional.ofNullable(target);
    }

    public Optional<Answer> answer() {
        return Optional.ofNullable(answer);
    }

    public Optional<Moment> latest() {
        return Optional.ofNullable(latest);
    }

    public Optional<Ending> ending() {
        return Optional.ofNullable(ending);
    }

    /** The number of the last fact taken. */
    public long taken() {
        return taken;
    }

    /** Points that are whole, in the order of the plan. */
    public List<RunFact.Recorded> recorded() {
        return List.copyOf(recorded.values());
    }

    public List<Integer> skipped() {
        return List.copyOf(skipped);
    }

    /** Judgement of every signal at the last observation; empty while no engine is at work. Reckoned when asked for. */
    public List<Waiting> waiting() {
        return phase.underWay() && target != null ? need(settling).waiting(target) : List.of();
    }

    /** Readings taken of the record that is under way. */
    public int recordRows() {
        return phase == Phase.RECORD ? recordRows : 0;
    }

    /** How long this point is kept once settled. */
    public Duration soak() {
        Rules rules = plan().rules();
        return plan().changesTemperature(Math.max(1, point)) ? rules.temperatureSoak() : rules.soak();
    }

    boolean settled() {
        return Settling.settled(waiting());
    }

    boolean kept() {
        return Settling.kept(waiting());
    }

    /** The record that is under way, as the fact that would close it. */
    RunFact.Recorded record() {
        return new RunFact.Recorded(point, recordFrom, recordTo);
    }

    /** Faults of this run, the earliest first; of those that are over, the latest hundred. */
    public List<Incident> incidents() {
        return incidents.all();
    }

    Map<Sighting.Key, Incident> present() {
        return incidents.present();
    }

    /** Whether a fault is there that forbids to use readings. */
    boolean touched() {
        return incidents.touching();
    }

    /** The first fault that forbids to use readings, in words; empty when there is none. */
    String trouble() {
        return incidents.present().values().stream()
                .filter(i -> i.noticed().fault().touches())
                .map(Incident::words)
                .findFirst()
                .orElse("");
    }

    /** Why the run is to end after the point at work, if it is. */
    Optional<String> lastPoint() {
        return lastPoint;
    }

    /** Points whose readings reach up to that instant or beyond. */
    List<Integer> recordedSince(Instant since) {
        return recorded.keySet().stream()
                .filter(number ->
                        !lastReadings.getOrDefault(number, Instant.MIN).isBefore(since))
                .toList();
    }

    /** The first point that is neither recorded nor skipped. */
    Optional<Integer> nextPoint() {
        for (int number = 1; number <= plan().points().size(); number++) {
            if (!recorded.containsKey(number) && !skipped.contains(number)) {
                return Optional.of(number);
            }
        }
        return Optional.empty();
    }

    private static <T> T need(@Nullable T thing) {
        if (thing == null) {
            throw new IllegalStateException("a run's first fact says how it started; it has not been taken yet");
        }
        return thing;
    }
}
