// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import java.util.Arrays;

/**
 * A signal since it began, as means over equal stretches of time. When it is full, neighbours are joined; once the
 * stretches are as long as they may become, the older half is let go.
 */
final class History {
    static final int MOST = 256;
    private static final double LONGEST_SECONDS = 60;

    private final double firstWidth;
    private final double[] sum = new double[MOST];
    private final int[] count = new int[MOST];
    private final int[] changes = new int[MOST];
    private double width;
    private double origin;
    private double lastAt;
    private double lastShown;
    private int bins;
    private int samples;

    /** @param seconds the shortest stretch, about as long as the time between two values */
    History(double seconds) {
        this.firstWidth = seconds;
        this.width = seconds;
    }

    /**
     * The next value.
     *
     * @param shown the figures on the display that limits it, so that their changes can be counted
     */
    void add(double seconds, double value, double shown) {
        if (samples == 0) {
            origin = seconds;
        }
        while (place(seconds) >= MOST) {
            if (width * 2 <= LONGEST_SECONDS) {
                join();
            } else {
                drop(MOST / 2);
            }
        }
        int bin = place(seconds);
        sum[bin] += value;
        count[bin]++;
        changes[bin] += samples > 0 && shown != lastShown ? 1 : 0;
        lastShown = shown;
        lastAt = seconds;
        bins = bin + 1;
        samples++;
    }

    private int place(double seconds) {
        return (int) Math.min(Integer.MAX_VALUE, (seconds - origin) / width);
    }

    private void join() {
        for (int i = 0; i < MOST / 2; i++) {
            sum[i] = sum[2 * i] + sum[2 * i + 1];
            count[i] = count[2 * i] + count[2 * i + 1];
            changes[i] = changes[2 * i] + changes[2 * i + 1];
        }
        width *= 2;
        wipe(MOST / 2);
    }

    private void drop(int first) {
        System.arraycopy(sum, first, sum, 0, MOST - first);
        System.arraycopy(count, first, count, 0, MOST - first);
        System.arraycopy(changes, first, changes, 0, MOST - first);
        origin += first * width;
        wipe(MOST - first);
    }

    private void wipe(int from) {
        Arrays.fill(sum, from, MOST, 0);
        Arrays.fill(count, from, MOST, 0);
        Arrays.fill(changes, from, MOST, 0);
        bins = Math.min(bins, from);
    }

    void clear() {
        width = firstWidth;
        bins = 0;
        samples = 0;
        wipe(0);
    }

    int bins() {
        return bins;
    }

    double width() {
        return width;
    }

    /** Length of the whole, in seconds. */
    double spanned() {
        return samples == 0 ? 0 : lastAt - origin;
    }

    /** How many values a stretch has; 0 in a gap. */
    int count(int bin) {
        return count[bin];
    }

    double mean(int bin) {
        return sum[bin] / count[bin];
    }

    /** How often the display changed in a stretch. */
    int changes(int bin) {
        return changes[bin];
    }
}
