// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.Quantity;
import isohume.run.settling.Display.Witness;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DisplayTest {
    private static final long SEED = 3;
    private static final double POLL = 10;

    private final SplittableRandom random = new SplittableRandom(SEED);
    private final Display display = new Display(Quantity.RELATIVE_HUMIDITY, Duration.ofMinutes(5));
    private final List<Lagged> witnesses = new ArrayList<>(List.of(new Lagged(), new Lagged(), new Lagged()));
    private final double[] lags = {8, 8, 8}; // of the witnesses, s
    private final double[] told = {50, 50, 50};
    private double now;
    private double air = 50;
    private double sensor = 50;
    private double sensorLag = 15;
    private double digit = 0.1;
    private double noise = 0.02;
    private double gain = 1;
    private Optional<Double> stuck = Optional.empty();

    /** First-order lags, exact for air that stands between polls. */
    private void pass(double seconds, double perSecond) {
        for (double end = now + seconds; now < end; ) {
            now += POLL;
            air += perSecond * POLL;
            sensor += (air - sensor) * -Math.expm1(-POLL / sensorLag);
            List<Witness> others = new ArrayList<>();
            for (int i = 0; i < told.length; i++) {
                told[i] += (air - told[i]) * -Math.expm1(-POLL / lags[i]);
                witnesses.get(i).take(now, told[i] + 0.02 * random.nextGaussian());
                others.add(new Witness(witnesses.get(i), 0));
            }
            double value = 50 + 0.3 + gain * (sensor - 50) + noise * random.nextGaussian();
            display.take(now, stuck.orElse(Math.rint(value / digit) * digit), 0.01, others);
        }
    }

    private void aliveWhile(double seconds, double perSecond) {
        for (double end = now + seconds; now < end; ) {
            pass(POLL, perSecond);
            assertEquals(Optional.empty(), display.frozen(), "after " + now + " s at " + air + " % RH");
        }
    }

    private void stick() {
        stuck = Optional.of(Math.rint((50.3 + gain * (sensor - 50)) / digit) * digit);
    }

    @ParameterizedTest(name = "{0} % RH")
    @ValueSource(doubles = {0.01, 0.1, 0.5, 1})
    void a_display_in_still_air_is_alive_all_day(double step) {
        digit = step;
        aliveWhile(86_400, 0);
    }

    @ParameterizedTest(name = "{0} % RH")
    @ValueSource(doubles = {0.1, 0.5, 1})
    void a_coarse_display_in_air_that_creeps_is_alive(double step) {
        digit = step;
        noise = 0.001;
        gain = 0.97;
        aliveWhile(28_800, 3 / 28_800.0);
        aliveWhile(28_800, -3 / 28_800.0);
    }

    @ParameterizedTest(name = "{0} % RH")
    @ValueSource(doubles = {0.1, 0.5, 1})
    void a_display_at_the_edge_of_its_step_may_keep_its_figures_over_nearly_a_step_and_take_them_again(double step) {
        digit = step;
        noise = 0.001;
        air = 50.2 - 0.49 * step; // shows 50.5 − a hair, and then nearly a step more
        aliveWhile(3600, 0);
        air += 0.97 * step;
        aliveWhile(3600, 0);
        air -= 0.97 * step;
        aliveWhile(3600, 0);
    }

    @ParameterizedTest(name = "{0} % RH, air moved by {1} % RH")
    @CsvSource({"0.01, 0.5", "0.1, 0.6", "0.5, 3", "1, 6"})
    void a_display_that_stuck_in_still_air_is_found_when_the_air_has_plainly_moved(double step, double percent) {
        digit = step;
        pass(1200, 0);
        air += 3 * step; // it has been seen to move
        pass(1200, 0);
        stick();
        air += percent;
        pass(1500, 0);
        assertTrue(display.frozen().orElseThrow() instanceof Display.Standing.WhileMoved);
    }

    @Test
    void a_display_that_stuck_on_its_way_is_found_within_minutes() {
        pass(1200, 0);
        air = 70;
        pass(20, 0);
        stick();
        pass(300, 0);
        assertTrue(display.frozen().orElseThrow().words("% RH").startsWith("unchanged since the air moved by "));
    }

    @Test
    void a_quick_display_that_has_arrived_is_alive_while_everything_else_still_arrives() {
        pass(1200, 0);
        sensorLag = 5;
        noise = 0.005;
        lags[0] = 60;
        lags[1] = 90;
        lags[2] = 120;
        air = 70;
        aliveWhile(3600, 0);
    }

    @Test
    void a_logger_that_answers_late_is_alive() {
        digit = 0.5;
        sensorLag = 800;
        noise = 0.01;
        pass(1200, 0);
        air = 53;
        aliveWhile(7200, 0);
        air = 49;
        aliveWhile(7200, 0);
        air = 90;
        aliveWhile(7200, 0);
    }

    @Test
    void a_display_that_is_renewed_every_six_minutes_is_doubted_once_at_most() {
        double kept = 50;
        int doubts = 0;
        for (int i = 1; i <= 12; i++) {
            air += 2;
            for (int k = 0; k < 36; k++) {
                stuck = Optional.of(kept);
                pass(POLL, 0);
                doubts += display.frozen().isPresent() && k == 35 ? 1 : 0;
            }
            kept = Math.rint(10 * sensor) / 10;
        }
        assertTrue(doubts <= 1, doubts + " times");
    }

    @Test
    void one_witness_that_moves_alone_proves_nothing() {
        digit = 0.5;
        aliveWhile(1200, 0);
        for (int i = 0; i < 360; i++) {
            told[1] = 60;
            pass(POLL, 0);
            assertEquals(Optional.empty(), display.frozen());
        }
    }

    @Test
    void a_display_that_never_stood_and_stands_is_frozen_until_it_moves() {
        digit = 0.01;
        pass(3000, 0);
        stick();
        pass(800, 0);
        assertTrue(display.frozen().orElseThrow() instanceof Display.Standing.Restless);
        stuck = Optional.empty();
        pass(20, 0);
        assertEquals(Optional.empty(), display.frozen());
    }

    @Test
    void a_display_between_two_figures_may_end_with_one_of_them() {
        digit = 0.5;
        air = 49.95;
        aliveWhile(7200, 0);
        air = 50.1;
        aliveWhile(7200, 0);
    }

    /** Sensors, chambers and witnesses as they may be anywhere: no display that answers is ever doubted. */
    @Test
    void no_display_that_answers_is_doubted_and_every_one_that_stuck_is_found_within_two_conditions() {
        System.out.println("seed " + SEED);
        int found = 0;
        for (int i = 0; i < 300; i++) {
            DisplayTest one = new DisplayTest();
            one.drawn(new SplittableRandom(SEED + i));
            for (int point = 0; point < 6; point++) {
                one.air = 10 + 80 * random.nextDouble();
                one.aliveWhile(900 + 1800 * random.nextDouble(), 1e-4 * (random.nextDouble() - 0.5));
            }
            one.stick();
            double moved = one.air < 50 ? 20 : -20;
            boolean known = false;
            for (int point = 0; point < 2; point++) { // one of them may by chance be what it stuck at on its way
                one.air += moved;
                one.pass(1800, 0);
                known |= one.display.frozen().isPresent();
            }
            found += known ? 1 : 0;
        }
        assertEquals(300, found);
    }

    private void drawn(SplittableRandom dice) {
        digit = new double[] {0.01, 0.1, 0.5, 1}[dice.nextInt(4)];
        sensorLag = 3 * Math.pow(200, dice.nextDouble());
        gain = 0.97 + 0.06 * dice.nextDouble();
        noise = 0.08 * dice.nextDouble();
        for (int k = 0; k < lags.length; k++) {
            lags[k] = 5 * Math.pow(30, dice.nextDouble());
        }
    }
}
