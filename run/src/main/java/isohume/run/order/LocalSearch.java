// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import java.util.SplittableRandom;

/**
 * A good order where there are too many to look at all: from a start, stretches are moved and turned round as long as that
 * saves time (Or-opt and 2-opt), then the order is shaken and improved again, a fixed number of times from a fixed seed.
 */
final class LocalSearch {
    private static final double GAIN = 1e-7; // min; less is rounding
    private static final int LONGEST = 12; // of a stretch that is moved
    private static final long SEED = 1;
    private static final int SHAKES = 300;

    private final Costs costs;
    private final Precedence precedence;
    private final int n;

    LocalSearch(Costs costs, Precedence precedence) {
        this.costs = costs;
        this.precedence = precedence;
        this.n = costs.size();
    }

    /** The best that can be had from an order without shaking it. */
    int[] settled(int[] start) {
        return descend(start.clone());
    }

    int[] improve(int[] start) {
        int[] best = settled(start);
        double minutes = costs.of(best);
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < SHAKES; i++) {
            int[] shaken = descend(shake(best, random));
            double reached = costs.of(shaken);
            if (reached < minutes - GAIN) {
                best = shaken;
                minutes = reached;
            }
        }
        return best;
    }

    /** The nearest point that is free to be visited, again and again. */
    int[] nearest() {
        int[] order = new int[n];
        boolean[] done = new boolean[n];
        int last = n;
        for (int place = 0; place < n; place++) {
            int next = -1;
            for (int j = 0; j < n; j++) {
                if (!done[j] && ready(done, j) && (next < 0 || costs.of(last, j) < costs.of(last, next))) {
                    next = j;
                }
            }
            order[place] = next;
            done[next] = true;
            last = next;
        }
        return order;
    }

    private boolean ready(boolean[] done, int j) {
        for (int k = 0; k < n; k++) {
            if (!done[k] && precedence.before(k, j)) {
                return false;
            }
        }
        return true;
    }

    private int[] descend(int[] order) {
        boolean better = true;
        while (better) {
            boolean moved = move(order);
            better = turn(order) || moved;
        }
        return order;
    }

    /** From one place to another, neighbours or not; nothing beyond the last. */
    private double arc(int[] order, int from, int to) {
        return to >= n ? 0 : costs.of(from < 0 ? n : order[from], order[to]);
    }

    /** Moves a stretch a..b behind a place c wherever that saves anything. */
    private boolean move(int[] order) {
        boolean moved = false;
        for (int length = 1; length <= Math.min(LONGEST, n - 1); length++) {
            for (int a = 0; a + length <= n; a++) {
                int b = a + length - 1;
                double closed = arc(order, a - 1, a) + arc(order, b, b + 1) - arc(order, a - 1, b + 1);
                for (int c = -1; c < n; c++) {
                    if (c >= a - 1 && c <= b) {
                        continue;
                    }
                    double opened = arc(order, c, a) + arc(order, b, c + 1) - arc(order, c, c + 1);
                    if (opened - closed < -GAIN && mayPass(order, a, b, c)) {
                        shift(order, a, b, c);
                        moved = true;
                        break; // another stretch stands there now
                    }
                }
            }
        }
        return moved;
    }

    private boolean mayPass(int[] order, int a, int b, int c) {
        int low = c < a ? c + 1 : b + 1;
        int high = c < a ? a - 1 : c;
        for (int i = a; i <= b; i++) {
            for (int k = low; k <= high; k++) {
                boolean held = c < a ? precedence.before(order[k], order[i]) : precedence.before(order[i], order[k]);
                if (held) {
                    return false;
                }
            }
        }
        return true;
    }

    private static void shift(int[] order, int a, int b, int c) {
        int[] stretch = java.util.Arrays.copyOfRange(order, a, b + 1);
        if (c < a) {
            System.arraycopy(order, c + 1, order, c + 1 + stretch.length, a - c - 1);
            System.arraycopy(stretch, 0, order, c + 1, stretch.length);
        } else {
            System.arraycopy(order, b + 1, order, a, c - b);
            System.arraycopy(stretch, 0, order, c - stretch.length + 1, stretch.length);
        }
    }

    /** Turns a stretch a..b round wherever that saves anything. */
    private boolean turn(int[] order) {
        boolean moved = false;
        for (int a = 0; a < n - 1; a++) {
            double forward = 0;
            double backward = 0;
            for (int b = a + 1; b < n; b++) {
                if (precedence.before(order[a], order[b])) {
                    break;
                }
                forward += costs.of(order[b - 1], order[b]);
                backward += costs.of(order[b], order[b - 1]);
                double old = arc(order, a - 1, a) + forward + arc(order, b, b + 1);
                double turned = arc(order, a - 1, b) + backward + arc(order, a, b + 1);
                if (turned - old < -GAIN && mayTurn(order, a, b)) {
                    for (int i = a, k = b; i < k; i++, k--) {
                        int kept = order[i];
                        order[i] = order[k];
                        order[k] = kept;
                    }
                    moved = true;
                    break; // another stretch stands there now
                }
            }
        }
        return moved;
    }

    private boolean mayTurn(int[] order, int a, int b) {
        for (int i = a; i <= b; i++) {
            for (int k = i + 1; k <= b; k++) {
                if (precedence.before(order[i], order[k])) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Exchanges two neighbouring stretches, where that is allowed. */
    private int[] shake(int[] order, SplittableRandom random) {
        for (int attempt = 0; attempt < n; attempt++) {
            int a = random.nextInt(n);
            int b = Math.min(n - 1, a + random.nextInt(LONGEST));
            int c = Math.min(n - 1, b + 1 + random.nextInt(LONGEST));
            if (c > b && mayPass(order, a, b, c)) {
                int[] shaken = order.clone();
                shift(shaken, a, b, c);
                return shaken;
            }
        }
        return order.clone();
    }
}
