// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

/**
 * How well a logger's readings are what the reference showed at other times, but for a gain, a little creep and a level
 * that wanders: y = level + gain (x + creep·slow), where slow is the reference with a lag of an hour. What can be
 * foretold of the level tells nothing, so a sensor that creeps otherwise than modelled spoils no quick change.
 */
final class Fit {
    /** Both measure the same quantity, so a gain far from 1 is no likeness. */
    private static final double LEAST_GAIN = 0.5;

    private static final double MOST_GAIN = 2;
    private static final double MOST_CREEP = 0.1;
    private static final double SLOW = 3600;
    private static final double DAY = 86_400;
    private static final double[] WANDERS = {0, 1e-4, 1e-3, 1e-2, 0.1, 1, 10};

    private final TimedValues logger;
    private final double interval;
    private final double middle;
    private final double floor;
    private final Replay slow;
    private double wander = 0.01;
    private int count;
    private double gain;
    private double creep;
    private double spread;
    private double logVariance;
    private double anchor;
    private double counted = 1;

    Fit(TimedValues logger, Replay reference) {
        this.logger = logger;
        this.interval = logger.interval();
        this.middle = logger.middle();
        this.slow = reference.lagging(SLOW);
        double quantum = Math.max(logger.resolution(), 1e-6);
        this.floor = quantum * quantum / 12;
        anchor(reference, 1);
    }

    /** Readings that told something new in the last fit. */
    int count() {
        return count;
    }

    /** Mean square of what is new in those readings, with nothing taken from the reference. */
    double spread() {
        return spread;
    }

    private double time(int place, double offset, double drift) {
        double at = logger.seconds(place);
        return at - offset - drift * (at - middle) / DAY;
    }

    /**
     * Mean square of what is left over, at an offset in the middle of the record and a drift in seconds per day. A long
     * lag leaves little of the reference's noise, which is no sign that the sensor has one, so that is added again; noise
     * that a late reference would raise is taken off, up to as much.
     */
    double leftOver(Replay replay, double offset, double drift, int from, int to) {
        Sums sums = new Sums();
        Whitening white = new Whitening(wander, 3);
        double before = 0;
        for (int i = from; i < to; i++) {
            double at = time(i, offset, drift);
            double x = replay.at(at);
            if (!Double.isNaN(x)) {
                if (white.add((at - before) / interval, x, slow.at(at), logger.value(i))) {
                    sums.add(white.news(0), white.news(1), white.news(2));
                }
                before = at;
            }
        }
        count = (int) sums.n;
        if (count < 5) {
            return Double.POSITIVE_INFINITY;
        }
        logVariance = white.logVariance();
        spread = sums.yy / count + floor;
        creep = Math.clamp(sums.creep(), 0, MOST_CREEP);
        gain = Math.clamp(sums.gain(creep), LEAST_GAIN, MOST_GAIN);
        double mean = Math.max(0, sums.leftOver(gain, creep)) / count + floor;
        return Math.max(mean / 2, mean + counted * gain * gain * Math.max(-anchor, anchor - replay.noise()));
    }

    /**
     * Counts the reference's noise as if it were as great everywhere as in this replay of it.
     *
     * @param share how much of that, 0 to 1
     */
    void anchor(Replay replay, double share) {
        anchor = replay.noise();
        counted = share;
    }

    /** Mean square of what is new in all of the logger's readings, with nothing taken from the reference. */
    double unaided() {
        Whitening white = new Whitening(wander, 1);
        double sum = floor;
        for (int i = 0; i < logger.size(); i++) {
            double intervals = i == 0 ? 0 : (logger.seconds(i) - logger.seconds(i - 1)) / interval;
            if (white.add(intervals, logger.value(i))) {
                sum += white.news(0) * white.news(0) / (logger.size() - 1);
            }
        }
        return sum;
    }

    /** Takes the wander of the level that makes what is left over at a place the likeliest. */
    void learn(Replay shown, Place place, int from, int to) {
        double likeliest = wander;
        double least = Double.POSITIVE_INFINITY;
        for (double tried : WANDERS) {
            wander = tried;
            double mean = leftOver(shown, place.offset(), place.drift(), from, to);
            double unlikely = count * Math.log(mean) + logVariance;
            if (unlikely < least) {
                least = unlikely;
                likeliest = tried;
            }
        }
        wander = likeliest;
    }

    /** How far what is left over at a place is to be believed. */
    Trust trust(Replay shown, Place place, int from, int to) {
        double mean = leftOver(shown, place.offset(), place.drift(), from, to);
        double beside = interval / 8;
        Whitening white = new Whitening(wander, 4);
        Trust.Residuals residuals = new Trust.Residuals();
        double before = 0;
        for (int i = from; i < to; i++) {
            double at = time(i, place.offset(), place.drift());
            double x = shown.at(at);
            double slope = shown.at(at + beside) - shown.at(at - beside);
            if (!Double.isNaN(x) && !Double.isNaN(slope)) {
                if (white.add((at - before) / interval, x, slow.at(at), logger.value(i), slope)) {
                    residuals.add(white.news(2) - gain * (white.news(0) + creep * white.news(1)), white.news(3));
                }
                before = at;
            }
        }
        return residuals.trust(mean, floor);
    }

    /** Sums of products of what is new in the reference x, the slow reference z and the logger's readings y. */
    private static final class Sums {
        private double n;
        private double xx;
        private double xy;
        private double xz;
        private double yy;
        private double yz;
        private double zz;

        void add(double one, double late, double shown) {
            n++;
            xx += one * one;
            xy += one * shown;
            xz += one * late;
            yy += shown * shown;
            yz += shown * late;
            zz += late * late;
        }

        /** Creep as a share of the gain, by least squares; 0 where it cannot be told. */
        double creep() {
            double determinant = xx * zz - xz * xz;
            if (!(determinant > 1e-9 * xx * zz)) {
                return 0;
            }
            double onX = (xy * zz - yz * xz) / determinant;
            double onZ = (yz * xx - xy * xz) / determinant;
            return onX > 0 ? onZ / onX : 0;
        }

        private double square(double creep) {
            return xx + 2 * creep * xz + creep * creep * zz;
        }

        double gain(double creep) {
            return square(creep) > 0 ? (xy + creep * yz) / square(creep) : 1;
        }

        double leftOver(double gain, double creep) {
            return yy - 2 * gain * (xy + creep * yz) + gain * gain * square(creep);
        }
    }
}
