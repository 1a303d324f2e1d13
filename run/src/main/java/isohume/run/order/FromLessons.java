// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import isohume.device.Setpoint;
import isohume.quantity.Point;
import isohume.run.Course;
import isohume.run.Foresight;
import isohume.run.Plan;
import isohume.run.SeenSoFar;
import java.util.List;

/**
 * Foresight from what a bench's runs have taught, this one included: a far step or a dry point is known to take longer. From
 * what this run has seen as long as there is no lesson, and for the first point, which no lesson is like.
 */
public final class FromLessons implements Foresight {
    private final LearnedTimes times;
    private final Foresight otherwise = new SeenSoFar();

    public FromLessons(LearnedTimes times) {
        this.times = times;
    }

    @Override
    public Length ofPoint(Course course, int number) {
        return number == 1 || times.lessons() == 0
                ? otherwise.ofPoint(course, number)
                : length(times.whole(List.of(visit(course.plan(), number))));
    }

    /** What is not known of the bench errs the same way at every point. */
    @Override
    public Length ofPoints(Course course, List<Integer> numbers) {
        if (times.lessons() == 0 || numbers.contains(1)) {
            return otherwise.ofPoints(course, numbers);
        }
        return length(
                times.whole(numbers.stream().map(n -> visit(course.plan(), n)).toList()));
    }

    private static Visit visit(Plan plan, int number) {
        return new Visit(condition(plan.point(number - 1)), condition(plan.point(number)));
    }

    private static Setpoint condition(Point point) {
        return new Setpoint(point.temperature(), point.humidity());
    }

    private static Length length(Expected expected) {
        return new Length(expected.mean(), new Expected(expected.spread(), 0).mean());
    }
}
