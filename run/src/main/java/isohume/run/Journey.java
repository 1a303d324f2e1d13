// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Setpoint;
import isohume.quantity.Point;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.reach.Way;
import isohume.run.reach.WayPoint;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a run asks for on its way to a point, so that nothing condenses: the point itself or something before it. */
final class Journey {
    /** What the air may be before anything was seen of it: a damp room. Common practice, no source. */
    private static final Setpoint UNSEEN = new Setpoint(Temperature.ofCelsius(23), RelativeHumidity.ofPercent(70));

    private final Optional<Way> way;
    private final Course course;

    Journey(Optional<Way> way, Course course) {
        this.way = way;
        this.course = course;
    }

    /** Whether the air has to be looked at before anything is asked for. */
    boolean needsLook() {
        return way.isPresent() && course.latest().isEmpty();
    }

    /** What to ask for first on the way to a point; empty when it can be asked for itself. */
    Optional<WayPoint> first(int number) {
        return next(now().or(course::target).orElse(UNSEEN), target(number));
    }

    /** What to ask for next, after the way-point that is being asked for; empty when that is the point itself. */
    Optional<WayPoint> onward() {
        return next(course.target().orElse(UNSEEN), target(course.point()));
    }

    /** Whether the way-point can be left: what comes next is safe from where the air is. */
    boolean passed() {
        Setpoint next = onward().map(WayPoint::target).orElse(target(course.point()));
        return way.isEmpty() || now().map(here -> way.get().passed(here, next)).orElse(false);
    }

    private Optional<WayPoint> next(Setpoint from, Setpoint to) {
        List<WayPoint> between = way.map(w -> w.between(from, to)).orElse(List.of());
        return between.stream().findFirst();
    }

    Setpoint target(int number) {
        Point point = course.plan().point(number);
        return new Setpoint(point.temperature(), point.humidity());
    }

    private Optional<Setpoint> now() {
        Optional<Moment> latest = course.latest();
        if (latest.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble celsius = latest.get().value(course.roles().temperature());
        OptionalDouble percent = latest.get().humidity();
        return celsius.isPresent() && percent.isPresent()
                ? Optional.of(new Setpoint(
                        Temperature.ofCelsius(celsius.getAsDouble()),
                        RelativeHumidity.ofPercent(percent.getAsDouble())))
                : Optional.empty();
    }
}
