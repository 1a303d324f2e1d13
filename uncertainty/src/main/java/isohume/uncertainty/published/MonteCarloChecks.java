// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.published;

import isohume.uncertainty.Budget;
import isohume.uncertainty.Correlations;
import isohume.uncertainty.Distribution;
import isohume.uncertainty.Input;
import isohume.uncertainty.Model;
import isohume.uncertainty.PublishedCheck;
import isohume.uncertainty.montecarlo.MonteCarlo;
import isohume.uncertainty.montecarlo.Propagation;
import isohume.uncertainty.montecarlo.Settings;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;

/** Examples of JCGM 101:2008; limits are the numerical tolerances of its clause 7.9.2, since printed ends scatter. */
final class MonteCarloChecks {
    private static final long SEED = 101_2008;
    private static final int SEEDS = 16;
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    private MonteCarloChecks() {}

    static List<PublishedCheck> all() {
        double unit = Math.sqrt(3);
        return List.of(
                check(
                        "9.2.2 four normals, upper end",
                        "table 2",
                        3.92,
                        "1",
                        0.05,
                        () -> sumOfFour(new Distribution.Normal(1), new Distribution.Normal(1))),
                check(
                        "9.2.3 four rectangulars, upper end",
                        "table 3",
                        3.88,
                        "1",
                        0.05,
                        () -> sumOfFour(new Distribution.Rectangular(unit), new Distribution.Rectangular(unit))),
                check(
                        "9.2.4 a dominating rectangular, upper end",
                        "table 4",
                        17.0,
                        "1",
                        0.5,
                        () -> sumOfFour(new Distribution.Rectangular(unit), new Distribution.Rectangular(10 * unit))),
                check("9.3 mass calibration, u", "table 6", 0.0754, "mg", 0.0005, () -> mass().standardUncertainty()),
                check(
                        "9.5 gauge block, value",
                        "table 11",
                        838,
                        "nm",
                        0.5,
                        () -> gaugeBlock().value()),
                check(
                        "9.5 gauge block, u",
                        "table 11",
                        36,
                        "nm",
                        0.5,
                        () -> gaugeBlock().standardUncertainty()),
                check(
                        "9.5 gauge block, length of the interval for 99 % from 745 to 932",
                        "table 11", 187, "nm", 1, () -> gaugeBlock().shortest().width()),
                check(
                        "9.5 gauge block, lower end for 99 %, mean of " + SEEDS + " seeds",
                        "table 11",
                        745,
                        "nm",
                        1,
                        () -> overSeeds(end -> end.shortest().low())),
                check(
                        "9.5 gauge block, upper end for 99 %, mean of " + SEEDS + " seeds",
                        "table 11",
                        932,
                        "nm",
                        1,
                        () -> overSeeds(end -> end.shortest().high())));
    }

    private static PublishedCheck check(
            String name, String place, double expected, String unit, double limit, DoubleSupplier found) {
        return new PublishedCheck(name, "JCGM 101:2008, " + place, expected, unit, limit, found);
    }

    private static double sumOfFour(Distribution first, Distribution last) {
        List<Input> inputs = List.of(
                GumChecks.input("X1", 0, first, INFINITE),
                GumChecks.input("X2", 0, first, INFINITE),
                GumChecks.input("X3", 0, first, INFINITE),
                GumChecks.input("X4", 0, last, INFINITE));
        Model sum = x -> x[0] + x[1] + x[2] + x[3];
        return run(Budget.of("Y", "1", inputs, sum, Correlations.none(), 0.95))
                .symmetric()
                .high();
    }

    private static Propagation mass() {
        List<Input> inputs = List.of(
                GumChecks.input("m_R,c", 100_000, new Distribution.Normal(0.050), INFINITE),
                GumChecks.input("dm_R,c", 1.234, new Distribution.Normal(0.020), INFINITE),
                GumChecks.input("rho_a", 1.20, new Distribution.Rectangular(0.10), INFINITE),
                GumChecks.input("rho_W", 8000, new Distribution.Rectangular(1000), INFINITE),
                GumChecks.input("rho_R", 8000, new Distribution.Rectangular(50), INFINITE));
        Model deviation = x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000;
        return run(Budget.of("dm", "mg", inputs, deviation, Correlations.none(), 0.95));
    }

    /** Where a shortest interval lies scatters by nearly a nanometre from seed to seed; its mean does not. */
    private static double overSeeds(ToDoubleFunction<Propagation> end) {
        return LongStream.range(SEED, SEED + SEEDS)
                .mapToDouble(seed -> end.applyAsDouble(gaugeBlock(seed)))
                .average()
                .orElseThrow();
    }

    private static Propagation gaugeBlock() {
        return gaugeBlock(SEED);
    }

    private static Propagation gaugeBlock(long seed) {
        List<Input> inputs = List.of(
                GumChecks.input("L_s", 50_000_623, new Distribution.StudentT(25, 18), 18),
                GumChecks.input("D", 215, new Distribution.StudentT(6, 24), 24),
                GumChecks.input("d_1", 0, new Distribution.StudentT(4, 5), 5),
                GumChecks.input("d_2", 0, new Distribution.StudentT(7, 8), 8),
                GumChecks.input("alpha_s", 11.5e-6, new Distribution.Rectangular(2e-6), INFINITE),
                GumChecks.input("theta_0", -0.1, new Distribution.Normal(0.2), INFINITE),
                GumChecks.input("Delta", 0, new Distribution.UShaped(0.5), INFINITE),
                GumChecks.input("dalpha", 0, new Distribution.InexactLimits(1e-6, 0.1e-6), INFINITE),
                GumChecks.input("dtheta", 0, new Distribution.InexactLimits(0.050, 0.025), INFINITE));
        Model length = x -> x[0] + x[1] + x[2] + x[3] - x[0] * (x[7] * (x[5] + x[6]) + x[4] * x[8]) - 50_000_000;
        return run(Budget.of("dL", "nm", inputs, length, Correlations.none(), 0.99), seed);
    }

    private static Propagation run(Budget budget) {
        return run(budget, SEED);
    }

    private static Propagation run(Budget budget, long seed) {
        return MonteCarlo.propagate(budget, new Settings(seed, 2, 1, 500_000, 2, Settings.Kind.SHORTEST));
    }
}
