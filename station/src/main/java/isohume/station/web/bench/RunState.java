// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import com.fasterxml.jackson.annotation.JsonInclude;
import isohume.run.Course;
import isohume.run.Foresight;
import isohume.run.Moment;
import isohume.run.RunFact;
import isohume.run.Waiting;
import isohume.run.settling.Outlook;
import isohume.station.web.Desk;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * How a run stands, for programs. Temperatures in °C, humidity in % RH, times in seconds.
 *
 * @param shown what every channel showed at the last poll, in its quantity's unit, by channel id
 * @param missing why a channel has no value, by channel id
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record RunState(
        String run,
        String plan,
        String bench,
        String operator,
        String phase,
        String why,
        Instant began,
        Instant since,
        int point,
        int points,
        List<Integer> recorded,
        List<Integer> skipped,
        @Nullable Target target,
        @Nullable Instant read,
        @Nullable Double relativeHumidity,
        Map<String, Double> shown,
        Map<String, String> missing,
        int readingsTaken,
        int readingsWanted,
        List<WaitingFor> waiting,
        @Nullable Long secondsLeftPoint,
        @Nullable Long secondsLeftRun,
        @Nullable Long secondsLeftRunUncertainty,
        long facts) {

    /** Where the chamber was asked to go. */
    public record Target(double temperature, double relativeHumidity) {}

    /** What a signal waits for; the criterion is the one furthest from met. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record WaitingFor(
            String signal,
            String quantity,
            @Nullable Double latest,
            @Nullable String criterion,
            @Nullable Double measured,
            @Nullable Double limit,
            String unit,
            boolean settled,
            @Nullable Long secondsLeft,
            @Nullable Expected expected) {}

    /**
     * What a signal is expected to do, in its difference unit.
     *
     * @param toCome from now to where it ends
     * @param driftPerMinute slope now
     * @param scatter standard deviation about the fitted curve
     * @param secondsSeen how much of the signal this rests on
     */
    public record Expected(
            double toCome,
            double toComeUncertainty,
            double driftPerMinute,
            double driftUncertainty,
            double scatter,
            long secondsSeen) {
        static Expected of(Outlook outlook) {
            return new Expected(
                    outlook.toCome().value(),
                    outlook.toCome().standardUncertainty(),
                    outlook.drift().value() * 60,
                    outlook.drift().standardUncertainty() * 60,
                    outlook.scatter(),
                    outlook.seen().toSeconds());
        }
    }

    static Optional<RunState> of(Followed followed, Desk desk) {
        return followed.look(desk, f -> f.course().hasStarted() ? Optional.of(state(f, desk)) : Optional.empty());
    }

    private static RunState state(Followed followed, Desk desk) {
        Instant now = desk.clock().instant();
        Course course = followed.course();
        RunFact.Started started = course.started();
        Optional<Moment> moment = course.latest();
        Foresight foresight = desk.foresight(started.bench());
        Optional<Foresight.Length> run = foresight.ofRun(course, now);
        return new RunState(
                followed.run(),
                course.plan().title(),
                started.bench(),
                started.operator(),
                course.phase().word(),
                course.why(),
                course.began(),
                course.since(),
                course.point(),
                course.plan().points().size(),
                course.recorded().stream().map(RunFact.Recorded::point).toList(),
                course.skipped(),
                course.target()
                        .map(t -> new Target(
                                t.temperature().celsius(), t.humidity().percent()))
                        .orElse(null),
                moment.map(Moment::at).orElse(null),
                moment.map(m -> orNull(m.humidity())).orElse(null),
                moment.map(Moment::shown).orElse(Map.of()),
                moment.map(Moment::missing).orElse(Map.of()),
                course.recordRows(),
                course.plan().rules().mostReadings(),
                course.waiting().stream().map(RunState::waiting).toList(),
                foresight
                        .ofThisPoint(course, now)
                        .map(l -> l.expected().toSeconds())
                        .orElse(null),
                run.map(l -> l.expected().toSeconds()).orElse(null),
                run.map(l -> l.spread().toSeconds()).orElse(null),
                course.taken());
    }

    private static WaitingFor waiting(Waiting waiting) {
        Optional<Waiting.Criterion> worst = waiting.worst();
        boolean drift = worst.map(c -> c.kind() == Waiting.Kind.DRIFT).orElse(false);
        return new WaitingFor(
                waiting.signal(),
                waiting.quantity().key(),
                orNull(waiting.latest()),
                worst.map(c -> c.kind().name().toLowerCase(Locale.ROOT)).orElse(null),
                worst.map(Waiting.Criterion::measured).orElse(null),
                worst.map(Waiting.Criterion::limit).orElse(null),
                waiting.quantity().differenceUnit() + (drift ? "/min" : ""),
                waiting.settled(),
                waiting.left().map(Duration::toSeconds).orElse(null),
                waiting.outlook().map(Expected::of).orElse(null));
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
