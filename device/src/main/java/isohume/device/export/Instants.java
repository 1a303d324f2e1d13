// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.time.Duration;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** Which raw rows are used, and when they were recorded, in the order of time. */
final class Instants {
    private static final int MOST_STEPS = 10_000;

    private int[] rows;
    private long[] millis;
    private int count;

    Instants(int capacity) {
        rows = new int[capacity];
        millis = new long[capacity];
    }

    void add(int row, long at) {
        rows[count] = row;
        millis[count++] = at;
    }

    void trim() {
        rows = Arrays.copyOf(rows, count);
        millis = Arrays.copyOf(millis, count);
    }

    /** The commonest step, the longest of several. */
    Duration interval() {
        Map<Long, Integer> steps = new HashMap<>();
        for (int i = 1; i < count; i++) {
            long step = millis[i] - millis[i - 1];
            if (steps.size() < MOST_STEPS || steps.containsKey(step)) {
                steps.merge(step, 1, Integer::sum);
            }
        }
        return steps.entrySet().stream()
                .max(Map.Entry.<Long, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(step -> Duration.ofMillis(step.getKey()))
                .orElse(Duration.ofSeconds(1));
    }

    int size() {
        return count;
    }

    int row(int place) {
        return rows[place];
    }

    long millis(int place) {
        return millis[place];
    }
}
