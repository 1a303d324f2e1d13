// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import java.util.ArrayList;
import java.util.List;

/**
 * The lines of a strip chart. Bounded however long the run: when it is full, every second row but the newest is let go
 * and from then on only so many are kept.
 */
final class Trace {
    private final int most;
    private final List<Row> rows = new ArrayList<>();
    private int stride = 1;
    private int skipped;

    /** One moment: seconds since 1970 and one value per line; NaN where there is none. */
    record Row(double second, List<Double> values) {
        Row {
            values = List.copyOf(values);
        }
    }

    Trace(int most) {
        this.most = most;
    }

    void add(Row row) {
        skipped++;
        if (skipped < stride) {
            return;
        }
        skipped = 0;
        rows.add(row);
        if (rows.size() > most) {
            thin();
        }
    }

    void clear() {
        rows.clear();
        stride = 1;
        skipped = 0;
    }

    private void thin() {
        for (int i = rows.size() - 2; i > 0; i -= 2) {
            rows.remove(i);
        }
        stride *= 2;
    }

    /** Rows later than an instant, in order. */
    List<Row> after(double second) {
        int from = rows.size();
        while (from > 0 && rows.get(from - 1).second() > second) {
            from--;
        }
        return List.copyOf(rows.subList(from, rows.size()));
    }
}
