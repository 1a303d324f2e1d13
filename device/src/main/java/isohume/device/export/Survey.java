// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What all rows together tell about each column; the cells themselves are not kept. */
final class Survey implements Rows.Taker {
    private final TimeColumns times;
    private final int width;
    private final List<Seen> columns = new ArrayList<>();
    private final DateEvidence dates = new DateEvidence();
    private long rows;

    Survey(TimeColumns times, int width) {
        this.times = times;
        this.width = width;
        for (int i = 0; i < width; i++) {
            columns.add(new Seen());
        }
    }

    @Override
    public boolean take(List<String> cells, long line) {
        if (cells.size() < width || !times.in(cells)) {
            return true; // the reading itself says what is wrong with it
        }
        rows++;
        if (times.counting() == TimeColumns.Counting.CALENDAR) {
            times.stamp(cells)
                    .ifPresent(stamp ->
                            dates.add(stamp, line, cells.get(times.date() - 1).strip()));
        }
        for (int i = 0; i < width; i++) {
            if (!times.has(i + 1)) {
                columns.get(i).add(DecimalSign.bare(cells.get(i)), line);
            }
        }
        return true;
    }

    long rows() {
        return rows;
    }

    DateEvidence dates() {
        return dates;
    }

    /** A column, by its number from 1. */
    Seen column(int number) {
        return columns.get(number - 1);
    }

    /** What one column has in it. */
    static final class Seen {
        private static final int MOST = 20;

        private long numbers;
        private long ordinal;
        private boolean counts = true;
        private String unit = "";
        private final Map<DecimalSign, Proof> proofs = new LinkedHashMap<>();
        private Optional<Proof> ambiguous = Optional.empty();
        private boolean grouped;
        private final Map<String, Proof> words = new LinkedHashMap<>();
        private double least = Double.POSITIVE_INFINITY;
        private double most = Double.NEGATIVE_INFINITY;

        /** A cell that shows something, with its first line and how often it or its like was seen. */
        record Proof(String cell, long line, long count) {
            Proof again() {
                return new Proof(cell, line, count + 1);
            }
        }

        void add(String cell, long line) {
            if (cell.isEmpty()) {
                return;
            }
            if (DecimalSign.isNumber(cell)) {
                number(cell, line);
            } else if (words.size() < MOST || words.containsKey(cell)) {
                words.merge(cell, new Proof(cell, line, 1), (old, one) -> old.again());
            }
        }

        private void number(String cell, long line) {
            numbers++;
            Optional<DecimalSign> proven = DecimalSign.provenBy(cell);
            proven.ifPresent(sign -> proofs.merge(sign, new Proof(cell, line, 1), (old, one) -> old.again()));
            boolean comma = cell.indexOf(',') >= 0;
            boolean point = cell.indexOf('.') >= 0;
            grouped |= comma && point;
            if (proven.isEmpty() && (comma || point) && ambiguous.isEmpty()) {
                ambiguous = Optional.of(new Proof(cell, line, 1));
            }
            if (unit.isEmpty()) {
                unit = DecimalSign.unitBehind(cell).orElse("");
            }
            range(cell);
        }

        private void range(String cell) {
            DecimalSign.POINT
                    .number(cell, false)
                    .or(() -> DecimalSign.COMMA.number(cell, false))
                    .ifPresent(number -> {
                        double value = number.doubleValue();
                        counts &= number.scale() <= 0 && (ordinal == 0 || number.longValue() == ordinal + 1);
                        ordinal = number.longValue();
                        least = Math.min(least, value);
                        most = Math.max(most, value);
                    });
        }

        boolean hasNumbers() {
            return numbers > 0;
        }

        /** Whether it only numbers the rows. */
        boolean isOrdinal() {
            return numbers > 2 && counts && words.isEmpty();
        }

        boolean grouped() {
            return grouped;
        }

        /** The unit that stands in its cells, or nothing. */
        String unit() {
            return unit;
        }

        Map<DecimalSign, Proof> proofs() {
            return proofs;
        }

        /** A number whose comma or point may be either sign, if there was one. */
        Optional<Proof> ambiguous() {
            return ambiguous;
        }

        /** Cells that are no numbers; some of them, if there are very many different ones. */
        Map<String, Proof> words() {
            return words;
        }

        /** What its numbers reach, in words; nothing where they could not be read. */
        String range() {
            return most < least ? "no numbers" : plain(least) + " to " + plain(most);
        }

        private static String plain(double value) {
            return value == Math.rint(value) && Math.abs(value) < 1e15
                    ? Long.toString((long) value)
                    : Double.toString(value);
        }
    }
}
