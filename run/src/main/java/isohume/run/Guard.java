// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Answer;
import isohume.device.Setpoint;
import isohume.run.watch.Channels;
import isohume.run.watch.Fault;
import isohume.run.watch.Measure;
import isohume.run.watch.Poll;
import isohume.run.watch.Sighting;
import isohume.run.watch.Watch;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Turns what the watch sees into facts, and says when a policy's wait is over. It decides and writes nothing itself: the
 * run does, in its own order.
 */
final class Guard {
    private static final Set<Fault> OF_THE_POINT = EnumSet.of(Fault.NOT_SETTLED, Fault.TARGET_LOST, Fault.UNREAD);
    private static final Duration LOOK = Duration.ofSeconds(30); // between two looks at what the chamber holds
    private static final Duration GRACE = Duration.ofMinutes(1);
    private static final Duration STEP = Duration.ofSeconds(2); // of a clock, that is no mere correction

    private final Bench bench;
    private final Course course;
    private final Timekeeper time;
    private final Watch watch;
    private final Map<Sighting.Key, Sighting> told = new LinkedHashMap<>(); // by the engine, not by an instrument
    private final Map<Sighting.Key, Duration> noticed = new HashMap<>();
    private @Nullable Instant wall;
    private Optional<Setpoint> taken = Optional.empty();
    private Duration lastLook = Duration.ZERO;
    private Duration asked = Duration.ZERO;
    private Duration elapsed = Duration.ZERO;

    Guard(Bench bench, Course course, Timekeeper time) {
        this.bench = bench;
        this.course = course;
        this.time = time;
        Roles roles = course.roles();
        watch = new Watch(
                new Channels(
                        bench.chamber().id(),
                        roles.dewPoint(),
                        roles.deposit(),
                        roles.temperature(),
                        List.of(roles.pressure(), roles.mirrorPressure()),
                        roles.instruments()),
                bench.bounds());
    }

    /** Something that the engine itself found; it stays until {@link #untell}. */
    void tell(Fault fault, String channel, String evidence) {
        Sighting sighting = new Sighting(fault, channel, time.instant(), evidence);
        told.put(sighting.key(), sighting);
    }

    private void untell(Fault fault, String channel) {
        told.remove(new Sighting.Key(fault, channel));
    }

    /** The chamber was asked for a target, and answered. */
    void asked(Answer answer) {
        watch.retarget();
        String chamber = bench.chamber().id();
        lastLook = time.elapsed();
        asked = time.elapsed();
        taken = Optional.empty();
        told.keySet().removeIf(key -> OF_THE_POINT.contains(key.fault()));
        switch (answer) {
            case Answer.None none -> tell(Fault.SILENT, chamber + " control", none.detail());
            case Answer.Taken target -> {
                untell(Fault.SILENT, chamber + " control");
                taken = Optional.of(target.target());
            }
            case Answer.AtRest rest -> untell(Fault.SILENT, chamber + " control");
            case Answer.Refused refused -> untell(Fault.SILENT, chamber + " control");
        }
    }

    /** How long ago the chamber was last told where to go, whatever happened to clocks since. */
    Duration sinceAsked() {
        return time.elapsed().minus(asked);
    }

    /** Whether a target that never reached the chamber should be sent again. */
    boolean askAgain() {
        boolean unheard =
                told.containsKey(new Sighting.Key(Fault.SILENT, bench.chamber().id() + " control"));
        return unheard && time.elapsed().minus(lastLook).compareTo(LOOK) >= 0;
    }

    /** Now and then the chamber is asked what it holds: somebody else may have set it, or it has been without power. */
    private void lookAtTarget() {
        if (taken.isEmpty() || time.elapsed().minus(lastLook).compareTo(LOOK) < 0) {
            return;
        }
        lastLook = time.elapsed();
        String chamber = bench.chamber().id();
        switch (bench.chamber().holds()) {
            case Answer.Taken other -> {
                if (!other.target().equals(taken.get())) {
                    tell(
                            Fault.TARGET_LOST,
                            chamber,
                            "it is set to " + Run.inWords(other.target()) + "; " + Run.inWords(taken.get())
                                    + " was asked");
                }
            }
            case Answer.AtRest rest -> tell(Fault.TARGET_LOST, chamber, "it is at rest; it was not told so from here");
            case Answer.Refused refused -> {}
            case Answer.None none -> {} // its silence shows in its readings
        }
    }

    /** Another attempt or another point begins: what is still there is waited for anew, and may first prove to be over. */
    void waitAnew() {
        Duration from = time.elapsed().plus(GRACE);
        noticed.replaceAll((key, before) -> key.fault() == Fault.OVER_TEMPERATURE ? before : from);
    }

    /** The facts that follow from one poll. */
    List<RunFact> look(RunFact.Observed observed) {
        lookAtTarget();
        boolean still = course.phase() == Phase.SOAK || course.phase() == Phase.RECORD;
        Poll poll = new Poll(
                observed.at(),
                observed.readings(),
                course.latest().orElseThrow().humidity(),
                course.target(),
                still);
        Map<Sighting.Key, Sighting> seen = new LinkedHashMap<>(told);
        watch.look(poll).forEach(sighting -> seen.put(sighting.key(), sighting));
        clock().ifPresent(sighting -> seen.put(sighting.key(), sighting));
        List<RunFact> facts = new ArrayList<>();
        Map<Sighting.Key, Incident> known = course.present();
        for (Sighting sighting : seen.values()) {
            if (!known.containsKey(sighting.key())) {
                notice(sighting, facts);
            }
        }
        for (Sighting.Key key : List.copyOf(known.keySet())) {
            if (!seen.containsKey(key)) {
                noticed.remove(key);
                facts.add(new RunFact.Over(key.fault(), key.channel()));
            }
        }
        return facts;
    }

    private void notice(Sighting sighting, List<RunFact> facts) {
        noticed.put(sighting.key(), time.elapsed());
        facts.add(new RunFact.Noticed(
                sighting.fault(),
                sighting.channel(),
                sighting.since(),
                sighting.evidence(),
                bench.policies().of(sighting.fault(), course.plan().rules().patience())));
        if (sighting.fault().touches()) {
            for (int point : course.recordedSince(sighting.since())) {
                String why =
                        sighting.channel() + " " + sighting.fault().words() + ", noticed after the point was recorded";
                facts.add(new RunFact.Withdrawn(point, why));
            }
        }
    }

    /** The wall's clock against one that nobody can set. */
    private Optional<Sighting> clock() {
        Instant before = wall;
        Duration passed = time.elapsed().minus(elapsed);
        wall = time.instant();
        elapsed = time.elapsed();
        if (before == null) {
            return Optional.empty();
        }
        Duration step = Duration.between(before, wall).minus(passed);
        if (step.abs().compareTo(STEP) <= 0) {
            return Optional.empty();
        }
        String evidence = "by " + (step.isNegative() ? "" : "+") + step.toMillis() / 1000.0 + " s";
        return Optional.of(new Sighting(Fault.CLOCK_STEPPED, "clock", before.plusMillis(1), evidence));
    }

    /** The weightiest measure, from that one on, whose wait is over and that has not been taken yet. */
    Optional<RunFact.Acted> due(Measure least) {
        return course.present().entrySet().stream()
                .filter(e -> e.getValue().acted().isEmpty())
                .filter(e -> e.getValue().noticed().policy().then().compareTo(least) >= 0)
                .filter(e -> e.getValue().noticed().policy().then() != Measure.GO_ON)
                .filter(e -> waited(e.getKey(), e.getValue()))
                .map(e -> acted(e.getValue()))
                .max(Comparator.comparing(RunFact.Acted::measure));
    }

    private boolean waited(Sighting.Key key, Incident incident) {
        Duration since = noticed.getOrDefault(key, Duration.ZERO);
        return time.elapsed().minus(since).compareTo(incident.noticed().policy().patience()) >= 0;
    }

    private RunFact.Acted acted(Incident incident) {
        RunFact.Noticed n = incident.noticed();
        String lasting = n.policy().patience().isZero()
                ? ""
                : " for " + n.policy().patience().toSeconds() + " s";
        String why = n.channel() + " " + n.fault().words() + lasting + ": " + n.evidence();
        return new RunFact.Acted(
                n.fault(), n.channel(), course.point(), n.policy().then(), why);
    }
}
