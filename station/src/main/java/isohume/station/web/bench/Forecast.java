// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import isohume.quantity.Point;
import isohume.run.Course;
import isohume.run.Plan;
import isohume.run.Rules;
import isohume.run.Waiting;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * How long still, as far as it can be said.
 *
 * @param point until this point is recorded; empty while a signal gives no ground for a guess
 * @param run until the plan is done; from approaches seen in this run, and where none was seen from allowances
 */
public record Forecast(Optional<Duration> point, Optional<Duration> run) {
    // allowances for a first approach; common practice, no source
    private static final Duration NEW_HUMIDITY = Duration.ofMinutes(20);
    private static final Duration NEW_TEMPERATURE = Duration.ofMinutes(60);

    static Forecast of(Followed followed, Instant now) {
        return of(followed.course(), followed.approaches(), now);
    }

    /** By a run's facts so far, and the approaches among them. */
    public static Forecast of(Course course, Approaches approaches, Instant now) {
        Optional<Duration> point = thisPoint(course, now);
        Duration rest = point.orElseGet(() -> ofPoint(course, approaches, course.point()));
        for (Point ahead : course.plan().points()) {
            if (ahead.number() != course.point() && !over(course).contains(ahead.number())) {
                rest = rest.plus(ofPoint(course, approaches, ahead.number()));
            }
        }
        return switch (course.phase()) {
            case APPROACH, SOAK, RECORD -> new Forecast(point, Optional.of(rest));
            case HELD, SAFE_STOP, FINISHED, ABANDONED -> new Forecast(Optional.empty(), Optional.empty());
        };
    }

    private static Set<Integer> over(Course course) {
        Set<Integer> over = new HashSet<>(course.skipped());
        course.recorded().forEach(r -> over.add(r.point()));
        return over;
    }

    private static Optional<Duration> thisPoint(Course course, Instant now) {
        Rules rules = course.plan().rules();
        Duration inPhase = Duration.between(course.since(), now);
        Duration record = rules.interval().multipliedBy(rules.readings());
        return switch (course.phase()) {
            case APPROACH -> settling(course).map(d -> d.plus(course.soak()).plus(record));
            case SOAK -> Optional.of(positive(course.soak().minus(inPhase)).plus(record));
            case RECORD ->
                Optional.of(rules.interval().multipliedBy(Math.max(0, rules.readings() - course.recordRows())));
            case HELD, SAFE_STOP, FINISHED, ABANDONED -> Optional.empty();
        };
    }

    /** The longest of what the signals expect; nothing when one of them cannot say. */
    private static Optional<Duration> settling(Course course) {
        Duration longest = Duration.ZERO;
        for (Waiting waiting : course.waiting()) {
            if (waiting.left().isEmpty()) {
                return Optional.empty();
            }
            longest =
                    longest.compareTo(waiting.left().get()) < 0 ? waiting.left().get() : longest;
        }
        return course.waiting().isEmpty() ? Optional.empty() : Optional.of(longest);
    }

    private static Duration ofPoint(Course course, Approaches approaches, int number) {
        Plan plan = course.plan();
        Rules rules = plan.rules();
        boolean warms = changesTemperature(plan, number);
        Duration approach = approaches
                .longest(n -> changesTemperature(plan, n) == warms)
                .orElse(warms ? NEW_TEMPERATURE : NEW_HUMIDITY);
        return approach.plus(warms ? rules.temperatureSoak() : rules.soak())
                .plus(rules.interval().multipliedBy(rules.readings()));
    }

    private static boolean changesTemperature(Plan plan, int number) {
        return number <= 1
                || !plan.point(number)
                        .temperature()
                        .equals(plan.point(number - 1).temperature());
    }

    private static Duration positive(Duration duration) {
        return duration.isNegative() ? Duration.ZERO : duration;
    }
}
