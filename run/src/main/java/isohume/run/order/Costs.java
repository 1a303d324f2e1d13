// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import java.util.List;

/**
 * Minutes from one point recorded to the next recorded; the last row is from the start. What must not follow costs so much
 * that no order with it can win.
 */
final class Costs {
    static final double FORBIDDEN = 1e9;

    private final double[][] minutes;

    private Costs(double[][] minutes) {
        this.minutes = minutes;
    }

    static Costs of(List<Stop> stops, isohume.device.Setpoint start, TimeModel times, Precedence precedence) {
        int n = stops.size();
        double[][] minutes = new double[n + 1][n];
        for (int i = 0; i <= n; i++) {
            for (int j = 0; j < n; j++) {
                if (precedence.follows(i, j)) {
                    Visit visit = new Visit(
                            i == n ? start : stops.get(i).condition(),
                            stops.get(j).condition());
                    minutes[i][j] =
                            times.approach(visit).minutes() + times.stay(visit).minutes();
                } else {
                    minutes[i][j] = FORBIDDEN;
                }
            }
        }
        return new Costs(minutes);
    }

    int size() {
        return minutes.length - 1;
    }

    double of(int i, int j) {
        return minutes[i][j];
    }

    boolean may(int i, int j) {
        return minutes[i][j] < FORBIDDEN;
    }

    double of(int[] order) {
        double sum = 0;
        int last = size();
        for (int next : order) {
            sum += minutes[last][next];
            last = next;
        }
        return sum;
    }
}
