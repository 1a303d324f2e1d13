// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.Unit;
import isohume.device.export.TimeColumns.Counting;
import isohume.device.sheet.Sheet;
import isohume.quantity.Quantity;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** A profile as a YAML document. */
final class ProfileSheet {
    private static final int MOST_COLUMNS = 1000;
    private static final String AS_WRITTEN = "as_written";

    private ProfileSheet() {}

    static Profile read(String document, String name) {
        Sheet sheet = Sheet.parse(document, name);
        int version = sheet.whole("import-profile", 1, 2);
        int headings = sheet.whole("heading-rows", 0, 2);
        Profile profile = new Profile(
                sheet.text("title"),
                charset(sheet),
                sheet.oneOf("delimiter", Delimiter.class),
                sheet.oneOf("decimal-sign", DecimalSign.class),
                sheet.truthOr("grouped-thousands", false),
                headings,
                times(sheet.section("time"), headings),
                columns(sheet, headings),
                sheet.has("gaps") ? new HashSet<>(sheet.texts("gaps")) : Set.of(),
                sheet.oneOfOr("doubled-rows", Doubled.class, Doubled.ASK));
        sheet.refuseOthers();
        assert version >= 1;
        return profile;
    }

    private static Charset charset(Sheet sheet) {
        try {
            return Charset.forName(sheet.text("encoding"));
        } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
            throw sheet.wrong("encoding", "an encoding such as UTF-8, UTF-16LE or windows-1252 is needed here");
        }
    }

    private static Profile.Times times(Sheet sheet, int headings) {
        Counting counting = sheet.oneOf("counting", Counting.class);
        Sheet date = sheet.section("date");
        Sheet clock = sheet.optional("clock-column").orElse(date);
        Optional<Sheet> half = sheet.optional("half-column");
        TimeColumns columns = new TimeColumns(
                counting,
                date.whole("column", 1, MOST_COLUMNS),
                clock.whole("column", 1, MOST_COLUMNS),
                half.map(h -> h.whole("column", 1, MOST_COLUMNS)).orElse(0));
        List<String> said = List.of(heading(date, headings), heading(clock, headings));
        date.refuseOthers();
        clock.refuseOthers();
        half.ifPresent(Sheet::refuseOthers);
        Profile.Times times = new Profile.Times(
                columns,
                said,
                counting == Counting.CALENDAR ? sheet.oneOf("date-order", DateOrder.class) : DateOrder.YEAR_FIRST,
                zone(sheet),
                sheet.has("clock") ? Optional.of(sheet.oneOf("clock", ClockHabit.class)) : Optional.empty());
        sheet.refuseOthers();
        return times;
    }

    private static Optional<ZoneId> zone(Sheet sheet) {
        String zone = sheet.text("zone");
        try {
            return zone.equals(AS_WRITTEN) ? Optional.empty() : Optional.of(ZoneId.of(zone));
        } catch (DateTimeException unknown) {
            throw sheet.wrong(
                    "zone", "a time zone such as Europe/Berlin or +01:00, or " + AS_WRITTEN + ", is needed here");
        }
    }

    private static String heading(Sheet sheet, int headings) {
        return headings == 0 ? "" : sheet.textOr("heading", "");
    }

    private static List<LoggedColumn> columns(Sheet sheet, int headings) {
        List<LoggedColumn> columns = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Sheet column : sheet.list("columns")) {
            String channel = column.text("channel");
            Quantity quantity = Channels.quantity(channel)
                    .orElseThrow(() -> column.wrong("channel", "one of " + Channels.KNOWN + " is needed here"));
            if (!names.add(channel)) {
                throw column.wrong("channel", "each channel is there once; write " + channel + "_2 for a second one");
            }
            columns.add(new LoggedColumn(
                    column.whole("column", 1, MOST_COLUMNS),
                    heading(column, headings),
                    channel,
                    quantity,
                    unit(column, quantity)));
            column.refuseOthers();
        }
        return columns;
    }

    private static Unit unit(Sheet column, Quantity quantity) {
        if (quantity == Quantity.DEPOSIT) {
            return Unit.NONE;
        }
        String possible = Unit.of(quantity).stream().map(Unit::symbol).collect(Collectors.joining(" or "));
        return Unit.of(column.text("unit"), quantity)
                .orElseThrow(() -> column.wrong("unit", possible + " is needed here"));
    }

    static String write(Profile profile) {
        StringBuilder text = new StringBuilder();
        boolean second = profile.delimiter().hidesEmptyCells()
                || profile.times().columns().half() > 0;
        line(text, "import-profile", second ? "2" : "1"); // so that older programs read what they can
        line(text, "title", quoted(profile.title()));
        line(text, "encoding", profile.encoding().name());
        line(text, "delimiter", Doubts.word(profile.delimiter()));
        line(text, "decimal-sign", Doubts.word(profile.decimalSign()));
        line(text, "grouped-thousands", String.valueOf(profile.grouped()));
        line(text, "heading-rows", String.valueOf(profile.headings()));
        write(profile.times(), text);
        text.append("columns:\n");
        for (LoggedColumn column : profile.columns()) {
            text.append("  - {column: ").append(column.number());
            heading(text, column.heading());
            text.append(", channel: ").append(column.channel());
            if (column.quantity() != Quantity.DEPOSIT) {
                text.append(", unit: ").append(quoted(column.unit().symbol()));
            }
            text.append("}\n");
        }
        if (!profile.gaps().isEmpty()) {
            String gaps = new TreeSet<>(profile.gaps())
                    .stream().map(ProfileSheet::quoted).collect(Collectors.joining(", "));
            line(text, "gaps", "[" + gaps + "]");
        }
        line(text, "doubled-rows", Doubts.word(profile.doubled()));
        return text.toString();
    }

    private static void write(Profile.Times times, StringBuilder text) {
        text.append("time:\n");
        line(text, "  counting", Doubts.word(times.columns().counting()));
        text.append("  date: {column: ").append(times.columns().date());
        heading(text, times.headings().getFirst());
        text.append("}\n");
        if (times.columns().clock() != times.columns().date()) {
            text.append("  clock-column: {column: ").append(times.columns().clock());
            heading(text, times.headings().getLast());
            text.append("}\n");
        }
        if (times.columns().half() > 0) {
            line(text, "  half-column", "{column: " + times.columns().half() + "}");
        }
        if (times.columns().counting() == Counting.CALENDAR) {
            line(text, "  date-order", Doubts.word(times.order()));
        }
        line(
                text,
                "  zone",
                times.zone().map(ZoneId::getId).map(ProfileSheet::quoted).orElse(AS_WRITTEN));
        times.clock().ifPresent(habit -> line(text, "  clock", Doubts.word(habit)));
    }

    private static void heading(StringBuilder text, String heading) {
        if (!heading.isEmpty()) {
            text.append(", heading: ").append(quoted(heading));
        }
    }

    private static void line(StringBuilder text, String key, String value) {
        text.append(key).append(": ").append(value).append('\n');
    }

    /** As a text of YAML in double quotes. */
    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.chars().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\');
            }
            quoted.append(c < ' ' ? ' ' : (char) c);
        });
        return quoted.append('"').toString();
    }
}
