// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The likelihood of offset, lags and drift on a grid about the likely ones, averaged over lags and drift. σ is not known
 * either, so the likelihood is the mean square left over to the power of minus half the independent readings (the
 * marginal one for a flat prior of ln σ). The grid is drawn closer about what is likely, several times.
 */
final class Likelihood {
    private static final double LEAST_LAG = 5;
    private static final double MOST_LAG = 2880;

    /** How late the reference itself may be, in seconds: a mirror with its line, a thermometer in air (common practice). */
    private static final double MOST_LATE = 120;

    private static final double COUNTS = 16; // what is less likely than this, in Δχ², adds nothing
    private static final int CLOSER = 4;
    private static final int OFFSETS = 48;
    private static final int LAGS = 8;
    private static final int FIRST_LAGS = 16;
    private static final int LATES = 4;
    private static final int DRIFTS = 4;

    private final List<Cell> cells;

    /** One place of the grid. A lag may be one of first order or two equal ones after another. */
    private record Cell(double offset, double logLag, int stages, double late, double drift, double unlikely) {}

    /** Where the grid reaches. */
    private static final class Reach {
        private final double[] offsets;
        private final double[] logLags;
        private final double[] lates;
        private final double[] drifts;

        Reach(double[] offsets, double[] logLags, double[] lates, double[] drifts) {
            this.offsets = offsets;
            this.logLags = logLags;
            this.lates = lates;
            this.drifts = drifts;
        }
    }

    private Likelihood(List<Cell> cells) {
        this.cells = cells;
    }

    static Likelihood of(Scan scan, Replay replay, TimedValues logger) {
        Fit fit = Fit.creeping(logger, replay);
        int[] ends = partnered(scan, replay, logger);
        Reach reach = new Reach(
                even(scan.lowest(), scan.highest(), OFFSETS),
                even(Math.log(LEAST_LAG), Math.log(MOST_LAG), FIRST_LAGS),
                even(0, MOST_LATE, LATES),
                even(-Scan.MOST_DRIFT, Scan.MOST_DRIFT, DRIFTS));
        double worth = scan.worth();
        List<Cell> cells = List.of();
        for (int round = CLOSER; round >= 0; round--) {
            cells = grid(reach, replay, fit, ends, worth, COUNTS * (1 << round));
            Cell best = cells.stream()
                    .min(Comparator.comparingDouble(Cell::unlikely))
                    .orElseThrow();
            Replay shown = replay(replay, best);
            worth = fit.worth(shown, best.offset, best.drift)
                    / fit.excess(shown, best.offset, best.drift, ends[0], ends[1]);
            reach = round == 0 ? reach : closer(reach, cells);
        }
        return new Likelihood(cells);
    }

    /** The readings that have a partner at every likely offset, so that all offsets are judged by the same ones. */
    private static int[] partnered(Scan scan, Replay replay, TimedValues logger) {
        int from = 0;
        int to = logger.size();
        while (from < to && !both(scan, replay, logger.seconds(from))) {
            from++;
        }
        while (to > from && !both(scan, replay, logger.seconds(to - 1))) {
            to--;
        }
        return new int[] {from, to};
    }

    private static boolean both(Scan scan, Replay replay, double seconds) {
        return !Double.isNaN(replay.at(seconds - scan.lowest())) && !Double.isNaN(replay.at(seconds - scan.highest()));
    }

    private static double[] even(double low, double high, int steps) {
        double[] even = new double[steps + 1];
        Arrays.setAll(even, i -> low + (high - low) * i / steps);
        return even;
    }

    private static Replay replay(Replay replay, Cell cell) {
        double lag = Math.exp(cell.logLag);
        Replay lagging = replay.lagging(lag, cell.stages);
        return cell.stages == 1 ? replay.beside(lagging, cell.late / lag) : lagging;
    }

    private static List<Cell> grid(Reach reach, Replay replay, Fit fit, int[] ends, double worth, double counts) {
        List<Cell> cells = new ArrayList<>();
        for (double logLag : reach.logLags) {
            double lag = Math.exp(logLag);
            Replay lagging = replay.lagging(lag, 1);
            for (double late : reach.lates) {
                fill(
                        reach,
                        replay.beside(lagging, late / lag),
                        new Cell(0, logLag, 1, late, 0, 0),
                        fit,
                        ends,
                        worth,
                        cells);
            }
            fill(reach, replay.lagging(lag, 2), new Cell(0, logLag, 2, 0, 0, 0), fit, ends, worth, cells);
        }
        double least = cells.stream().mapToDouble(Cell::unlikely).min().orElse(0);
        return cells.stream()
                .filter(c -> c.unlikely - least <= counts)
                .map(c -> new Cell(c.offset, c.logLag, c.stages, c.late, c.drift, c.unlikely - least))
                .toList();
    }

    private static void fill(Reach reach, Replay shown, Cell at, Fit fit, int[] ends, double worth, List<Cell> into) {
        for (double drift : reach.drifts) {
            for (double offset : reach.offsets) {
                double unlikely =
                        worth * (ends[1] - ends[0]) * Math.log(fit.leftOver(shown, offset, drift, ends[0], ends[1]));
                into.add(new Cell(offset, at.logLag, at.stages, at.late, drift, unlikely));
            }
        }
    }

    private static Reach closer(Reach before, List<Cell> cells) {
        return new Reach(
                about(before.offsets, cells, Cell::offset, OFFSETS, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY),
                about(before.logLags, cells, Cell::logLag, LAGS, Math.log(LEAST_LAG), Math.log(MOST_LAG)),
                about(before.lates, cells, Cell::late, LATES, 0, MOST_LATE),
                about(before.drifts, cells, Cell::drift, DRIFTS, -Scan.MOST_DRIFT, Scan.MOST_DRIFT));
    }

    /** A grid over what is likely and one step of the old grid on each side. */
    private static double[] about(
            double[] before, List<Cell> cells, ToDoubleFunction<Cell> part, int steps, double least, double most) {
        double step = before[1] - before[0];
        double low = cells.stream().mapToDouble(part).min().orElse(0) - step;
        double high = cells.stream().mapToDouble(part).max().orElse(0) + step;
        return even(Math.max(least, low), Math.min(most, high), steps);
    }

    private double weight(Cell cell) {
        return Math.exp(-cell.unlikely / 2);
    }

    private double total() {
        return cells.stream().mapToDouble(this::weight).sum();
    }

    private double mean(ToDoubleFunction<Cell> part) {
        return cells.stream()
                        .mapToDouble(c -> part.applyAsDouble(c) * weight(c))
                        .sum()
                / total();
    }

    double offset() {
        return mean(Cell::offset);
    }

    /** The logger's lag and the reference's together, in seconds. */
    double lag() {
        return mean(c -> Math.exp(c.logLag) + c.late);
    }

    double drift() {
        return mean(Cell::drift);
    }

    double driftExpanded() {
        double drift = drift();
        return Math.min(2 * Math.sqrt(mean(c -> (c.drift - drift) * (c.drift - drift))), Scan.MOST_DRIFT);
    }

    /** Half the width of an interval about the mean that has 95 % of the likelihood. */
    double expanded() {
        double mean = offset();
        List<Cell> near = cells.stream()
                .sorted(Comparator.comparingDouble(c -> Math.abs(c.offset - mean)))
                .toList();
        double wanted = 0.95 * total();
        double sum = 0;
        for (Cell cell : near) {
            sum += weight(cell);
            if (sum >= wanted) {
                return Math.max(Math.abs(cell.offset - mean), 1);
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
