// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.Phase;
import isohume.uncertainty.Budget;
import isohume.uncertainty.Distribution;
import isohume.uncertainty.Input;
import isohume.uncertainty.Model;
import isohume.uncertainty.Origin;
import isohume.uncertainty.montecarlo.MonteCarlo;
import isohume.uncertainty.montecarlo.Propagation;
import isohume.uncertainty.montecarlo.Settings;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The comparison of JCGM 101, clause 8, that goes with every result. */
class BothMethodsTest {
    private static Input line(String symbol, double estimate, Distribution distribution) {
        return Input.of(symbol, symbol, estimate, "", distribution, Origin.ASSUMED, "invented");
    }

    private static Budget temperature(Distribution reading, Distribution reference) {
        return TemperatureModel.budget("error", List.of(line("u_res", 23.1, reading), line("t_cal", 23, reference)));
    }

    /** A sum of normal inputs is normal: both methods have to give ±2 standard deviations. */
    @Test
    void normal_inputs_are_validated_and_the_budget_s_u_is_reported() {
        Budget budget = temperature(new Distribution.Normal(0.03), new Distribution.Normal(0.04));
        Propagation found = BothMethods.of(budget, "J-1", "1", "P-1/temperature");
        assertTrue(found.validatesBudget(), found.words());
        assertTrue(found.settled());
        assertEquals(0.1, found.expanded(), 1e-12);
        assertEquals(2, found.coverageFactor());
    }

    /** JCGM 101, 9.2.4: where one rectangular input dominates, the interval is shorter than y ± 2u. */
    @Test
    void a_dominating_rectangle_is_not_validated_and_the_monte_carlo_interval_is_reported() {
        Budget budget = temperature(new Distribution.Normal(0.01), new Distribution.Rectangular(0.15));
        Propagation found = BothMethods.of(budget, "J-1", "1", "P-1/temperature");
        assertFalse(found.validatesBudget(), found.words());
        assertTrue(found.expanded() < 0.97 * budget.expanded(), found.words());
        assertEquals(0.9545 * 0.15, found.expanded(), 0.003, "the middle 95.45 % of a rectangle, and a little noise");
        assertEquals(found.expanded() / budget.combined(), found.coverageFactor(), 1e-12);
        assertTrue(
                found.budget().value() - found.expanded() <= found.symmetric().low());
        assertTrue(
                found.budget().value() + found.expanded() >= found.symmetric().high());
    }

    /** A t of one degree of freedom has no standard deviation; the tolerance must not grow with what its draws give. */
    @Test
    void readings_of_hardly_any_freedom_do_not_validate_what_they_cannot() {
        Distribution scarce = new Distribution.MeanOfReadings(0.05, 2);
        Propagation found = BothMethods.of(temperature(scarce, new Distribution.Normal(0.2)), "a", "b");
        assertFalse(found.settled());
        assertTrue(found.tolerance() <= 0.05, found.words());
        assertTrue(found.expanded() > found.budget().expanded(), found.words());
    }

    @Test
    void the_seed_belongs_to_the_result_alone_and_fits_into_a_number_of_json() {
        assertEquals(BothMethods.seed("J-1", "1", "P-1/temperature"), BothMethods.seed("J-1", "1", "P-1/temperature"));
        assertNotEquals(
                BothMethods.seed("J-1", "1", "P-1/temperature"), BothMethods.seed("J-1", "2", "P-1/temperature"));
        assertNotEquals(BothMethods.seed("J-1", "11", "P"), BothMethods.seed("J-11", "1", "P"));
        for (int i = 0; i < 1000; i++) {
            long seed = BothMethods.seed("J", String.valueOf(i));
            assertTrue(seed >= 0 && seed < 1L << 53, "seed " + seed);
        }
        // FNV-1a of 64 bits of "a": draft-eastlake-fnv, appendix C
        assertEquals(0xaf63dc4c8601ec8cL >>> 11, BothMethods.seed("a"));
    }

    @Test
    void the_number_of_threads_changes_nothing() {
        Budget budget = humidity(Phase.WATER, 12);
        Propagation two = BothMethods.of(budget, "J-1", "1", "P-1/relative_humidity");
        Propagation one = MonteCarlo.propagate(budget, two.settings().inParallel(1));
        Propagation seven = MonteCarlo.propagate(budget, two.settings().inParallel(7));
        for (Propagation other : List.of(one, seven)) {
            assertEquals(two.found(), other.found());
            assertEquals(two.standardUncertainty(), other.standardUncertainty());
            assertEquals(two.trials(), other.trials());
        }
    }

    @Test
    void many_trials_at_once_give_the_bits_of_each_alone() {
        long seed = 20_260_302;
        for (Phase deposit : Phase.values()) {
            Model model = humidity(deposit, deposit == Phase.ICE ? -12 : 12).model();
            assertSameBits(model, 6, new double[] {50, deposit == Phase.ICE ? -12 : 12, 23, 0, 0, 0}, seed);
        }
        Model difference = temperature(new Distribution.Normal(1), new Distribution.Normal(1))
                .model();
        assertSameBits(difference, 2, new double[] {23.1, 23}, seed);
    }

    /** A frost point above 0 °C has no value, alone as among others. */
    @Test
    void a_trial_outside_a_formula_s_range_is_none_and_spoils_no_other() {
        Model model = humidity(Phase.ICE, -0.01).model();
        double[][] inputs = {{50, 50, 50}, {-1, 1, -1}, {23, 23, 23}, {0, 0, 0}, {0, 0, 0}, {0, 0, 0}};
        double[] found = new double[3];
        model.ofEach(inputs, 3, found);
        assertTrue(Double.isNaN(found[1]));
        assertEquals(model.of(new double[] {50, -1, 23, 0, 0, 0}), found[0]);
        assertEquals(found[0], found[2]);
    }

    private static void assertSameBits(Model model, int inputs, double[] middle, long seed) {
        Random random = new Random(seed);
        int trials = 700;
        double[][] columns = new double[inputs][trials + 3]; // longer than needed, as Model allows
        for (int i = 0; i < inputs; i++) {
            for (int k = 0; k < trials; k++) {
                columns[i][k] = middle[i] + 0.001 * random.nextGaussian();
            }
        }
        double[] together = new double[trials];
        model.ofEach(columns, trials, together);
        double[] alone = new double[trials];
        Arrays.setAll(
                alone,
                k -> model.of(
                        Arrays.stream(columns).mapToDouble(column -> column[k]).toArray()));
        assertArrayEquals(alone, together, "seed " + seed);
    }

    private static Budget humidity(Phase deposit, double dewPoint) {
        HumidityModel model = new HumidityModel(MoistAir.by(Formulation.SONNTAG_1990), deposit, 101_325);
        return model.budget(
                "error",
                List.of(
                        line("u_res", 50, new Distribution.Rectangular(0.05)),
                        line("d_cal", dewPoint, new Distribution.Expanded(0.005, 2)),
                        line("t_cal", 23, new Distribution.Expanded(0.06, 2)),
                        line("dp_mc", 0, new Distribution.Rectangular(50)),
                        line("e_eq", 0, new Distribution.Normal(5e-5)),
                        line("f_eq", 0, new Distribution.Normal(1e-4))));
    }

    /** Fifteen points of three instruments with two quantities each take a part of a second, and of it most is warming up. */
    @Test
    void ninety_results_take_little_time() {
        Budget budget = humidity(Phase.WATER, 12);
        Settings settings = BothMethods.of(budget, "warm").settings();
        long before = System.nanoTime();
        int trials = 0;
        for (int i = 0; i < 90; i++) {
            trials += BothMethods.of(budget, "result", String.valueOf(i)).trials();
        }
        double seconds = (System.nanoTime() - before) / 1e9;
        System.out.println(
                "90 comparisons, " + trials + " trials, " + settings.parallel() + " lanes: " + seconds + " s");
        assertTrue(
                seconds < 30, "took " + seconds + " s"); // an order of magnitude beyond what it takes when all is well
    }
}
