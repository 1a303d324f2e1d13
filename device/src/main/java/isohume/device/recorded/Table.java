// SPDX-License-Identifier: Apache-2.0
package isohume.device.recorded;

import isohume.device.Channel;
import isohume.device.recorded.RecordedReadings.Row;
import isohume.device.recorded.RecordedReadings.ToCome;
import isohume.quantity.Phase;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.AbstractList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.RandomAccess;

/** The rows read so far, by columns, which takes a fraction of the memory of an object for each row. */
final class Table extends AbstractList<Row> implements RandomAccess {
    private final List<Column> columns;
    private final Map<Column, Cells> numbers = new LinkedHashMap<>();
    private long[] seconds = new long[16];
    private int[] nanos = new int[16];
    private int[] lines = new int[16];
    private short[] points = new short[16];
    private final BitSet ice = new BitSet();
    private int count;

    Table(List<Column> columns) {
        this.columns = columns;
        columns.forEach(column -> numbers.put(column, new Cells()));
    }

    /** Adds a row's marks; its numbers have been added to {@link #cells} of every column of numbers. */
    void add(long line, Instant at, int point, Phase deposit) {
        if (count == seconds.length) {
            grow(count + count / 2);
        }
        lines[count] = Math.toIntExact(line);
        seconds[count] = at.getEpochSecond();
        nanos[count] = at.getNano();
        points[count] = (short) point;
        ice.set(count, deposit == Phase.ICE);
        count++;
    }

    Cells cells(Column column) {
        return Objects.requireNonNull(numbers.get(column));
    }

    List<Channel> channels() {
        return columns.stream()
                .filter(Column.Shown.class::isInstance)
                .map(column -> ((Column.Shown) column).channel())
                .toList();
    }

    @Override
    public Row get(int row) {
        Objects.checkIndex(row, count);
        BigDecimal pressure = reference(Column.Reference.PRESSURE, row).orElseThrow();
        return new Row(
                lines[row],
                Instant.ofEpochSecond(seconds[row], nanos[row]),
                points[row],
                ice.get(row) ? Phase.ICE : Phase.WATER,
                reference(Column.Reference.DEW_POINT, row).orElseThrow(),
                reference(Column.Reference.TEMPERATURE, row).orElseThrow(),
                pressure,
                reference(Column.Reference.MIRROR_PRESSURE, row).orElse(pressure),
                shown(row),
                toCome(row));
    }

    @Override
    public int size() {
        return count;
    }

    private Optional<BigDecimal> reference(Column.Reference reference, int row) {
        for (Column column : columns) {
            if (column instanceof Column.Of of && of.reference() == reference) {
                return value(of, row);
            }
        }
        return Optional.empty();
    }

    private Map<Channel, BigDecimal> shown(int row) {
        Map<Channel, BigDecimal> shown = new LinkedHashMap<>();
        for (Column column : columns) {
            if (column instanceof Column.Shown one) {
                value(one, row).ifPresent(value -> shown.put(one.channel(), value));
            }
        }
        return Collections.unmodifiableMap(shown);
    }

    private Map<Channel, ToCome> toCome(int row) {
        Map<Channel, BigDecimal> values = part(Column.ToCome.Part.VALUE, row);
        Map<Channel, BigDecimal> uncertainties = part(Column.ToCome.Part.UNCERTAINTY, row);
        Map<Channel, ToCome> whole = new LinkedHashMap<>();
        values.forEach((channel, value) -> {
            BigDecimal uncertainty = uncertainties.get(channel);
            if (uncertainty != null) {
                whole.put(channel, new ToCome(value, uncertainty));
            }
        });
        return Collections.unmodifiableMap(whole);
    }

    private Map<Channel, BigDecimal> part(Column.ToCome.Part part, int row) {
        Map<Channel, BigDecimal> values = new LinkedHashMap<>();
        for (Column column : columns) {
            if (column instanceof Column.ToCome one && one.part() == part) {
                cells(one).get(row).ifPresent(value -> values.put(one.channel(), value));
            }
        }
        return values;
    }

    private Optional<BigDecimal> value(Column.Numbers column, int row) {
        return cells(column).get(row).map(column.unit()::toQuantity);
    }

    private void grow(int size) {
        seconds = Arrays.copyOf(seconds, size);
        nanos = Arrays.copyOf(nanos, size);
        lines = Arrays.copyOf(lines, size);
        points = Arrays.copyOf(points, size);
    }
}
