// SPDX-License-Identifier: Apache-2.0
package isohume.device.recorded;

import isohume.device.Channel;
import isohume.device.Unit;
import isohume.quantity.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The first line of a file: which columns there are, and their units. */
final class Header {
    private static final Pattern HEADING = Pattern.compile("([^\\[\\]]*?)\\s*(?:\\[([^\\[\\]]*)])?");
    private static final Pattern INSTRUMENT =
            Pattern.compile("([A-Za-z0-9][A-Za-z0-9._-]{0,63})/([a-z][a-z0-9_]{0,63})(?::(.*))?");
    private static final String KNOWN = "time, point, deposit, dew_point [°C], temperature [°C], pressure [Pa],"
            + " mirror_pressure [Pa], and for an instrument its id, a slash and a quantity,"
            + " as in A-1042/relative_humidity [% RH]";

    private final long line;
    private final Faults faults;

    private Header(long line, Faults faults) {
        this.line = line;
        this.faults = faults;
    }

    /**
     * The columns, in the file's order.
     *
     * @throws RecordingRefused if a heading is not understood, given twice or missing
     */
    static List<Column> columns(List<String> headings, long line, Faults faults) {
        Header header = new Header(line, faults);
        header.refuseOtherSeparators(headings);
        List<Column> columns = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < headings.size(); i++) {
            Optional<Column> column = header.column(headings.get(i).strip(), i + 1);
            if (column.isPresent() && !seen.add(column.get().heading())) {
                faults.add(line, i + 1, "a second column " + column.get().heading(), "keep one of the two");
            }
            column.ifPresent(columns::add);
        }
        faults.refuseIfAny();
        header.refuseMissing(columns);
        faults.refuseIfAny();
        return List.copyOf(columns);
    }

    private void refuseOtherSeparators(List<String> headings) {
        String first = headings.getFirst();
        if (headings.size() == 1 && first.contains(";")) {
            throw faults.last(
                    line,
                    "the columns are separated by semicolons",
                    "save the file again with commas between the columns and a decimal point in the numbers");
        }
        if (headings.size() == 1 && first.contains("\t")) {
            throw faults.last(
                    line, "the columns are separated by tabs", "save the file again with commas between them");
        }
    }

    private Optional<Column> column(String text, int number) {
        if (text.isEmpty()) {
            return fault(number, "column " + number + " has no heading", "give it one or remove the column");
        }
        Matcher heading = HEADING.matcher(text);
        if (!heading.matches()) {
            return fault(number, "the heading \"" + text + "\" is not understood", "known are " + KNOWN);
        }
        String name = heading.group(1);
        Optional<String> unit = Optional.ofNullable(heading.group(2)).map(String::strip);
        for (Column.Mark mark : Column.Mark.values()) {
            if (mark.heading().equals(name)) {
                return unit.isEmpty()
                        ? Optional.of(mark)
                        : fault(number, name + " has the unit " + unit.get(), "remove the unit");
            }
        }
        for (Column.Reference reference : Column.Reference.values()) {
            if (reference.heading().equals(name)) {
                return unit(name, reference.quantity(), unit, number).map(u -> new Column.Of(reference, u));
            }
        }
        return shown(name, unit, number);
    }

    private Optional<Column> shown(String name, Optional<String> unit, int number) {
        Matcher instrument = INSTRUMENT.matcher(name);
        Optional<Quantity> quantity = instrument.matches() ? quantity(instrument.group(2)) : Optional.empty();
        if (quantity.isEmpty()) {
            return fault(number, "the column \"" + name + "\" is not known", "known are " + KNOWN);
        }
        Channel channel = new Channel(instrument.group(1), instrument.group(2), quantity.get());
        String part = instrument.group(3);
        if (part != null) {
            return toCome(channel, part, unit, number);
        }
        return unit(name, quantity.get(), unit, number).map(u -> new Column.Shown(channel, u));
    }

    private Optional<Column> toCome(Channel channel, String word, Optional<String> unit, int number) {
        String wanted = channel.quantity().differenceUnit();
        for (Column.ToCome.Part part : Column.ToCome.Part.values()) {
            if (part.word().equals(word)) {
                Column column = new Column.ToCome(channel, part);
                return unit.isPresent() && unit.get().equals(wanted)
                        ? Optional.of(column)
                        : fault(
                                number,
                                column.heading() + " has "
                                        + unit.map(u -> "the unit [" + u + "]").orElse("no unit"),
                                "write [" + wanted + "] behind it");
            }
        }
        return fault(
                number,
                "\"" + word + "\" behind " + channel.id() + " is not known",
                "known are :to_come and :u_to_come");
    }

    /** A channel is named by its quantity, perhaps with something after it: {@code temperature_2}. */
    private static Optional<Quantity> quantity(String name) {
        return Arrays.stream(Quantity.values())
                .filter(q -> q != Quantity.DEPOSIT)
                .filter(q -> name.equals(q.key()) || name.startsWith(q.key() + "_"))
                .max(Comparator.comparingInt(q -> q.key().length()));
    }

    private Optional<Unit> unit(String name, Quantity quantity, Optional<String> symbol, int number) {
        String possible =
                Unit.of(quantity).stream().map(u -> "[" + u.symbol() + "]").collect(Collectors.joining(" or "));
        if (symbol.isEmpty()) {
            return fault(number, name + " has no unit", "write " + possible + " behind it");
        }
        Optional<Unit> unit = Unit.of(symbol.get(), quantity);
        return unit.isPresent()
                ? unit
                : fault(number, name + " has the unit [" + symbol.get() + "]", "write " + possible + " behind it");
    }

    private void refuseMissing(List<Column> columns) {
        Set<String> names = columns.stream().map(Column::heading).collect(Collectors.toSet());
        for (Column.Mark mark : Column.Mark.values()) {
            if (!names.contains(mark.heading())) {
                faults.add(line, 0, "the column " + mark.heading() + " is missing", "add it");
            }
        }
        for (Column.Reference reference : Column.Reference.values()) {
            if (reference != Column.Reference.MIRROR_PRESSURE && !names.contains(reference.heading())) {
                String full = reference.heading() + " [" + reference.quantity().unit() + "]";
                faults.add(line, 0, "the column " + full + " is missing", "add it");
            }
        }
        if (columns.stream().noneMatch(Column.Shown.class::isInstance)) {
            faults.add(
                    line,
                    0,
                    "there is no column of an instrument",
                    "add one with its id, a slash and a quantity, as in A-1042/relative_humidity [% RH]");
        }
    }

    private <T> Optional<T> fault(int number, String what, String remedy) {
        faults.add(line, number, what, remedy);
        return Optional.empty();
    }
}
