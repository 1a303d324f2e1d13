// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.recorded.Cells;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Rows as they were read, in the order of the file, with times by the clock that wrote them. */
final class RawRows {
    private final List<Cells> cells = new ArrayList<>();
    private long[] local = new long[64];
    private int[] lines = new int[64];
    private int count;

    RawRows(int columns) {
        for (int i = 0; i < columns; i++) {
            cells.add(new Cells());
        }
    }

    /** Adds a row's time, in milliseconds since 1970 by its clock; its cells have been added. */
    void add(long millis, long line) {
        if (count == local.length) {
            local = Arrays.copyOf(local, count + count / 2);
            lines = Arrays.copyOf(lines, count + count / 2);
        }
        local[count] = millis;
        lines[count++] = Math.toIntExact(line);
    }

    int size() {
        return count;
    }

    long local(int row) {
        return local[row];
    }

    long line(int row) {
        return lines[row];
    }

    Cells cells(int column) {
        return cells.get(column);
    }

    /** Whether two rows show the same. */
    boolean same(int one, int other) {
        return cells.stream().allMatch(c -> c.get(one).equals(c.get(other)));
    }
}
