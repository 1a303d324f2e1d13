// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.quantity.Point;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Knows how long points take that lie ahead. */
public interface Foresight {
    /**
     * A length of time that is not known exactly.
     *
     * @param spread its standard uncertainty
     */
    record Length(Duration expected, Duration spread) {
        public static final Length NOTHING = new Length(Duration.ZERO, Duration.ZERO);

        /** One after the other; what is not known of one has nothing to do with the other. */
        public Length plus(Length next) {
            double both = Math.hypot((double) spread.toMillis(), (double) next.spread.toMillis());
            return new Length(expected.plus(next.expected), Duration.ofMillis(Math.round(both)));
        }
    }

    /** A whole point, from its target to the end of its record, reached from the point before it. */
    Length ofPoint(Course course, int number);

    /** Several whole points, each reached from the one before it. */
    default Length ofPoints(Course course, List<Integer> numbers) {
        return numbers.stream().map(number -> ofPoint(course, number)).reduce(Length.NOTHING, Length::plus);
    }

    /** Until the point that is under way is recorded; empty while nobody is at work or a signal gives no ground. */
    default Optional<Length> ofThisPoint(Course course, Instant now) {
        return Remainder.of(course, now);
    }

    /** Until every point is recorded; empty while nobody is at work. */
    default Optional<Length> ofRun(Course course, Instant now) {
        return switch (course.phase()) {
            case APPROACH, SOAK, RECORD -> Optional.of(rest(course, now));
            case HELD, SAFE_STOP, FINISHED, ABANDONED -> Optional.empty();
        };
    }

    private Length rest(Course course, Instant now) {
        Length rest = course.point() == 0
                ? Length.NOTHING
                : ofThisPoint(course, now).orElseGet(() -> ofPoint(course, course.point()));
        Set<Integer> over = new HashSet<>(course.skipped());
        course.recorded().forEach(r -> over.add(r.point()));
        over.add(course.point());
        List<Integer> ahead = course.plan().points().stream()
                .map(Point::number)
                .filter(number -> !over.contains(number))
                .toList();
        return rest.plus(ofPoints(course, ahead));
    }
}
