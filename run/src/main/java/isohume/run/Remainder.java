// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.run.Foresight.Length;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** How long the point that is under way still takes. */
final class Remainder {
    private static final double SPREAD = 0.3; // of a predicted crossing, as a share: common practice, no source

    private Remainder() {}

    static Optional<Length> of(Course course, Instant now) {
        return switch (course.phase()) {
            case APPROACH, SOAK -> settling(course, now).map(length -> length.plus(record(course, 0)));
            case RECORD ->
                course.entries().wanted(course.point()).isEmpty()
                        ? Optional.of(record(course, course.recordRows()))
                        : Optional.empty(); // a person comes when a person comes
            case HELD, SAFE_STOP, FINISHED, ABANDONED -> Optional.empty();
        };
    }

    /** The longest of what the signals expect; nothing when one of them cannot say. */
    private static Optional<Length> settling(Course course, Instant now) {
        Duration longest = Duration.ZERO;
        for (Waiting waiting : course.waiting()) {
            if (waiting.left().isEmpty()) {
                return Optional.empty();
            }
            Duration left = waiting.left().get();
            longest = longest.compareTo(left) < 0 ? left : longest;
        }
        if (course.waiting().isEmpty()) {
            return Optional.empty();
        }
        Duration spread = Duration.ofMillis(Math.round(SPREAD * longest.toMillis()));
        return Optional.of(new Length(least(course, now, longest), spread));
    }

    /** With what the rule prescribes whatever the signals say. */
    private static Duration least(Course course, Instant now, Duration left) {
        return switch (course.plan().rules().settling()) {
            case SettlingRule.Fixed fixed -> {
                Duration soak = course.soak().orElseThrow();
                yield course.phase() == Phase.SOAK
                        ? positive(soak.minus(Duration.between(course.since(), now)))
                        : left.plus(soak);
            }
            case SettlingRule.Tail tail -> {
                Duration least = positive(tail.least().minus(Duration.between(course.askedAt(), now)));
                yield least.compareTo(left) > 0 ? least : left;
            }
        };
    }

    private static Duration positive(Duration duration) {
        return duration.isNegative() ? Duration.ZERO : duration;
    }

    /** Between the fewest and the most readings, less those that were taken. */
    private static Length record(Course course, int taken) {
        Rules rules = course.plan().rules();
        int least = Math.max(1, rules.leastReadings() - taken);
        int most = Math.max(1, rules.mostReadings() - taken);
        Duration middle = rules.interval().multipliedBy(least + most).dividedBy(2);
        return new Length(middle, rules.interval().multipliedBy(most - least).dividedBy(4));
    }
}
