// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import isohume.device.Setpoint;
import isohume.quantity.Point;
import isohume.quantity.Quantity;
import isohume.run.Course;
import isohume.run.Foresight;
import isohume.run.Moment;
import isohume.run.Order;
import isohume.run.Phase;
import isohume.run.Rules;
import isohume.run.RunFact;
import isohume.run.Waiting;
import isohume.station.web.Clockface;
import isohume.station.web.Desk;
import isohume.station.web.Figure;
import isohume.station.web.Ring;
import isohume.station.web.bench.BenchView.Big;
import isohume.station.web.bench.BenchView.Signal;
import isohume.station.web.bench.BenchView.Standing;
import isohume.station.web.bench.BenchView.Step;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** Makes the view of a run at a moment. */
final class BenchViews {
    private static final String WEDGE =
            "What is still moving, in parts of its limit, since the set point was asked; the table below has the figures";
    private static final String NOTHING = "–";
    private static final int POLLS_UNTIL_OLD = 3;

    private final Followed followed;
    private final Course course;
    private final Desk desk;
    private final Instant now;
    private final Clockface clock;

    private BenchViews(Followed followed, Desk desk) {
        this.followed = followed;
        this.course = followed.course();
        this.desk = desk;
        this.now = desk.clock().instant();
        this.clock = new Clockface(desk.zone());
    }

    /** Empty when the run has no facts. */
    static Optional<BenchView> of(Followed followed, Desk desk) {
        return followed.look(
                desk, f -> f.course().hasStarted() ? Optional.of(new BenchViews(f, desk).view()) : Optional.empty());
    }

    private BenchView view() {
        Foresight foresight = desk.foresight(course.started().bench());
        Optional<Foresight.Length> thisPoint = foresight.ofThisPoint(course, now);
        Optional<Foresight.Length> run = foresight.ofRun(course, now);
        RunFact.Started started = course.started();
        List<Waiting> waiting = course.waiting();
        return new BenchView(
                followed.run(),
                course.plan().title(),
                started.bench(),
                started.operator(),
                desk.remark(),
                course.phase(),
                course.phase().word(),
                Ring.of(course.phase(), followed.share(now)),
                Clockface.length(Duration.between(course.since(), now)),
                course.why(),
                course.point(),
                course.plan().points().size(),
                progress(),
                figures(),
                course.latest().map(m -> clock.time(m.at())).orElse(""),
                old(),
                course.plan().points().stream().map(this::step).toList(),
                waiting.stream().map(BenchViews::signal).toList(),
                Wedge.of(followed.closing(), waiting, course.askedAt(), now, clock, WEDGE),
                thisPoint.map(l -> Clockface.length(l.expected())).orElse(""),
                run.map(l -> Clockface.length(l.expected())).orElse(""),
                run.map(l -> clock.expected(now.plus(l.expected()), now)).orElse(""),
                run.map(l -> Clockface.length(l.spread().multipliedBy(2))).orElse(""),
                orders(course.phase()),
                course.taken(),
                Happenings.of(course, clock),
                displays());
    }

    /** What a run in a phase can be told. */
    static List<Order> orders(Phase phase) {
        return switch (phase) {
            case APPROACH, SOAK, RECORD -> List.of(Order.HOLD, Order.SKIP, Order.STOP);
            case HELD -> List.of(Order.RESUME, Order.SKIP, Order.STOP);
            case SAFE_STOP -> List.of(Order.RESUME);
            case FINISHED, ABANDONED -> List.of();
        };
    }

    private List<String> displays() {
        return course.phase() == Phase.RECORD
                ? course.entries().wanted(course.point()).stream()
                        .map(EntriesView::name)
                        .toList()
                : List.of();
    }

    private String progress() {
        return switch (course.phase()) {
            case SOAK ->
                Clockface.length(Duration.between(course.since(), now))
                        + course.soak()
                                .map(soak -> " of " + Clockface.length(soak))
                                .orElse("");
            case RECORD ->
                course.recordRows() + " readings, " + readings(course.plan().rules());
            case APPROACH, HELD, SAFE_STOP, FINISHED, ABANDONED -> "";
        };
    }

    private static String readings(Rules rules) {
        return rules.leastReadings() == rules.mostReadings()
                ? rules.mostReadings() + " in all"
                : rules.leastReadings() + " to " + rules.mostReadings() + " in all";
    }

    private boolean old() {
        Duration most = course.plan().rules().interval().multipliedBy(POLLS_UNTIL_OLD);
        return course.phase().underWay()
                && course.latest().map(m -> m.at().plus(most).isBefore(now)).orElse(false);
    }

    private List<Big> figures() {
        Optional<Moment> moment = course.latest();
        String temperature = course.roles().temperature();
        String dewPoint = course.roles().dewPoint();
        return List.of(
                big(
                        Quantity.TEMPERATURE,
                        "temperature",
                        shown(moment, temperature),
                        2,
                        t -> Figure.of(t.temperature().celsius(), 1) + "\u202f°C",
                        missing(moment, temperature)),
                big(
                        Quantity.RELATIVE_HUMIDITY,
                        "humidity",
                        moment.flatMap(m -> m.humidity().isPresent()
                                ? Optional.of(m.humidity().getAsDouble())
                                : Optional.empty()),
                        2,
                        t -> Figure.of(t.humidity().percent(), 1) + "\u202f% RH",
                        "a reference is missing"),
                big(
                        Quantity.DEW_POINT,
                        moment.flatMap(Moment::deposit)
                                .filter(p -> p == isohume.quantity.Phase.ICE)
                                .map(p -> "frost")
                                .orElse("dew"),
                        shown(moment, dewPoint),
                        2,
                        t -> "",
                        missing(moment, dewPoint)));
    }

    private Big big(
            Quantity quantity,
            String key,
            Optional<Double> value,
            int decimals,
            Function<Setpoint, String> target,
            String missing) {
        return new Big(
                quantity,
                key,
                Figure.of(value.orElse(Double.NaN), decimals),
                quantity.unit(),
                course.target().map(target).orElse(""),
                value.isPresent() || course.latest().isEmpty() ? "" : missing);
    }

    private static Optional<Double> shown(Optional<Moment> moment, String channel) {
        return moment.flatMap(m -> Optional.ofNullable(m.shown().get(channel)));
    }

    private static String missing(Optional<Moment> moment, String channel) {
        return moment.flatMap(m -> Optional.ofNullable(m.missing().get(channel)))
                .orElse("not read");
    }

    private Step step(Point point) {
        return new Step(
                point.number(),
                Figure.of(point.temperature().celsius(), 0).toString(),
                Figure.of(point.humidity().percent(), 0).toString(),
                switch (point.direction()) {
                    case ASCENDING -> "▲";
                    case DESCENDING -> "▼";
                },
                standing(point.number()));
    }

    private Standing standing(int number) {
        if (course.recorded().stream().anyMatch(r -> r.point() == number)) {
            return Standing.RECORDED;
        }
        if (course.skipped().contains(number)) {
            return Standing.SKIPPED;
        }
        return number == course.point() && course.phase().underWay() ? Standing.NOW : Standing.AHEAD;
    }

    private static Signal signal(Waiting waiting) {
        String unit = waiting.quantity().differenceUnit();
        Optional<Waiting.Criterion> worst = waiting.worst();
        boolean drift = worst.map(c -> c.kind() == Waiting.Kind.DRIFT).orElse(false);
        return new Signal(
                waiting.signal(),
                waiting.quantity().key(),
                waiting.difference()
                        ? Figure.signed(waiting.latest().orElse(Double.NaN), 2)
                        : Figure.of(waiting.latest().orElse(Double.NaN), 2),
                waiting.difference() ? unit : waiting.quantity().unit(),
                worst.map(c -> c.kind().name().toLowerCase(Locale.ROOT)).orElse(BenchView.WINDOW),
                Figure.of(worst.map(Waiting.Criterion::measured).orElse(Double.NaN), 3),
                Figure.of(worst.map(Waiting.Criterion::limit).orElse(Double.NaN), 3),
                drift ? unit + "/min" : unit,
                waiting.settled(),
                waiting.settled() ? "" : waiting.left().map(Clockface::length).orElse(NOTHING));
    }
}
