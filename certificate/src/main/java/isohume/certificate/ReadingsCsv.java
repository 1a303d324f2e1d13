// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import isohume.quantity.Quantity;
import isohume.result.Item;
import isohume.result.Recording;
import isohume.result.Results;
import isohume.result.StillToCome;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Paired readings as CSV, one line for each moment, as they were shown and before any correction:
 * {@code time,point,deposit,dew_point [°C],temperature [°C],pressure [Pa],mirror_pressure [Pa]} and then
 * {@code instrument/quantity [unit]} for each channel. Time is ISO 8601 in UTC, the deposit is {@code water} or
 * {@code ice}, the decimal mark is a full stop, a gap is empty. Where it is known what channels had still to change when
 * they were recorded, columns {@code instrument/quantity:to_come [unit]} and {@code :u_to_come} follow, which say the
 * same in every line of a point. Lines end with a line feed, the text is meant for UTF-8.
 */
public final class ReadingsCsv {
    private ReadingsCsv() {}

    /** Writes all recordings in their order; the writer stays open. */
    public static void write(Results results, Writer to) throws IOException {
        write(results.job().items(), results.recordings(), to);
    }

    /** Channels come in the order of the items; those of instruments that are not among the items come last. */
    public static void write(List<Item> items, List<Recording> recordings, Writer to) throws IOException {
        List<String> keys = keys(items, recordings);
        List<String> head = new ArrayList<>(List.of(
                "time",
                "point",
                "deposit",
                named("dew_point", Quantity.DEW_POINT),
                named("temperature", Quantity.TEMPERATURE),
                named("pressure", Quantity.PRESSURE),
                named("mirror_pressure", Quantity.PRESSURE)));
        keys.forEach(key -> head.add(named(key, quantity(key))));
        List<String> known = keys.stream()
                .filter(key -> recordings.stream().anyMatch(r -> r.toCome().containsKey(key)))
                .toList();
        for (String key : known) {
            String unit = " [" + quantity(key).differenceUnit() + "]";
            head.add(key + ":to_come" + unit);
            head.add(key + ":u_to_come" + unit);
        }
        line(head, to);
        for (Recording recording : recordings) {
            for (Recording.Row row : recording.rows()) {
                List<String> cells = cells(recording, row, keys);
                known.forEach(key -> cells.addAll(toCome(recording.toCome().get(key))));
                line(cells, to);
            }
        }
    }

    private static List<String> toCome(@Nullable StillToCome known) {
        return known == null ? List.of("", "") : List.of(number(known.value()), number(known.standardUncertainty()));
    }

    private static List<String> keys(List<Item> items, List<Recording> recordings) {
        Set<String> keys = new LinkedHashSet<>();
        items.forEach(item -> item.read().forEach(c -> keys.add(item.key(c.quantity()))));
        Stream<Recording.Row> rows = recordings.stream().flatMap(r -> r.rows().stream());
        Set<String> shown = new TreeSet<>();
        rows.forEach(row -> shown.addAll(row.shown().keySet()));
        keys.addAll(shown);
        return List.copyOf(keys);
    }

    private static Quantity quantity(String key) {
        return Quantity.ofKey(key.substring(key.lastIndexOf('/') + 1));
    }

    private static String named(String name, Quantity quantity) {
        return name + " [" + quantity.unit() + "]";
    }

    private static List<String> cells(Recording recording, Recording.Row row, List<String> keys) {
        List<String> cells = new ArrayList<>(List.of(
                row.at().toString(),
                Integer.toString(recording.point().number()),
                Names.of(recording.deposit()),
                number(row.dewPoint()),
                number(row.temperature()),
                number(row.pressure()),
                number(row.mirrorPressure())));
        keys.forEach(key -> cells.add(number(row.shown().getOrDefault(key, Double.NaN))));
        return cells;
    }

    private static String number(double value) {
        return Double.isFinite(value)
                ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString()
                : "";
    }

    private static void line(List<String> cells, Writer to) throws IOException {
        for (int i = 0; i < cells.size(); i++) {
            to.append(i == 0 ? "" : ",").append(quoted(cells.get(i)));
        }
        to.append('\n');
    }

    /** RFC 4180, section 2, rules 5 to 7. */
    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
