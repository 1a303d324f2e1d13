// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.published;

import isohume.uncertainty.PublishedCheck;
import isohume.uncertainty.comparison.Consensus;
import isohume.uncertainty.fit.ExponentialApproach;
import isohume.uncertainty.fit.StraightLine;
import isohume.uncertainty.series.AllanDeviation;
import isohume.uncertainty.series.MannKendall;
import isohume.uncertainty.series.Series;
import java.util.ArrayList;
import java.util.List;

/** Published statistics of series, lines, curves and groups of results. */
final class StatisticsChecks {
    private static final String ISO = "ISO/TS 28037:2010, p. 21, values as in a public test suite";
    private static final String SP1065 = "NIST SP 1065, p. 107, values as in a public test suite";
    private static final double[] FREQUENCIES = {892, 809, 823, 798, 671, 644, 883, 903, 677};
    private static final double[] BY_HAND = {
        12.9, 14.8, 13.2, 15.7, 13.8, 15.6, 12.9, 11.0, 17.3, 15.9, 19.0, 18.3, 20.1, 21.7
    };

    private StatisticsChecks() {}

    static List<PublishedCheck> all() {
        List<PublishedCheck> checks = new ArrayList<>(lines());
        checks.addAll(curves());
        checks.addAll(series());
        return checks;
    }

    private static List<PublishedCheck> lines() {
        return List.of(
                new PublishedCheck(
                        "errors in both axes, intercept",
                        ISO,
                        0.5788,
                        "1",
                        0.00005,
                        () -> line().intercept().value()),
                new PublishedCheck("errors in both axes, slope", ISO, 2.1597, "1", 0.00005, () -> line().slope()),
                new PublishedCheck(
                        "errors in both axes, u of the slope",
                        ISO,
                        0.1355,
                        "1",
                        0.00005,
                        () -> line().slopeUncertainty()),
                new PublishedCheck(
                        "errors in both axes, chi-squared", ISO, 2.743, "1", 0.0005, () -> line().chiSquared()));
    }

    private static StraightLine line() {
        return StraightLine.errorsInBothAxes(
                new double[] {1.2, 1.9, 2.9, 4.0, 4.7, 5.9},
                new double[] {0.2, 0.2, 0.2, 0.2, 0.2, 0.2},
                new double[] {3.4, 4.4, 7.2, 8.5, 10.8, 13.5},
                new double[] {0.2, 0.2, 0.2, 0.4, 0.4, 0.4});
    }

    private static List<PublishedCheck> curves() {
        return List.of(
                new PublishedCheck(
                        "BoxBOD, steady value, to six digits",
                        "NIST StRD",
                        213.80940889,
                        "1",
                        1e-4,
                        () -> boxBod().steadyValue().value()),
                new PublishedCheck(
                        "BoxBOD, rate, to six digits",
                        "NIST StRD",
                        0.54723748542,
                        "1",
                        3e-7,
                        () -> 1 / boxBod().terms().getFirst().timeConstant().value()));
    }

    private static ExponentialApproach boxBod() {
        return ExponentialApproach.fromKnownStart(
                0, new double[] {1, 2, 3, 5, 7, 10}, new double[] {109, 149, 149, 191, 213, 224});
    }

    private static List<PublishedCheck> series() {
        return List.of(
                new PublishedCheck(
                        "NumAcc1, standard deviation",
                        "NIST StRD",
                        1,
                        "1",
                        1e-9,
                        () -> Series.evenly(1, 10000001, 10000003, 10000002).standardDeviation()),
                new PublishedCheck(
                        "NumAcc1, lag-1 autocorrelation",
                        "NIST StRD",
                        -0.5,
                        "1",
                        1e-9,
                        () -> Series.evenly(1, 10000001, 10000003, 10000002).lagOneAutocorrelation()),
                new PublishedCheck(
                        "Allan deviation of adjacent pairs",
                        SP1065,
                        115.8082,
                        "1",
                        0.00005,
                        () -> AllanDeviation.adjacent(FREQUENCIES, 2)),
                new PublishedCheck(
                        "Allan deviation, overlapping",
                        SP1065,
                        85.95287,
                        "1",
                        0.000005,
                        () -> AllanDeviation.overlapping(FREQUENCIES, 2)),
                new PublishedCheck(
                        "Mann-Kendall, Z with a tie",
                        "College of the Holy Cross, A Mann-Kendall Example (By Hand)",
                        2.9058,
                        "1",
                        0.00005,
                        StatisticsChecks::trend),
                new PublishedCheck(
                        "Mandel-Paule, mean of six trials",
                        "DerSimonian and Kacker, Contemp. Clin. Trials 28 (2007) 105",
                        -0.3811,
                        "1",
                        0.00005,
                        () -> trials().value()));
    }

    private static double trend() {
        double[] times = new double[BY_HAND.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = i;
        }
        return MannKendall.of(times, BY_HAND).z();
    }

    private static Consensus trials() {
        return Consensus.mandelPaule(
                new double[] {
                    -1.29762872403, -1.26487710731, 0.120792366847, -0.329377388705, -0.200670695462, -0.128534068672
                },
                new double[] {
                    0.588875225925, 0.51543742356, 0.445409378937, 0.16271780378, 0.47254290574, 0.0806136481426
                });
    }
}
