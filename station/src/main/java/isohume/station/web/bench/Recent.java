// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** Every row of the last hour, and no more than a bound. */
final class Recent {
    static final int MOST = 1800;
    private static final double HOUR = 3600;
    private final Deque<Trace.Row> rows = new ArrayDeque<>();

    void add(Trace.Row row) {
        rows.addLast(row);
        while (rows.size() > MOST || rows.getFirst().second() < row.second() - HOUR) {
            rows.removeFirst();
        }
    }

    List<Trace.Row> after(double second) {
        return rows.stream().filter(r -> r.second() > second).toList();
    }
}
