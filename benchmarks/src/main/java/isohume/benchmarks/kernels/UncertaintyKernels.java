// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.kernels;

import isohume.benchmarks.HumidityBudget;
import isohume.uncertainty.Budget;
import isohume.uncertainty.fit.ExponentialApproach;
import isohume.uncertainty.montecarlo.MonteCarlo;
import isohume.uncertainty.montecarlo.Propagation;
import isohume.uncertainty.montecarlo.Settings;
import isohume.uncertainty.series.Series;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** What a point of a calibration costs to evaluate: fourteen inputs, 600 readings of each channel. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class UncertaintyKernels {
    private static final int READINGS = 600;
    private static final int TRIALS = 100_000;

    private final Budget budget = HumidityBudget.evaluate();
    private final double[] seconds = new double[READINGS];
    private final double[] readings = new double[READINGS];
    private long seed;

    public UncertaintyKernels() {
        Random random = new Random(20);
        for (int i = 0; i < READINGS; i++) {
            seconds[i] = i;
            readings[i] = 50 - 3 * Math.exp(-i / 120.0) + 0.02 * random.nextGaussian();
        }
    }

    @Benchmark
    public Budget budgetOfFourteenInputs() {
        return HumidityBudget.evaluate();
    }

    @Benchmark
    public Propagation monteCarloOfHundredThousandTrials() {
        seed++;
        return MonteCarlo.propagate(budget, new Settings(seed, 2, 1e9, TRIALS, 1, Settings.Kind.SYMMETRIC));
    }

    @Benchmark
    public double effectiveNumberOfSixHundredReadings() {
        return Series.of(seconds, readings).effectiveNumber();
    }

    @Benchmark
    public ExponentialApproach approachOfSixHundredReadings() {
        return ExponentialApproach.single(seconds, readings);
    }
}
