// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.published;

import isohume.uncertainty.Budget;
import isohume.uncertainty.Correlations;
import isohume.uncertainty.Coverage;
import isohume.uncertainty.Distribution;
import isohume.uncertainty.Input;
import isohume.uncertainty.Model;
import isohume.uncertainty.Origin;
import isohume.uncertainty.PublishedCheck;
import isohume.uncertainty.comparison.OneWayVariance;
import isohume.uncertainty.fit.StraightLine;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/** Worked examples of JCGM 100:2008, annex H, and its table G.2. */
final class GumChecks {
    private static final double[] H3_TEMPERATURES = {
        21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
    };
    private static final double[] H3_CORRECTIONS = {
        -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
    };
    private static final double[] H5_MEANS = {172, 116, 13, 144, 106, 31, 60, 125, 163, 41}; // µV above 10 V
    private static final double[] H5_DEVIATIONS = {60, 77, 111, 101, 67, 93, 80, 73, 88, 86};

    private GumChecks() {}

    static List<PublishedCheck> all() {
        List<PublishedCheck> checks = new ArrayList<>(gaugeBlock());
        checks.addAll(impedance());
        checks.addAll(thermometer());
        checks.add(check(
                "H.5 ratio of variances; print has 2.25 from rounded figures",
                "H.5.2.4",
                2.26,
                "1",
                0.005,
                () -> voltageStandard().f()));
        checks.add(check(
                "t for 95 % and 10 degrees of freedom",
                "table G.2", 2.23, "1", 0.005, () -> Coverage.factor(0.95, 10)));
        checks.add(check(
                "t for 95.45 % and 10 degrees of freedom",
                "table G.2", 2.28, "1", 0.005, () -> Coverage.factor(Coverage.TWO_SIGMA, 10)));
        return checks;
    }

    private static List<PublishedCheck> gaugeBlock() {
        return List.of(
                check("H.1 gauge block, u_c", "H.1.4", 32, "nm", 0.5, () -> block().combined()),
                check(
                        "H.1 gauge block, degrees of freedom",
                        "H.1.6",
                        16.7,
                        "1",
                        0.05,
                        () -> block().effectiveDegreesOfFreedom()),
                check(
                        "H.1 gauge block, U for 99 %; print multiplies rounded figures",
                        "H.1.6", 93, "nm", 0.6, () -> block().expanded()));
    }

    private static Budget block() {
        double infinite = Double.POSITIVE_INFINITY;
        List<Input> inputs = List.of(
                input("l_S", 50_000_623, new Distribution.Expanded(75, 3), 18),
                input("d", 215, new Distribution.Normal(13 / Math.sqrt(5)), 24),
                input("d_1", 0, new Distribution.Expanded(10, 2.57), 5),
                input("d_2", 0, new Distribution.Expanded(20, 3), 8),
                input("alpha_S", 11.5e-6, new Distribution.Rectangular(2e-6), infinite),
                input("theta", -0.1, new Distribution.Normal(0.2), infinite),
                input("Delta", 0, new Distribution.UShaped(0.5), infinite),
                input("dalpha", 0, new Distribution.Rectangular(1e-6), 50),
                input("dtheta", 0, new Distribution.Rectangular(0.05), 2));
        Model length = x -> x[0] + x[1] + x[2] + x[3] - x[0] * (x[7] * (x[5] + x[6]) + x[4] * x[8]);
        return Budget.of("length", "nm", inputs, length, Correlations.none(), 0.99);
    }

    private static List<PublishedCheck> impedance() {
        return List.of(
                check(
                        "H.2 resistance, u_c with correlated inputs",
                        "table H.3",
                        0.071,
                        "ohm",
                        0.0005,
                        () -> impedance(x -> x[0] / x[1] * StrictMath.cos(x[2])).combined()),
                check(
                        "H.2 reactance, u_c; print is 0.0006 low",
                        "table H.3",
                        0.295,
                        "ohm",
                        0.001,
                        () -> impedance(x -> x[0] / x[1] * StrictMath.sin(x[2])).combined()),
                check(
                        "H.2 impedance, u_c",
                        "table H.3",
                        0.236,
                        "ohm",
                        0.0005,
                        () -> impedance(x -> x[0] / x[1]).combined()));
    }

    /** Means, standard deviations and correlations unrounded from the five sets of table H.2. */
    private static Budget impedance(Model model) {
        List<Input> inputs = List.of(
                input("V", 4.9990, new Distribution.Normal(0.003209361307), 4),
                input("I", 0.0196610, new Distribution.Normal(0.009471008394e-3), 4),
                input("phi", 1.04446, new Distribution.Normal(0.0007520638271), 4));
        Correlations correlations = Correlations.between("V", "I", -0.3553112198)
                .and("V", "phi", 0.8576242108)
                .and("I", "phi", -0.6451112177);
        return Budget.of("impedance", "ohm", inputs, model, correlations, Coverage.TWO_SIGMA);
    }

    private static List<PublishedCheck> thermometer() {
        return List.of(
                check(
                        "H.3 intercept",
                        "H.3.3",
                        -0.1712,
                        "°C",
                        0.00005,
                        () -> line().intercept().value()),
                check(
                        "H.3 its uncertainty",
                        "H.3.3",
                        0.0029,
                        "°C",
                        0.00005,
                        () -> line().intercept().standardUncertainty()),
                check("H.3 slope", "H.3.3", 0.00218, "1", 0.000005, () -> line().slope()),
                check("H.3 correlation", "H.3.3", -0.930, "1", 0.0005, () -> line().correlation()),
                check(
                        "H.3 correction at 30 °C",
                        "H.3.4",
                        -0.1494,
                        "°C",
                        0.00005,
                        () -> line().at(10).value()),
                check(
                        "H.3 its uncertainty at 30 °C",
                        "H.3.4",
                        0.0041,
                        "°C",
                        0.00005,
                        () -> line().at(10).standardUncertainty()));
    }

    private static StraightLine line() {
        double[] fromTwenty = new double[H3_TEMPERATURES.length];
        for (int i = 0; i < fromTwenty.length; i++) {
            fromTwenty[i] = H3_TEMPERATURES[i] - 20;
        }
        return StraightLine.unweighted(fromTwenty, H3_CORRECTIONS);
    }

    /** Only means and standard deviations are printed; five readings with just those stand in for each day. */
    private static OneWayVariance voltageStandard() {
        List<double[]> days = new ArrayList<>();
        for (int i = 0; i < H5_MEANS.length; i++) {
            double mean = H5_MEANS[i];
            double s = H5_DEVIATIONS[i];
            days.add(new double[] {mean - s, mean - s, mean, mean + s, mean + s});
        }
        return OneWayVariance.of(days);
    }

    static Input input(String symbol, double estimate, Distribution distribution, double degreesOfFreedom) {
        return new Input(
                symbol, symbol, estimate, "", distribution, degreesOfFreedom, Origin.CERTIFICATE, "as published");
    }

    private static PublishedCheck check(
            String name, String place, double expected, String unit, double limit, DoubleSupplier found) {
        return new PublishedCheck(name, "JCGM 100:2008, " + place, expected, unit, limit, found);
    }
}
