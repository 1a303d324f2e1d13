// SPDX-License-Identifier: Apache-2.0
package isohume.device.recorded;

import isohume.device.Unit;
import isohume.quantity.Phase;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.regex.Pattern;

/** The cells of one row after the other into a table. After a fault the table is of no use, but the reading goes on. */
final class RowReader {
    private static final int MOST_POINTS = 9999;
    private static final Pattern NUMBER =
            Pattern.compile("[-+]?(\\d{1,40}(\\.\\d{0,40})?|\\.\\d{1,40})([eE][-+]?\\d)?");
    private static final Pattern POINT = Pattern.compile("[1-9]\\d{0,3}");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[-+]?\\d+,\\d+");
    private static final Pattern NOT_FINITE = Pattern.compile("(?i)[-+]?(nan|inf|infinity)");

    private final List<Column> columns;
    private final Table table;
    private final Faults faults;
    private Instant last = Instant.MIN;
    private Instant at = Instant.MIN;
    private int point;
    private Phase deposit = Phase.WATER;

    RowReader(List<Column> columns, Table table, Faults faults) {
        this.columns = columns;
        this.table = table;
        this.faults = faults;
    }

    void read(List<String> cells, long line) {
        if (cells.size() != columns.size()) {
            faults.add(
                    line,
                    0,
                    "the line has " + cells.size() + " cells, the headings are " + columns.size(),
                    cells.size() > columns.size()
                            ? "is there a decimal comma in a number? write a point"
                            : "leave a cell empty where an instrument shows nothing, but keep its comma");
            return;
        }
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i).strip();
            switch (columns.get(i)) {
                case Column.Mark mark -> mark(mark, cell, line, i + 1);
                case Column.Numbers numbers -> number(numbers, cell, line, i + 1);
                case Column.ToCome toCome -> toCome(toCome, cell, line, i + 1);
            }
        }
        table.add(line, at, point, deposit);
    }

    private void mark(Column.Mark mark, String cell, long line, int number) {
        switch (mark) {
            case TIME -> time(cell, line, number);
            case POINT -> {
                if (POINT.matcher(cell).matches()) {
                    point = Integer.parseInt(cell);
                } else {
                    fault(
                            line,
                            number,
                            "point",
                            cell,
                            "the point's number in the plan is needed here, 1 to " + MOST_POINTS);
                }
            }
            case DEPOSIT -> {
                switch (cell) {
                    case "water" -> deposit = Phase.WATER;
                    case "ice" -> deposit = Phase.ICE;
                    default -> fault(line, number, "deposit", cell, "water or ice is needed here");
                }
            }
        }
    }

    private void time(String cell, long line, int number) {
        try {
            at = cell.endsWith("]")
                    ? ZonedDateTime.parse(cell).toInstant()
                    : OffsetDateTime.parse(cell).toInstant();
        } catch (DateTimeParseException e) {
            fault(line, number, "time", cell, remedy(cell));
            return;
        }
        if (at.isBefore(last)) {
            faults.add(
                    line,
                    number,
                    "the time " + cell + " is before the one above, " + last,
                    "the lines have to be in the order of time; was a clock set back?");
        }
        last = at;
    }

    private static String remedy(String cell) {
        return cell.matches("\\d{4}-\\d\\d-\\d\\d[T ]\\d\\d:\\d\\d(:\\d\\d(\\.\\d+)?)?")
                ? "write it with a T and its distance from UTC, as in " + cell.replace(' ', 'T')
                        + "+01:00, or Z for UTC"
                : "a time such as 2026-03-31T08:00:00Z or 2026-03-31T10:00:00+02:00 is needed here";
    }

    private void number(Column.Numbers column, String cell, long line, int number) {
        Cells cells = table.cells(column);
        if (cell.isEmpty()) {
            if (!column.mayBeEmpty()) {
                faults.add(line, number, column.heading() + " is empty", "a reference needs a value in every line");
            }
            cells.addGap();
            return;
        }
        String needed = "a number in " + column.unit().symbol() + " is needed here";
        if (!NUMBER.matcher(cell).matches()) {
            fault(line, number, column.heading(), cell, remedy(cell, needed));
            return;
        }
        BigDecimal value = new BigDecimal(cell.endsWith(".") ? cell + "0" : cell);
        if (value.precision() > Cells.MOST_DIGITS) {
            fault(line, number, column.heading(), cell, needed + " with " + Cells.MOST_DIGITS + " digits at most");
        } else if (!Unit.possible(column.quantity(), column.unit().toQuantity(value))) {
            fault(line, number, column.heading(), cell, impossible(column));
        } else {
            cells.add(value);
        }
    }

    private void toCome(Column.ToCome column, String cell, long line, int number) {
        Cells cells = table.cells(column);
        if (cell.isEmpty()) {
            cells.addGap();
            return;
        }
        boolean understood = NUMBER.matcher(cell).matches() && new BigDecimal(cell).precision() <= Cells.MOST_DIGITS;
        if (!understood || (column.part() == Column.ToCome.Part.UNCERTAINTY && cell.startsWith("-"))) {
            fault(line, number, column.heading(), cell, "a number, no uncertainty below 0, is needed here or nothing");
        } else {
            cells.add(new BigDecimal(cell));
        }
    }

    private static String impossible(Column.Numbers column) {
        return column.mayBeEmpty()
                ? "nothing can have this value; leave the cell empty if it stands for a missing reading"
                : "nothing can have this value, and a reference needs one in every line";
    }

    private static String remedy(String cell, String needed) {
        if (DECIMAL_COMMA.matcher(cell).matches()) {
            return "write the decimal point as a point: " + cell.replace(',', '.');
        }
        return NOT_FINITE.matcher(cell).matches() ? needed + ", and a finite one" : needed;
    }

    private void fault(long line, int number, String heading, String cell, String remedy) {
        String quoted = cell.length() > 60 ? cell.substring(0, 60) + "…" : cell;
        faults.add(line, number, cell.isEmpty() ? heading + " is empty" : heading + " is \"" + quoted + "\"", remedy);
    }
}
