// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Which points come before which, and which may directly follow which. Closed under "before".
 */
final class Precedence {
    private final List<Stop> stops;
    private final Constraints constraints;
    private final boolean[][] before;

    Precedence(List<Stop> stops, Constraints constraints) {
        this.stops = List.copyOf(stops);
        this.constraints = constraints;
        int n = stops.size();
        before = new boolean[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                before[i][j] = i != j && needed(stops.get(i), stops.get(j));
            }
        }
        for (int k = 0; k < n; k++) {
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    before[i][j] |= before[i][k] && before[k][j];
                }
            }
        }
    }

    int size() {
        return stops.size();
    }

    boolean before(int i, int j) {
        return before[i][j];
    }

    private boolean needed(Stop a, Stop b) {
        if (a.sameTemperature(b)) {
            boolean up = a.rising() && b.rising() && a.percent() < b.percent();
            boolean down = a.falling() && b.falling() && a.percent() > b.percent();
            if (up || down || (a.rising() && b.falling())) {
                return true;
            }
        }
        boolean wetAfterDry = wet(b) && !wet(a) && !a.falling();
        return switch (constraints.wet()) {
            case LAST -> wetAfterDry;
            case LAST_AT_TEMPERATURE -> wetAfterDry && a.sameTemperature(b);
            case ANYWHERE -> false;
        };
    }

    private boolean wet(Stop stop) {
        return stop.percent() > constraints.wetAbove();
    }

    /** Whether {@code j} may directly follow {@code i}, or come first where {@code i} is the number of points. */
    boolean follows(int i, int j) {
        if (i == j) {
            return false;
        }
        Stop to = stops.get(j);
        if (i == stops.size()) {
            return !to.falling() || highestThere(to);
        }
        Stop from = stops.get(i);
        if (before[j][i] || between(i, j)) {
            return false;
        }
        if (to.rising()) {
            return !from.sameTemperature(to) || from.percent() <= to.percent();
        }
        if (to.falling()) {
            return from.sameTemperature(to) ? from.percent() >= to.percent() : highestThere(to);
        }
        return true;
    }

    /** Something has to come after i and before j, so they are no neighbours. */
    private boolean between(int i, int j) {
        for (int k = 0; k < stops.size(); k++) {
            if (before[i][k] && before[k][j]) {
                return true;
            }
        }
        return false;
    }

    private boolean highestThere(Stop stop) {
        return stops.stream()
                .filter(other -> !other.equals(stop) && other.sameTemperature(stop))
                .allMatch(other -> other.percent() < stop.percent());
    }

    /** What an order breaks first, in words; empty when it keeps to everything. */
    Optional<String> broken(int[] order) {
        for (int a = 0; a < order.length; a++) {
            for (int b = a + 1; b < order.length; b++) {
                if (before[order[b]][order[a]]) {
                    return Optional.of(name(order[a]) + " comes before " + name(order[b]));
                }
            }
        }
        for (int a = 0; a < order.length; a++) {
            if (!follows(a == 0 ? order.length : order[a - 1], order[a])) {
                return Optional.of(name(order[a]) + " is not approached from the side that its direction says");
            }
        }
        return Optional.empty();
    }

    private String name(int i) {
        Stop stop = stops.get(i);
        return String.format(
                Locale.ROOT,
                "point %d (%.1f °C, %.1f %% RH)",
                stop.point().number(),
                stop.point().temperature().celsius(),
                stop.percent());
    }

    /** Whether an order keeps to everything. */
    boolean keeps(int[] order) {
        return broken(order).isEmpty();
    }
}
