// SPDX-License-Identifier: Apache-2.0
package isohume.station;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Exports of invented loggers in several layouts: six hours, with a step up after two and one down after four. */
final class ExportedFiles {
    private static final LocalDateTime BEGIN = LocalDateTime.parse("2026-03-30T08:00:00");

    private final Path folder;

    ExportedFiles(Path folder) {
        this.folder = folder;
    }

    /** A reference in UTF-16 with tabs, whose heading says the zone. */
    Path utf16Reference() throws IOException {
        String text = "\uFEFFTime (UTC+01:00)\tDew point °C\tTemperature °C\tHumidity % RH\r\n"
                + rows("yyyy-MM-dd HH:mm:ss", 10, 0, "\t9.3\t23.0\t%.2f\r\n", '.');
        return written("reference.txt", text, StandardCharsets.UTF_16LE);
    }

    /** Semicolons, decimal commas, days first; its clock is 754 s ahead. */
    Path german() throws IOException {
        return written("logger-de.csv", germanText(), Charset.forName("windows-1252"));
    }

    private static String germanText() {
        return "Datenlogger\nZeit;Temperatur [°C];rel. Feuchte [% rF]\n"
                + rows("dd.MM.yyyy HH:mm:ss", 60, 754, ";23.0;%.1f\n", ',');
    }

    /** Commas, months first, two halves of a day. */
    Path american() throws IOException {
        String text = "\"Date/Time\",\"Temp (°F)\",\"RH (%)\"\n"
                + rows("MM/dd/yyyy hh:mm:ss a", 60, 0, ",73.4,%.1f\n", '.');
        return written("logger-us.csv", text, StandardCharsets.UTF_8);
    }

    /** The German one with a date that no calendar has, a letter in a number and a row that is cut off. */
    Path brokenInThreePlaces() throws IOException {
        String[] lines = germanText().split("\n");
        lines[20] = lines[20].replace("30.03.", "30.02.");
        lines[40] = lines[40].substring(0, lines[40].length() - 1) + "O";
        lines[60] = lines[60].substring(0, 19);
        return written("broken.csv", String.join("\n", lines) + "\n", Charset.forName("windows-1252"));
    }

    private static String rows(String pattern, int interval, int ahead, String form, char sign) {
        DateTimeFormatter format = DateTimeFormatter.ofPattern(pattern, Locale.US);
        StringBuilder text = new StringBuilder();
        for (int second = 0; second < 6 * 3600; second += interval) {
            double humidity = 30 + risen(second - 2 * 3600, 30) + risen(second - 4 * 3600, -40);
            text.append(format.format(BEGIN.plusSeconds(second + ahead)))
                    .append(String.format(Locale.ROOT, form, humidity).replace('.', sign));
        }
        return text.toString();
    }

    private static double risen(int since, double by) {
        return since < 0 ? 0 : by * (1 - Math.exp(-since / 180.0));
    }

    private Path written(String name, String text, Charset charset) throws IOException {
        Path file = folder.resolve(name);
        Files.write(file, text.getBytes(charset));
        return file;
    }
}
