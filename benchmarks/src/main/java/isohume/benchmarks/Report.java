// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The figures of one program, with the machine and the versions that they hold for.
 *
 * @param versions name of each program or library that took part, and its version
 * @param parts the same figures of each part of the whole, where it has parts; without bars
 */
public record Report(Machine machine, Map<String, String> versions, List<Figure> figures, Parts parts) {
    public Report {
        versions = new LinkedHashMap<>(versions);
        figures = List.copyOf(figures);
    }

    public Report(Machine machine, Map<String, String> versions, List<Figure> figures) {
        this(machine, versions, figures, Parts.NONE);
    }

    /** Whether every bar was met. */
    public boolean met() {
        return figures.stream().allMatch(Figure::met);
    }

    /** The exit code of a program that prints this report. */
    public int exitCode() {
        return met() ? 0 : 1;
    }

    /** The table as people read it. */
    public String table() {
        int width = figures.stream().mapToInt(f -> f.name().length()).max().orElse(0);
        StringBuilder text = new StringBuilder(machine.words()).append(System.lineSeparator());
        versions.forEach(
                (name, version) -> text.append(name).append(' ').append(version).append(System.lineSeparator()));
        text.append(System.lineSeparator()).append(parts.table());
        for (Figure figure : figures) {
            text.append(line(figure, width)).append(System.lineSeparator());
        }
        return text.toString();
    }

    private static String line(Figure figure, int width) {
        String bar = figure.bar().isEmpty()
                ? ""
                : String.format(
                        Locale.ROOT,
                        "  at %s %s: %s",
                        figure.least() ? "least" : "most",
                        short3(figure.bar().getAsDouble()),
                        figure.met() ? "met" : "MISSED");
        return String.format(
                        Locale.ROOT,
                        "%-" + width + "s %10s %-8s%s",
                        figure.name(),
                        short3(figure.value()),
                        figure.unit(),
                        bar)
                .stripTrailing();
    }

    /** Three digits that count, more where there are more before the point. */
    static String short3(double value) {
        int decimals = value == 0 || !Double.isFinite(value)
                ? 0
                : Math.max(0, 2 - (int) Math.floor(Math.log10(Math.abs(value))));
        return String.format(Locale.ROOT, "%." + Math.min(decimals, 6) + "f", value);
    }

    /** Writes the same figures for programs. */
    public void writeJson(Path file) throws IOException {
        Files.writeString(file, json());
    }

    String json() {
        String about = versions.entrySet().stream()
                .map(e -> quoted(e.getKey()) + ": " + quoted(e.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
        String lines = Stream.concat(figures.stream(), parts.figures())
                .map(Report::json)
                .collect(Collectors.joining(",\n    "));
        return "{\n  \"machine\": " + machine.json() + ",\n  \"versions\": " + about + ",\n  \"figures\": [\n    "
                + lines + "\n  ]\n}\n";
    }

    private static String json(Figure figure) {
        return "{\"name\": " + quoted(figure.name()) + ", \"value\": " + number(OptionalDouble.of(figure.value()))
                + ", \"unit\": " + quoted(figure.unit()) + ", \"bar\": " + number(figure.bar()) + ", \"met\": "
                + (figure.bar().isEmpty() ? "null" : figure.met()) + "}";
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() && Double.isFinite(value.getAsDouble())
                ? String.valueOf(value.getAsDouble())
                : "null"; // JSON has no word for what is no number
    }

    static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.chars().forEach(c -> {
            if (c == '"' || c == '\\') {
                out.append('\\').append((char) c);
            } else if (c < ' ') {
                out.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                out.append((char) c);
            }
        });
        return out.append('"').toString();
    }
}
