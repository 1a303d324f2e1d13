// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The readings of an exported file, in the order of time, at times that differ. Immutable. */
public final class LoggedTable {
    private final String source;
    private final List<LoggedColumn> columns;
    private final RawRows rows;
    private final Instants instants;
    private final Duration interval;
    private final Duration step;

    LoggedTable(
            String source,
            List<LoggedColumn> columns,
            RawRows rows,
            Instants instants,
            Duration interval,
            Duration step) {
        this.source = source;
        this.columns = List.copyOf(columns);
        this.rows = rows;
        this.instants = instants;
        this.interval = interval;
        this.step = step;
    }

    /** The file's name, without its folder. */
    public String source() {
        return source;
    }

    /** The columns of readings, in the file's order. */
    public List<LoggedColumn> columns() {
        return columns;
    }

    /** The place of the column of a channel in {@link #columns}. */
    public Optional<Integer> column(String channel) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).channel().equals(channel)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /** How many rows there are; at least two. */
    public int size() {
        return instants.size();
    }

    /** When a row was recorded, by the logger's clock. */
    public Instant at(int row) {
        return Instant.ofEpochMilli(instants.millis(row));
    }

    /** A row's line in the file, from 1. */
    public long line(int row) {
        return rows.line(instants.row(row));
    }

    /** What a column, by its place in {@link #columns}, shows in a row, in the quantity's unit; nothing at a gap. */
    public Optional<BigDecimal> shown(int row, int column) {
        return rows.cells(column).get(instants.row(row)).map(columns.get(column).unit()::toQuantity);
    }

    /** The step from one row to the next: the one in the middle of all. */
    public Duration interval() {
        return interval;
    }

    /** The last digit of the times: a minute where they have no seconds. */
    public Duration timeStep() {
        return step;
    }
}
