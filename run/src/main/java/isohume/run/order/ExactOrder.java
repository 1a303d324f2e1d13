// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The shortest order of all, by dynamic programming over the sets of points that can have been visited.
 *
 * <p>Held and Karp, A dynamic programming approach to sequencing problems, J. SIAM 10 (1962) 196. Only sets that the
 * constraints allow are looked at, so a plan that is mostly given its order may have many points; fourteen free ones make
 * 16384 sets.
 */
final class ExactOrder {
    private static final int MOST_POINTS = 62; // bits of a set
    private static final int MOST_FREE = 16;
    private static final int MOST_SETS = 140_000;

    private final Costs costs;
    private final Precedence precedence;
    private final int n;
    private final Map<Long, byte[]> cameFrom = new LinkedHashMap<>();

    ExactOrder(Costs costs, Precedence precedence) {
        this.costs = costs;
        this.precedence = precedence;
        this.n = costs.size();
    }

    /** The order; empty if there are too many sets to look at, or the constraints allow no order. */
    Optional<int[]> order() {
        if (n > MOST_POINTS || free() > MOST_FREE) {
            return Optional.empty();
        }
        Map<Long, double[]> layer = new LinkedHashMap<>();
        layer.put(0L, new double[0]);
        for (int visited = 0; visited < n; visited++) {
            Map<Long, double[]> next = new LinkedHashMap<>();
            for (Map.Entry<Long, double[]> set : layer.entrySet()) {
                extend(set.getKey(), set.getValue(), next);
                if (cameFrom.size() > MOST_SETS) {
                    return Optional.empty();
                }
            }
            layer = next;
        }
        double[] whole = layer.get((1L << n) - 1);
        return whole == null ? Optional.empty() : trace(whole);
    }

    /** Points that nothing has to come before; any of their sets can have been visited. */
    private int free() {
        int free = 0;
        for (int j = 0; j < n; j++) {
            free += ready(0, j) ? 1 : 0;
        }
        return free;
    }

    private void extend(long set, double[] minutes, Map<Long, double[]> next) {
        for (int j = 0; j < n; j++) {
            if ((set & 1L << j) != 0 || !ready(set, j)) {
                continue;
            }
            double best = Double.POSITIVE_INFINITY;
            int from = -1;
            if (set == 0) {
                best = costs.of(n, j);
                from = n;
            }
            for (int i = 0; i < minutes.length; i++) {
                double through = minutes[i] + costs.of(i, j);
                if (through < best) {
                    best = through;
                    from = i;
                }
            }
            if (from >= 0 && best < Costs.FORBIDDEN) {
                long with = set | 1L << j;
                next.computeIfAbsent(with, s -> unknown())[j] = best;
                cameFrom.computeIfAbsent(with, s -> new byte[n])[j] = (byte) from;
            }
        }
    }

    private double[] unknown() {
        double[] minutes = new double[n];
        Arrays.fill(minutes, Double.POSITIVE_INFINITY);
        return minutes;
    }

    private boolean ready(long set, int j) {
        for (int k = 0; k < n; k++) {
            if (precedence.before(k, j) && (set & 1L << k) == 0) {
                return false;
            }
        }
        return true;
    }

    private Optional<int[]> trace(double[] whole) {
        int last = 0;
        for (int j = 1; j < n; j++) {
            last = whole[j] < whole[last] ? j : last;
        }
        if (whole[last] >= Costs.FORBIDDEN) {
            return Optional.empty();
        }
        int[] order = new int[n];
        long set = (1L << n) - 1;
        for (int place = n - 1; place >= 0; place--) {
            order[place] = last;
            byte[] from = cameFrom.get(set);
            set &= ~(1L << last);
            last = from == null ? n : from[last];
        }
        return Optional.of(order);
    }
}
