// SPDX-License-Identifier: Apache-2.0
package isohume.station.plan;

import isohume.device.Setpoint;
import isohume.moistair.MoistAir;
import isohume.quantity.Point;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.result.Prediction;
import isohume.run.order.Expected;
import isohume.run.order.LearnedTimes;
import isohume.run.order.Lesson;
import isohume.run.order.Visit;
import isohume.run.reach.Assessment;
import isohume.run.reach.Attainment;
import isohume.run.reach.Consumption;
import isohume.run.reach.Flows;
import isohume.run.reach.Use;
import isohume.run.reach.Way;
import isohume.run.reach.WayPoint;
import isohume.station.job.Capacity;
import isohume.station.job.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a plan takes on its bench.
 *
 * @param points in the plan's order
 * @param whole from the first asking until the last record
 * @param use water and drying agent of all of it
 * @param lessons how many points of past runs the times were learned from
 */
public record Prospect(
        Worksheet worksheet, List<Ahead> points, Expected whole, Use use, LearnedTimes times, int lessons) {
    private static final double ROOM_PERCENT = 50; // % RH; common practice, no source
    private static final double HOUR = 60; // min

    public Prospect {
        points = List.copyOf(points);
    }

    /**
     * One point.
     *
     * @param way what is asked for on the way there
     * @param predictions of every channel; empty when the point cannot be evaluated
     * @param notPredicted why not, in words
     */
    public record Ahead(
            Point point,
            Assessment assessment,
            List<WayPoint> way,
            Expected approach,
            Expected stay,
            List<Prediction> predictions,
            Optional<String> notPredicted) {
        public Ahead {
            way = List.copyOf(way);
            predictions = List.copyOf(predictions);
        }

        /** Channels, as {@code B-2077/relative_humidity}, that no instrument could pass here. */
        public List<String> noPass() {
            return predictions.stream()
                    .filter(p -> !p.passPossible())
                    .map(p -> p.instrument() + "/" + p.quantity().key())
                    .toList();
        }
    }

    /** The prospect of a worksheet's plan, in its order. */
    public static Prospect of(Worksheet worksheet, List<Lesson> lessons) {
        return of(worksheet, worksheet.plan().points(), lessons);
    }

    /** The same with other points. */
    public static Prospect of(Worksheet worksheet, List<Point> points, List<Lesson> lessons) {
        MoistAir air = MoistAir.by(worksheet.job().formulation());
        Capacity capacity = worksheet.capacity();
        Attainment attainment = new Attainment(capacity.reach(), air);
        Way way = new Way(capacity.reach(), air);
        LearnedTimes times = times(worksheet, lessons);
        List<Ahead> ahead = new ArrayList<>();
        List<Visit> visits = new ArrayList<>();
        Setpoint here = room(capacity);
        for (Point point : points) {
            Setpoint there = new Setpoint(point.temperature(), point.humidity());
            Visit visit = new Visit(here, there);
            visits.add(visit);
            ahead.add(ahead(worksheet, point, attainment.assess(there), way.between(here, there), visit, times));
            here = there;
        }
        Use use = use(capacity, air, visits, times);
        return new Prospect(worksheet, ahead, times.whole(visits), use, times, lessons.size());
    }

    /** How long the worksheet's bench takes by its plan's rules, as far as its runs have taught. */
    public static LearnedTimes times(Worksheet worksheet, List<Lesson> lessons) {
        Capacity capacity = worksheet.capacity();
        Way way = new Way(capacity.reach(), MoistAir.by(worksheet.job().formulation()));
        return new LearnedTimes(capacity.pace(), way, worksheet.plan().rules(), lessons);
    }

    /** The chamber before the first point: open to the room. */
    public static Setpoint room(Capacity capacity) {
        return new Setpoint(
                Temperature.ofCelsius(capacity.reach().surfaces().room()), RelativeHumidity.ofPercent(ROOM_PERCENT));
    }

    private static Ahead ahead(
            Worksheet worksheet,
            Point point,
            Assessment assessment,
            List<WayPoint> way,
            Visit visit,
            LearnedTimes times) {
        List<Prediction> predictions = List.of();
        Optional<String> notPredicted = Optional.empty();
        try {
            predictions = Prediction.of(worksheet.job(), List.of(point));
        } catch (IllegalArgumentException notCovered) { // a certificate, the study or a formula ends before
            notPredicted = Optional.ofNullable(notCovered.getMessage());
        }
        return new Ahead(point, assessment, way, times.approach(visit), times.stay(visit), predictions, notPredicted);
    }

    private static Use use(Capacity capacity, MoistAir air, List<Visit> visits, LearnedTimes times) {
        Flows flows = capacity.flows();
        Consumption consumption = new Consumption(capacity.reach(), flows.feed(), room(capacity), air);
        Use sum = Use.NONE;
        for (Visit visit : visits) {
            Use leaving = consumption.anHourAt(visit.from(), flows.changing());
            Use arriving = consumption.anHourAt(visit.to(), flows.changing());
            double approach = times.approach(visit).minutes() / HOUR;
            double stay = times.stay(visit).minutes() / HOUR;
            sum = sum.plus(leaving.plus(arriving).times(approach / 2))
                    .plus(consumption.anHourAt(visit.to(), flows.holding()).times(stay));
        }
        return sum;
    }

    /** Whether every point can be reached. */
    public boolean reachable() {
        return points.stream().allMatch(p -> p.assessment().reachable());
    }
}
