// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Setpoint;
import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.Rules;
import isohume.run.reach.Flows;
import isohume.run.reach.Reach;
import isohume.run.reach.Streams;
import isohume.run.reach.Surfaces;
import isohume.run.reach.Way;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Learning on benches whose law is drawn here and known: each takes its description's time, times a factor of its own that
 * depends on the step, times chance.
 */
class LearnedTimesTest {
    private static final long SEED = 7;
    private static final Way WAY = new Way(
            new Reach(
                    Temperature.ofCelsius(5),
                    Temperature.ofCelsius(50),
                    RelativeHumidity.ofPercent(5),
                    RelativeHumidity.ofPercent(95),
                    new Streams(
                            DewPoint.overIce(Temperature.ofCelsius(-30)),
                            DewPoint.overWater(Temperature.ofCelsius(48)),
                            Optional.empty()),
                    Surfaces.usual(),
                    List.of()),
            MoistAir.by(Formulation.SONNTAG_1990));
    private static final Rules RULES = Rules.fixed();
    private static final Pace PACE = Pace.of(Flows.usual());

    /** A bench whose law nobody has told the model. */
    private static final class Drawn {
        private final SplittableRandom random;
        private final double offset;
        private final double drying;
        private final double cold;
        private final double noise;

        Drawn(SplittableRandom random) {
            this.random = random;
            offset = 0.4 * random.nextGaussian();
            drying = 0.2 * random.nextGaussian();
            cold = 0.2 * random.nextGaussian();
            noise = 0.1 + 0.3 * random.nextDouble();
        }

        Lesson lesson(Visit visit) {
            double law = offset
                    + drying * -Math.signum(visit.humidityStep())
                    + cold * (23 - visit.to().temperature().celsius()) / 20;
            double approach = model(List.of()).approach(visit).minutes() * 0.7;
            return new Lesson(
                    visit,
                    approach * Math.exp(law + noise * random.nextGaussian()),
                    25 * Math.exp(0.05 * random.nextGaussian()),
                    RULES);
        }
    }

    @Test
    void intervals_hold_the_true_time_of_a_step_about_nine_times_in_ten() {
        System.out.println("seed " + SEED);
        SplittableRandom random = new SplittableRandom(SEED);
        for (int known : new int[] {0, 3, 15, 60}) {
            int held = 0;
            int all = 0;
            for (int trial = 0; trial < 200; trial++) {
                Drawn bench = new Drawn(random);
                LearnedTimes times = model(run(bench, known, random));
                for (Lesson next : run(bench, 10, random)) {
                    Expected expected = times.approach(next.visit());
                    held += expected.low() <= next.approach() && next.approach() <= expected.high() ? 1 : 0;
                    all++;
                }
            }
            double share = (double) held / all;
            assertTrue(share > 0.85, "after " + known + " points only " + share + " are held");
        }
    }

    @Test
    void intervals_hold_the_true_time_of_a_whole_plan_about_nine_times_in_ten() {
        System.out.println("seed " + SEED);
        SplittableRandom random = new SplittableRandom(SEED);
        for (int known : new int[] {0, 5, 30}) {
            int held = 0;
            int trials = 400;
            for (int trial = 0; trial < trials; trial++) {
                Drawn bench = new Drawn(random);
                LearnedTimes times = model(run(bench, known, random));
                List<Lesson> plan = run(bench, 15, random);
                Expected whole = times.whole(plan.stream().map(Lesson::visit).toList());
                double took =
                        plan.stream().mapToDouble(l -> l.approach() + l.stay()).sum();
                held += whole.low() <= took && took <= whole.high() ? 1 : 0;
            }
            double share = (double) held / trials;
            assertTrue(share > 0.85, "after " + known + " points only " + share + " are held");
        }
    }

    @Test
    void a_few_points_shift_the_time_a_little_and_many_a_lot() {
        Visit visit = new Visit(at(23, 20), at(23, 60));
        double before = model(List.of()).approach(visit).minutes();
        double truth = 2.5 * before;
        double one = model(repeated(visit, truth, 1)).approach(visit).minutes();
        double many = model(repeated(visit, truth, 40)).approach(visit).minutes();
        assertTrue(before < one && one < 0.85 * truth, before + ", " + one + " of " + truth);
        assertEquals(truth, many, 0.08 * truth);
    }

    @Test
    void what_is_learned_narrows_the_spread() {
        SplittableRandom random = new SplittableRandom(SEED);
        Drawn bench = new Drawn(random);
        List<Visit> plan = run(bench, 12, random).stream().map(Lesson::visit).toList();
        Expected before = model(List.of()).whole(plan);
        Expected after = model(run(bench, 40, random)).whole(plan);
        assertTrue(after.spread() / after.minutes() < 0.5 * before.spread() / before.minutes());
    }

    @Test
    void the_order_of_the_lessons_does_not_matter() {
        SplittableRandom random = new SplittableRandom(SEED);
        List<Lesson> lessons = run(new Drawn(random), 20, random);
        List<Lesson> turned = new ArrayList<>(lessons);
        Collections.reverse(turned);
        Visit visit = new Visit(at(40, 20), at(10, 60));
        assertEquals(
                model(lessons).approach(visit).minutes(),
                model(turned).approach(visit).minutes(),
                1e-9);
        assertEquals(
                model(lessons).approach(visit).spread(),
                model(turned).approach(visit).spread(),
                1e-9);
    }

    @Test
    void way_points_are_part_of_the_time() {
        LearnedTimes times = model(List.of());
        double dry = times.approach(new Visit(at(40, 15), at(10, 15))).minutes();
        double wet = times.approach(new Visit(at(40, 75), at(10, 75))).minutes();
        assertTrue(wet > dry + 5, wet + " and " + dry);
    }

    private static LearnedTimes model(List<Lesson> lessons) {
        return new LearnedTimes(PACE, WAY, RULES, lessons);
    }

    private static List<Lesson> repeated(Visit visit, double minutes, int times) {
        return Collections.nCopies(times, new Lesson(visit, minutes, 15, RULES));
    }

    private static List<Lesson> run(Drawn bench, int points, SplittableRandom random) {
        List<Lesson> lessons = new ArrayList<>();
        Setpoint here = some(random, at(23, 45));
        for (int i = 0; i < points; i++) {
            Setpoint there = some(random, here);
            lessons.add(bench.lesson(new Visit(here, there)));
            here = there;
        }
        return lessons;
    }

    /** Mostly the same temperature, as in a plan. */
    private static Setpoint some(SplittableRandom random, Setpoint here) {
        double celsius = random.nextInt(4) == 0
                ? 10 + 30 * random.nextDouble()
                : here.temperature().celsius();
        return at(celsius, 10 + 70 * random.nextDouble());
    }

    private static Setpoint at(double celsius, double percent) {
        return new Setpoint(Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(percent));
    }
}
