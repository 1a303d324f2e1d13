// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

import org.jspecify.annotations.Nullable;

/**
 * How well a logger's readings are what the reference showed at other times, but for a gain, a level and a little creep:
 * y = level + gain (x + creep·slow), where slow is the reference with a lag of an hour.
 */
final class Fit {
    /** Both measure the same quantity, so a gain far from 1 is no likeness. */
    private static final double LEAST_GAIN = 0.5;

    private static final double MOST_GAIN = 2;
    private static final double MOST_CREEP = 0.1;
    private static final double SLOW = 3600;
    private static final double DAY = 86_400;

    private final TimedValues logger;
    private final double middle;
    private final double floor;
    private final @Nullable Replay slow;
    private int count;
    private double level;
    private double gain;
    private double creep;
    private double spread;

    private Fit(TimedValues logger, @Nullable Replay slow) {
        this.logger = logger;
        this.middle = logger.middle();
        this.slow = slow;
        double quantum = Math.max(logger.resolution(), 1e-6);
        this.floor = quantum * quantum / 12;
    }

    /** A fit without creep. */
    static Fit plain(TimedValues logger) {
        return new Fit(logger, null);
    }

    /** A fit with creep after the reference's changes. */
    static Fit creeping(TimedValues logger, Replay reference) {
        return new Fit(logger, reference.lagging(SLOW, 1));
    }

    /** Readings that fell on known times in the last fit. */
    int count() {
        return count;
    }

    /** Mean square about the mean of the readings in the last fit. */
    double spread() {
        return spread;
    }

    private double time(int place, double offset, double drift) {
        double at = logger.seconds(place);
        return at - offset - drift * (at - middle) / DAY;
    }

    /** Mean square of what is left over, at an offset in the middle of the record and a drift in seconds per day. */
    double leftOver(Replay replay, double offset, double drift, int from, int to) {
        Sums sums = new Sums();
        for (int i = from; i < to; i++) {
            double at = time(i, offset, drift);
            double x = replay.at(at);
            if (!Double.isNaN(x)) {
                sums.add(x, slow == null ? 0 : slow.at(at), logger.value(i));
            }
        }
        count = (int) sums.n;
        if (count < 5) {
            return Double.POSITIVE_INFINITY;
        }
        spread = sums.yy() / count + floor;
        creep = Math.clamp(sums.creep(), 0, MOST_CREEP);
        gain = Math.clamp(sums.gain(creep), LEAST_GAIN, MOST_GAIN);
        level = sums.level(gain, creep);
        return Math.max(0, sums.leftOver(gain, creep)) / count + floor;
    }

    private double residual(Replay replay, double at, double shown) {
        double x = replay.at(at) + (slow == null ? 0 : creep * slow.at(at));
        return shown - level - gain * x;
    }

    /**
     * How many independent readings each fitted one is worth, by the likeness of neighbouring residuals (first-order
     * autoregression): (1 - r) / (1 + r).
     */
    double worth(Replay replay, double offset, double drift) {
        double unused = leftOver(replay, offset, drift, 0, logger.size());
        double before = Double.NaN;
        double products = 0;
        double squares = 0;
        for (int i = 0; i < logger.size(); i++) {
            double residual = residual(replay, time(i, offset, drift), logger.value(i));
            if (!Double.isNaN(residual)) {
                squares += residual * residual;
                products += Double.isNaN(before) ? 0 : residual * before;
            }
            before = residual;
        }
        double r = squares > 0 ? Math.clamp(products / squares + 1.0 / count, 0, 0.99) : 0;
        return Math.max(4.0 / count, (1 - r) / (1 + r));
    }

    /**
     * How much greater the mean square left over is where the offset shows, that is where the record changes quickly,
     * than it is on the whole; at least 1. Lags of another form than the fitted one leave their traces there. A few such
     * readings tell their own scatter badly, so it is raised for the three parameters that they decide.
     */
    double excess(Replay replay, double offset, double drift, int from, int to) {
        double mean = leftOver(replay, offset, drift, from, to);
        double weights = 0;
        double weighted = 0;
        double fourth = 0;
        double beside = logger.interval() / 8;
        for (int i = from; i < to; i++) {
            double at = time(i, offset, drift);
            double slope = replay.at(at + beside) - replay.at(at - beside);
            double residual = residual(replay, at, logger.value(i));
            if (!Double.isNaN(residual) && !Double.isNaN(slope)) {
                double weight = slope * slope;
                weights += weight;
                weighted += weight * residual * residual;
                fourth += weight * weight;
            }
        }
        if (!(weights > 0)) {
            return 1;
        }
        double telling = weights * weights / fourth;
        double scarce = telling > 6 ? telling / (telling - 3) : 2;
        return Math.max(1, (weighted / weights + floor) / mean) * scarce;
    }

    /** Sums of products of the reference x, the slow reference z and the logger's readings y. */
    private static final class Sums {
        private double n;
        private double x;
        private double y;
        private double z;
        private double xx;
        private double xy;
        private double xz;
        private double yy;
        private double yz;
        private double zz;

        void add(double one, double late, double shown) {
            n++;
            x += one;
            y += shown;
            z += late;
            xx += one * one;
            xy += one * shown;
            xz += one * late;
            yy += shown * shown;
            yz += shown * late;
            zz += late * late;
        }

        private double about(double product, double a, double b) {
            return product - a * b / n;
        }

        double yy() {
            return about(yy, y, y);
        }

        /** Creep as a share of the gain, by least squares; 0 where it cannot be told. */
        double creep() {
            double sxx = about(xx, x, x);
            double sxz = about(xz, x, z);
            double szz = about(zz, z, z);
            double sxy = about(xy, x, y);
            double syz = about(yz, y, z);
            double determinant = sxx * szz - sxz * sxz;
            if (!(determinant > 1e-9 * sxx * szz)) {
                return 0;
            }
            double onX = (sxy * szz - syz * sxz) / determinant;
            double onZ = (syz * sxx - sxy * sxz) / determinant;
            return onX > 0 ? onZ / onX : 0;
        }

        double gain(double creep) {
            double square = about(xx, x, x) + 2 * creep * about(xz, x, z) + creep * creep * about(zz, z, z);
            return square > 0 ? (about(xy, x, y) + creep * about(yz, y, z)) / square : 1;
        }

        double level(double gain, double creep) {
            return (y - gain * (x + creep * z)) / n;
        }

        double leftOver(double gain, double creep) {
            double square = about(xx, x, x) + 2 * creep * about(xz, x, z) + creep * creep * about(zz, z, z);
            double product = about(xy, x, y) + creep * about(yz, y, z);
            return yy() - 2 * gain * product + gain * gain * square;
        }
    }
}
