// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Answer;
import isohume.device.Setpoint;
import isohume.journal.Entry;
import isohume.moistair.MoistAir;
import isohume.quantity.Point;
import isohume.run.entry.EntrySheet;
import isohume.run.reach.WayPoint;
import isohume.run.watch.Fault;
import isohume.run.watch.Measure;
import isohume.run.watch.Sighting;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
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
    private Optional<WayPoint.Aim> onTheWay = Optional.empty();
    private @Nullable Answer answer;
    private @Nullable Moment latest;
    private @Nullable Ending ending;
    private long taken;
    private @Nullable RecordUnderWay record;
    private EntrySheet entries = EntrySheet.of(List.of());
    private Instant askedAt = Instant.EPOCH;
    private final Map<Integer, RunFact.Recorded> recorded = new TreeMap<>();
    private final Map<Integer, Duration> took = new TreeMap<>();
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
            case RunFact.Asked a -> ask(a.point(), a.target(), Optional.empty(), entry.at());
            case RunFact.Detoured d -> ask(d.point(), d.target(), Optional.of(d.aim()), entry.at());
            case RunFact.Answered a -> answer = a.answer();
            case RunFact.Observed o -> observe(o, entry.number());
            case RunFact.Entered e -> enter(e, entry.at());
            case RunFact.Ordered o -> obey(o);
            case RunFact.Recorded r -> keep(r, entry.at());
            case RunFact.Rested r -> answer = r.answer();
            case RunFact.Finished f -> finish(f, entry.at());
            case RunFact.Guarded g -> {}
            case RunFact.Noticed n -> notice(n, entry.at());
            case RunFact.Over o -> end(o, entry.at());
            case RunFact.Acted a -> act(a);
            case RunFact.Withdrawn w -> withdraw(w);
            case RunFact.OfDisplay d -> entries = Entering.after(d, entry.number(), this);
        }
    }

    private void start(RunFact.Started s, Instant at) {
        started = s;
        settling = Settling.by(s);
        record = new RecordUnderWay(s.roles());
        entries = EntrySheet.of(s.displays());
        air = MoistAir.by(s.formulation());
        began = at;
        since = at;
    }

    private void ask(int number, Setpoint wanted, Optional<WayPoint.Aim> aim, Instant at) {
        phase = Phase.APPROACH;
        recordAnew();
        boolean goesOn = onTheWay.isPresent() && number == point;
        askedAt = goesOn ? askedAt : at; // the way to a point is part of what it takes
        point = number;
        target = wanted;
        onTheWay = aim;
        need(settling).asked(point, wanted, at);
    }

    private void keep(RunFact.Recorded whole, Instant at) {
        recorded.put(whole.point(), whole);
        lastReadings.put(whole.point(), need(latest).at());
        incidents.rearm();
        took.put(whole.point(), Duration.between(askedAt, at));
    }

    private void observe(RunFact.Observed observed, long number) {
        Moment moment = Moment.of(observed, roles(), need(air));
        latest = moment;
        need(settling).take(moment);
        if (phase == Phase.RECORD && moment.whole(roles())) {
            need(record).take(moment, number);
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
            recordAnew();
            need(settling).restart(point, askedAt);
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

    private void withdraw(RunFact.Withdrawn withdrawn) {
        recorded.remove(withdrawn.point());
        took.remove(withdrawn.point());
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
        recordAnew();
    }

    private void recordAnew() {
        need(record).clear();
        entries = entries.begunAnew();
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

    /** What the condition that is asked for is for, if it is not the point itself. */
    public Optional<WayPoint.Aim> onTheWay() {
        return onTheWay;
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
        return phase == Phase.RECORD ? need(record).rows() : 0;
    }

    /** How long this point is kept once settled, where the plan's rule prescribes it. */
    public Optional<Duration> soak() {
        return switch (plan().rules().settling()) {
            case SettlingRule.Fixed fixed ->
                Optional.of(plan().changesTemperature(Math.max(1, point)) ? fixed.temperatureSoak() : fixed.soak());
            case SettlingRule.Tail tail -> Optional.empty();
        };
    }

    /** When the chamber was asked for the point. */
    public Instant askedAt() {
        return askedAt;
    }

    /** How long each whole point took, from its target to the end of its record, by its number. */
    public Map<Integer, Duration> took() {
        return Collections.unmodifiableMap(took);
    }

    /** Whether soaking may begin: by fixed limits when all is settled, else when the references are. */
    boolean arrived() {
        return Settling.settled(concerning(false));
    }

    /** Why soaking may begin, in words. */
    String arrival() {
        return need(settling) instanceof FixedSettling ? "settled" : "the references have settled";
    }

    /** Whether a soak may go on. */
    boolean kept() {
        return Settling.kept(concerning(phase == Phase.RECORD));
    }

    private List<Waiting> concerning(boolean all) {
        List<Waiting> waiting = waiting();
        return all || need(settling) instanceof FixedSettling
                ? waiting
                : waiting.stream().filter(w -> !w.difference()).toList();
    }

    /** Whether a soak has been long enough. */
    boolean soaked(Instant now) {
        return switch (need(settling)) {
            case FixedSettling fixed -> Duration.between(since, now).compareTo(soak().orElseThrow()) >= 0;
            case TailSettling tail -> tail.least().isZero() && Settling.settled(waiting());
        };
    }

    /** Whether more readings would not make the record's means any better worth having. */
    boolean readEnough() {
        return phase == Phase.RECORD && need(record).enough(plan().rules(), need(settling));
    }

    /** What was read of the displays that only a person can read. */
    public EntrySheet entries() {
        return entries;
    }

    /** The record that is under way, as the fact that would close it. */
    RunFact.Recorded record() {
        RecordUnderWay whole = need(record);
        List<RunFact.ToCome> toCome = new ArrayList<>(Unseen.of(plan(), point, entries));
        if (need(settling) instanceof TailSettling tail) {
            toCome.addAll(tail.toCome(whole.length()));
        }
        return new RunFact.Recorded(point, whole.first(), whole.last(), toCome);
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
        return plan().points().stream()
                .map(Point::number)
                .filter(number -> !recorded.containsKey(number) && !skipped.contains(number))
                .findFirst();
    }

    private static <T> T need(@Nullable T thing) {
        return Optional.ofNullable(thing)
                .orElseThrow(() -> new IllegalStateException("a run's first fact has not been taken yet"));
    }
}
