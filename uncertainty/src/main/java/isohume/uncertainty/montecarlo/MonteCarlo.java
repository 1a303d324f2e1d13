// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

import isohume.uncertainty.Budget;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Propagates distributions through a budget's model.
 *
 * <p>Source: JCGM 101:2008, 7 and, for the adaptive procedure, 7.9.4. Beyond the standard, at least ten blocks are run,
 * since two that agree by chance would otherwise end it. Each block has its own random stream, so the result depends on
 * the seed alone.
 */
public final class MonteCarlo {
    private static final int LEAST_BLOCK = 10_000;
    private static final int LEAST_BLOCKS = 10;
    private static final double MOST_REFUSED = 1e-3; // part of the trials the model may have no value for

    private final Budget budget;
    private final Settings settings;
    private final Sampler sampler;
    private final int blockSize;
    private final List<Block> blocks = new ArrayList<>();
    private final List<Interval> intervals = new ArrayList<>();

    private MonteCarlo(Budget budget, Settings settings) {
        this.budget = budget;
        this.settings = settings;
        this.sampler = Sampler.of(budget);
        double tail = 1 - budget.coverageProbability();
        this.blockSize = (int) Math.max(LEAST_BLOCK, Math.ceil(100 / tail));
    }

    /**
     * Runs until the result has settled or the most trials are done, and compares it with the budget.
     *
     * @throws IllegalArgumentException if the model has no finite value for more than one trial in a thousand
     */
    public static Propagation propagate(Budget budget, Settings settings) {
        MonteCarlo run = new MonteCarlo(budget, settings);
        boolean settled = run.runBlocks();
        return run.result(settled);
    }

    /** The numerical tolerance δ of a standard uncertainty to so many digits (JCGM 101, 7.9.2). */
    public static double tolerance(double standardUncertainty, int digits) {
        if (standardUncertainty == 0) {
            return 0;
        }
        BigDecimal rounded =
                BigDecimal.valueOf(standardUncertainty).round(new MathContext(digits, RoundingMode.HALF_UP));
        int exponent = rounded.precision() - rounded.scale() - digits; // of the last digit kept
        return BigDecimal.valueOf(5).scaleByPowerOfTen(exponent - 1).doubleValue();
    }

    private boolean runBlocks() {
        RandomStream source = RandomStream.seeded(settings.seed());
        int most = Math.max(1, settings.maximumTrials() / blockSize);
        while (blocks.size() < most) {
            int wave = Math.min(Math.max(settings.parallel(), LEAST_BLOCKS), most - blocks.size());
            List<RandomStream> streams = new ArrayList<>();
            for (int i = 0; i < wave; i++) {
                streams.add(source.fork());
            }
            for (Block block : run(streams)) {
                add(block);
                if (hasSettled()) {
                    return true; // further blocks of this wave are dropped: the result must not depend on the wave
                }
            }
        }
        return false;
    }

    /** Runs a block on each stream, in as many lanes side by side as the settings say. */
    private List<Block> run(List<RandomStream> streams) {
        Block[] wave = new Block[streams.size()];
        int lanes = Math.min(settings.parallel(), wave.length);
        IntStream each = IntStream.range(0, lanes);
        (lanes > 1 ? each.parallel() : each).forEach(lane -> {
            for (int i = lane; i < wave.length; i += lanes) {
                wave[i] = Block.run(budget, sampler, streams.get(i), blockSize);
            }
        });
        return List.of(wave);
    }

    private void add(Block block) {
        blocks.add(block);
        int refused = blocks.stream().mapToInt(Block::refused).sum();
        if (refused > MOST_REFUSED * blocks.size() * blockSize) {
            throw new IllegalArgumentException("the model of " + budget.measurand() + " has no value for " + refused
                    + " of " + blocks.size() * blockSize + " drawn trials; the inputs reach outside its range");
        }
        intervals.add(interval(block.ends()));
    }

    private Interval interval(Ends sorted) {
        return switch (settings.kind()) {
            case SYMMETRIC -> Interval.symmetric(sorted, budget.coverageProbability());
            case SHORTEST -> Interval.shortest(sorted, budget.coverageProbability());
        };
    }

    private boolean hasSettled() {
        if (blocks.size() < LEAST_BLOCKS) {
            return false;
        }
        double tolerance = tolerance() / settings.tightening();
        return 2 * spreadOfMean(blocks, Block::mean) <= tolerance
                && 2 * spreadOfMean(blocks, Block::standardDeviation) <= tolerance
                && 2 * spreadOfMean(intervals, Interval::low) <= tolerance
                && 2 * spreadOfMean(intervals, Interval::high) <= tolerance;
    }

    private static <T> double spreadOfMean(List<T> items, ToDoubleFunction<T> figure) {
        int n = items.size();
        double mean = 0;
        for (T item : items) {
            mean += figure.applyAsDouble(item) / n;
        }
        double squares = 0;
        for (T item : items) {
            double deviation = figure.applyAsDouble(item) - mean;
            squares += deviation * deviation;
        }
        return Math.sqrt(squares / n / (n - 1));
    }

    private int count() {
        return blocks.stream().mapToInt(Block::count).sum();
    }

    private double meanDeviation() {
        double sum = 0;
        for (Block block : blocks) {
            sum += block.sum();
        }
        return sum / count();
    }

    private double standardUncertainty() {
        double squares = 0;
        for (Block block : blocks) {
            squares += block.squares();
        }
        double mean = meanDeviation();
        int count = count();
        return Math.sqrt(Math.max(0, (squares - count * mean * mean) / (count - 1)));
    }

    /** A budget whose first order vanishes has no standard uncertainty to go by. */
    private double tolerance() {
        double found = standardUncertainty();
        double least = budget.combined() > 0 ? Math.min(found, budget.combined()) : found;
        return tolerance(least, settings.digits());
    }

    private Propagation result(boolean settled) {
        double mean = budget.value() + meanDeviation();
        double standardUncertainty = standardUncertainty();
        int refused = blocks.stream().mapToInt(Block::refused).sum();
        Ends all = Ends.of(blocks, budget.coverageProbability(), settings.parallel() > 1);
        return new Propagation(
                budget,
                settings,
                all.count(),
                refused,
                settled,
                mean,
                standardUncertainty,
                Interval.symmetric(all, budget.coverageProbability()),
                Interval.shortest(all, budget.coverageProbability()),
                tolerance());
    }
}
