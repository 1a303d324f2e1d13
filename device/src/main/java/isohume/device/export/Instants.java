// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.time.Duration;
import java.util.Arrays;
import java.util.stream.IntStream;

/** Which raw rows are used, and when they were recorded, in the order of time. */
final class Instants {
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

    /** The step in the middle of all. */
    Duration interval() {
        long[] steps = IntStream.range(1, count).mapToLong(i -> millis[i] - millis[i - 1]).sorted().toArray();
        return Duration.ofMillis(steps.length == 0 ? 1000 : steps[steps.length / 2]);
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
