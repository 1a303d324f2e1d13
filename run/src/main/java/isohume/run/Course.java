// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Answer;
import isohume.device.Setpoint;
import isohume.journal.Entry;
import isohume.moistair.MoistAir;
import isohume.run.reach.WayPoint;
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
    private Optional<WayPoint.Aim> onTheWay = Optional.empty();
    private @Nullable Answer answer;
    private @Nullable Moment latest;
    private @Nullable Ending ending;
    private long taken;
    private long recordFrom;
    private long recordTo;
    private int recordRows;
    private final Map<Integer, RunFact.Recorded> recorded = new TreeMap<>();
    private final TreeSet<Integer> skipped = new TreeSet<>();
    private final Map<String, Instant> silentSince = new TreeMap<>();

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
            case RunFact.Resumed r -> ending = null;
            case RunFact.Asked a -> ask(a.point(), a.target(), Optional.empty());
            case RunFact.Detoured d -> ask(d.point(), d.target(), Optional.of(d.aim()));
            case RunFact.Answered a -> answer = a.answer();
            case RunFact.Observed o -> observe(o, entry.number());
            case RunFact.Entered e -> enter(e, entry.at());
            case RunFact.Ordered o -> obey(o);
            case RunFact.Recorded r -> recorded.put(r.point(), r);
            case RunFact.Rested r -> answer = r.answer();
            case RunFact.Finished f -> finish(f, entry.at());
        }
    }

    private void start(RunFact.Started s, Instant at) {
        started = s;
        settling = new Settling(s.plan().rules(), s.roles());
        air = MoistAir.by(s.formulation());
        began = at;
        since = at;
    }

    private void ask(int number, Setpoint wanted, Optional<WayPoint.Aim> aim) {
        phase = Phase.APPROACH;
        recordRows = 0;
        point = number;
        target = wanted;
        onTheWay = aim;
        need(settling).restart();
    }

    private void observe(RunFact.Observed observed, long number) {
        Moment moment = Moment.of(observed, roles(), need(air));
        latest = moment;
        noteSilence(moment);
        need(settling).take(moment);
        if (phase == Phase.RECORD && moment.whole(roles())) {
            recordFrom = recordRows == 0 ? number : recordFrom;
            recordTo = number;
            recordRows++;
        }
    }

    /** Doubtful values only keep a point from settling: a mirror needs its minutes to freeze. Silence is another thing. */
    private void noteSilence(Moment moment) {
        for (String channel : needed()) {
            if (moment.absent().containsKey(channel)) {
                silentSince.putIfAbsent(channel, moment.at());
            } else {
                silentSince.remove(channel);
            }
        }
    }

    private List<String> needed() {
        return java.util.stream.Stream.concat(roles().references().stream(), roles().instruments().stream())
                .toList();
    }

    private void enter(RunFact.Entered entered, Instant at) {
        phase = entered.phase();
        point = entered.point();
        why = entered.why();
        since = at;
        recordRows = 0;
        if (phase == Phase.APPROACH) {
            silentSince.clear();
        }
    }

    private void obey(RunFact.Ordered ordered) {
        if (ordered.order() == Order.SKIP) {
            skipped.add(point);
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

    /** A needed channel that has been silent for longer than the plan's patience. */
    Optional<String> silentChannel(Instant now) {
        Instant limit = now.minus(plan().rules().patience());
        return silentSince.entrySet().stream()
                .filter(e -> e.getValue().isBefore(limit))
                .map(Map.Entry::getKey)
                .findFirst();
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
