// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.uncertainty.Budget;
import isohume.uncertainty.Correlations;
import isohume.uncertainty.Coverage;
import isohume.uncertainty.Distribution;
import isohume.uncertainty.Input;
import isohume.uncertainty.Origin;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MonteCarloTest {
    private static final int INPUTS = 14;

    static Budget fourteenInputs() {
        List<Input> inputs = new ArrayList<>();
        for (int i = 0; i < INPUTS; i++) {
            Distribution distribution = i % 2 == 0 ? new Distribution.Normal(0.1) : new Distribution.Rectangular(0.2);
            double freedom = i == 0 ? 9 : Double.POSITIVE_INFINITY;
            inputs.add(new Input("x" + i, "x" + i, 1, "1", distribution, freedom, Origin.ASSUMED, "test"));
        }
        return Budget.of(
                "y", "1", inputs, MonteCarloTest::product, Correlations.between("x2", "x4", 0.5), Coverage.TWO_SIGMA);
    }

    private static double product(double[] x) {
        double sum = 0;
        for (double value : x) {
            sum += value;
        }
        return sum * StrictMath.exp(0.01 * x[0]);
    }

    @Test
    void a_seed_gives_the_same_figures_with_any_number_of_threads() {
        Budget budget = fourteenInputs();
        Settings settings = new Settings(42, 2, 1, 300_000, 1, Settings.Kind.SYMMETRIC);
        Propagation one = MonteCarlo.propagate(budget, settings);
        for (int threads : new int[] {2, 3, 8}) {
            Propagation more = MonteCarlo.propagate(budget, settings.inParallel(threads));
            assertEquals(one.trials(), more.trials());
            assertEquals(one.value(), more.value(), 0.0);
            assertEquals(one.standardUncertainty(), more.standardUncertainty(), 0.0);
            assertEquals(one.symmetric(), more.symmetric());
            assertEquals(one.shortest(), more.shortest());
        }
        Propagation other = MonteCarlo.propagate(budget, new Settings(43, 2, 1, 300_000, 1, Settings.Kind.SYMMETRIC));
        assertTrue(one.value() != other.value(), "another seed is another run");
    }

    /** Runs in a virtual machine of its own with a 64 MB heap; prints what it took. */
    @Test
    void a_million_trials_of_fourteen_inputs_fit_into_64_megabytes() throws Exception {
        String classPath = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Process process = new ProcessBuilder(
                        System.getProperty("java.home") + "/bin/java",
                        "-Xmx64m",
                        "-cp",
                        classPath,
                        MillionTrials.class.getName())
                .redirectErrorStream(true)
                .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        System.out.print(output);
        assertEquals(0, process.waitFor(), output);
        assertTrue(output.contains("1000000 trials"), output);
    }

    @Test
    void a_model_without_values_where_the_inputs_reach_is_refused() {
        Input input = new Input(
                "x", "x", 1, "1", new Distribution.Normal(0.4), Double.POSITIVE_INFINITY, Origin.ASSUMED, "test");
        Budget budget = Budget.of("y", "1", List.of(input), x -> Math.sqrt(x[0]));
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class, () -> MonteCarlo.propagate(budget, Settings.validating(1)));
        assertTrue(refusal.toString().contains("outside its range"), refusal.toString());
    }

    @Test
    void a_constant_settles_at_once() {
        Input input = new Input(
                "x", "x", 1, "1", new Distribution.Normal(0), Double.POSITIVE_INFINITY, Origin.ASSUMED, "test");
        Propagation found =
                MonteCarlo.propagate(Budget.of("y", "1", List.of(input), x -> x[0]), Settings.validating(1));
        assertTrue(found.settled());
        assertEquals(new Interval(1, 1), found.reported());
    }
}
