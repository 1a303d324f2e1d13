// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.export.Understanding.InDoubt;
import isohume.device.export.Understanding.Refused;
import isohume.device.export.Understanding.Understood;
import isohume.device.recorded.RecordedError;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExportTest {
    private static final String GERMAN = "Zeit;Temperatur [°C];rel. Feuchte [% rF]\n";
    private static final String[] BERLIN = {"zone=Europe/Berlin"};

    @TempDir
    private Path folder;

    @Test
    void a_german_layout_is_recognised_by_its_content() throws IOException {
        String text = "Datenlogger\nSeriennummer;4711\n\n" + GERMAN + rows("dd.MM.yyyy HH:mm:ss", ";", ',');
        Understood read = understood(text, Charset.forName("windows-1252"), BERLIN);
        assertEquals(Delimiter.SEMICOLON, read.profile().delimiter());
        assertEquals(DecimalSign.COMMA, read.profile().decimalSign());
        assertEquals(DateOrder.DAY_FIRST, read.profile().times().order());
        assertEquals(List.of("temperature [°C]", "relative_humidity [% RH]"), titles(read));
        assertEquals(Instant.parse("2026-03-31T06:00:00Z"), read.table().at(0)); // summer time: UTC + 2 h
        assertEquals(new BigDecimal("20.50"), read.table().shown(0, 0).orElseThrow());
        assertEquals(Duration.ofMinutes(1), read.table().interval());
        assertEquals(5, read.table().line(0));
    }

    @Test
    void an_american_layout_has_the_month_first_and_two_halves_of_a_day() throws IOException {
        String text = "\"Date/Time\",\"Temp (°F)\",\"RH (%)\"\n" + rows("MM/dd/yyyy hh:mm:ss a", ",", '.');
        Understood read = understood(text, StandardCharsets.UTF_8, "zone=America/Chicago");
        assertEquals(DateOrder.MONTH_FIRST, read.profile().times().order());
        assertEquals(Instant.parse("2026-03-31T13:00:00Z"), read.table().at(0)); // 8 a.m., UTC - 5 h
        assertEquals(Instant.parse("2026-03-31T18:00:00Z"), read.table().at(300)); // 1 p.m.
        assertEquals(-6.389, read.table().shown(0, 0).orElseThrow().doubleValue(), 0.001); // (20.5 - 32) 5/9
    }

    @ParameterizedTest
    @CsvSource({"UTF-16LE, true", "UTF-16BE, true", "UTF-16LE, false", "UTF-16BE, false", "UTF-8, true"})
    void encodings_are_recognised_with_a_byte_order_mark_and_without(String name, boolean marked) throws IOException {
        String text = (marked ? "\uFEFF" : "") + "Time\tTemperature °C\tHumidity %RH\r\n"
                + rows("yyyy-MM-dd HH:mm:ss", "\t", '.').replace("\n", "\r\n");
        Understood read = understood(text, Charset.forName(name), "zone=UTC");
        assertEquals(name, read.profile().encoding().name());
        assertEquals(List.of("temperature [°C]", "relative_humidity [% RH]"), titles(read));
    }

    @Test
    void letters_that_could_be_several_things_are_asked_about() throws IOException {
        String text = "Zeit;Température [C];HR [%]\n" + rows("dd.MM.yyyy HH:mm:ss", ";", ',');
        assertEquals(List.of("encoding"), keys(inDoubt(text, Charset.forName("windows-1252"), BERLIN)));
        Understood read =
                understood(text, Charset.forName("windows-1252"), "zone=Europe/Paris", "encoding=windows-1252");
        assertEquals("Température [C]", read.table().columns().getFirst().heading());
    }

    @Test
    void a_date_that_may_be_of_two_months_is_asked_about_with_both_readings() throws IOException {
        String text = "Time,Temp (°C),RH (%)\n" + rows("dd/MM/yyyy HH:mm", ",", '.', "2026-04-03T08:00", 60);
        InDoubt doubt = inDoubt(text, StandardCharsets.UTF_8, BERLIN);
        assertEquals(List.of("date-order"), keys(doubt));
        assertEquals(
                List.of("03/04/2026 08:00 is 2026-04-03", "03/04/2026 08:00 is 2026-03-04"),
                doubt.questions().getFirst().choices().stream()
                        .map(Question.Choice::meaning)
                        .toList());
        Understood read = understood(text, StandardCharsets.UTF_8, BERLIN[0], "date-order=day_first");
        assertEquals(Instant.parse("2026-04-03T06:00:00Z"), read.table().at(0));
    }

    @Test
    void rows_that_go_on_over_midnight_decide_between_two_months() throws IOException {
        String text = "Time,Temp (°C),RH (%)\n" + rows("dd/MM/yyyy HH:mm:ss", ",", '.', "2026-04-03T22:00", 300);
        assertEquals(
                DateOrder.DAY_FIRST,
                understood(text, StandardCharsets.UTF_8, BERLIN)
                        .profile()
                        .times()
                        .order());
        String other = "Time,Temp (°C),RH (%)\n" + rows("MM/dd/yyyy HH:mm:ss", ",", '.', "2026-04-03T22:00", 300);
        assertEquals(
                DateOrder.MONTH_FIRST,
                understood(other, StandardCharsets.UTF_8, BERLIN)
                        .profile()
                        .times()
                        .order());
    }

    @Test
    void a_zone_is_never_made_up() throws IOException {
        String text = GERMAN + rows("dd.MM.yyyy HH:mm:ss", ";", ',');
        assertEquals(List.of("zone"), keys(inDoubt(text, StandardCharsets.UTF_8)));
        assertEquals(List.of("zone"), keys(inDoubt(text, StandardCharsets.UTF_8, "zone=Nowhere/Land")));
        String said = "Time (UTC+02:00);Temp [°C];RH [%]\n" + rows("yyyy-MM-dd HH:mm:ss", ";", '.');
        assertEquals(
                Instant.parse("2026-03-31T06:00:00Z"),
                understood(said, StandardCharsets.UTF_8).table().at(0));
    }

    @ParameterizedTest
    @CsvSource({
        "yyyy-MM-dd'T'HH:mm:ss'Z', 2026-03-31T08:00:00Z",
        "yyyy-MM-dd'T'HH:mm:ss.SSS'+02:00', 2026-03-31T06:00:00Z",
        "yyyy/MM/dd HH:mm:ss 'UTC', 2026-03-31T08:00:00Z",
        "dd.MM.yy HH:mm:ss 'UTC', 2026-03-31T08:00:00Z",
        "dd-MMM-yyyy HH:mm:ss 'UTC', 2026-03-31T08:00:00Z",
        "EEE dd MMM yyyy HH:mm:ss 'UTC', 2026-03-31T08:00:00Z",
        "yyyyMMdd'T'HHmmss'Z', 2026-03-31T08:00:00Z",
        "yyyy-MM-dd;HH:mm:ss'Z', 2026-03-31T08:00:00Z",
    })
    void dates_come_in_many_forms(String pattern, String first) throws IOException {
        String headings = pattern.contains(";") ? "Date;Time" : "Time";
        String text = headings + ";Temp [°C];RH [%]\n" + rows(pattern, ";", '.');
        Understood read = understood(text, StandardCharsets.UTF_8);
        assertEquals(Instant.parse(first), read.table().at(0));
    }

    @Test
    void counted_seconds_need_no_zone() throws IOException {
        String text = "unix,T (°C),RH (%)\n1774944000,20.5,45.0\n1774944060,20.5,45.0\n1774944120,20.5,45.0\n";
        Understood read = understood(text, StandardCharsets.UTF_8);
        assertEquals(Instant.parse("2026-03-31T08:00:00Z"), read.table().at(0)); // date -d @1774944000
    }

    @Test
    void units_may_stand_in_a_row_of_their_own_or_in_the_cells() throws IOException {
        String row = "Time;Air;Wet\nyyyy-mm-dd hh:mm:ss;°C;% RH\n" + rows("yyyy-MM-dd HH:mm:ss", ";", '.');
        assertEquals(List.of("column.2"), keys(inDoubt(row, StandardCharsets.UTF_8, BERLIN)));
        Understood read = understood(row, StandardCharsets.UTF_8, BERLIN[0], "column.2=dew_point");
        assertEquals(List.of("dew_point [°C]", "relative_humidity [% RH]"), titles(read));
        String cells = "Time;Temp;Hum\n"
                + rows("yyyy-MM-dd HH:mm:ss", ";", '.').replaceAll("(?m);(\\S+);(\\S+)$", ";$1 °C;$2 %");
        assertEquals(
                List.of("temperature [°C]", "relative_humidity [% RH]"),
                titles(understood(cells, StandardCharsets.UTF_8, BERLIN)));
    }

    @Test
    void a_missing_unit_is_asked_for_and_never_taken_from_the_numbers() throws IOException {
        String text = "Time;Temperature;Humidity\n" + rows("yyyy-MM-dd HH:mm:ss", ";", '.');
        assertEquals(List.of("column.2", "column.3"), keys(inDoubt(text, StandardCharsets.UTF_8, BERLIN)));
    }

    @Test
    void thousands_and_tenths_are_not_mixed_up() throws IOException {
        String text =
                "Time;Pressure [hPa]\n2026-03-31 08:00:00;1,013\n2026-03-31 08:01:00;1,014\n2026-03-31 08:02:00;1,013\n";
        assertEquals(List.of("decimal-sign"), keys(inDoubt(text, StandardCharsets.UTF_8, BERLIN)));
        String clear =
                "Time;Pressure [hPa]\n2026-03-31 08:00:00;\"1,013.2\"\n2026-03-31 08:01:00;\"1,014.0\"\n2026-03-31 08:02:00;998.5\n";
        assertEquals(
                101320.0,
                understood(clear, StandardCharsets.UTF_8, BERLIN)
                        .table()
                        .shown(0, 0)
                        .orElseThrow()
                        .doubleValue());
    }

    @Test
    void missing_and_doubled_rows_are_found_and_shown() throws IOException {
        List<String> lines = rows("dd.MM.yyyy HH:mm:ss", ";", ',').lines().toList();
        String text = GERMAN + String.join("\n", lines.subList(0, 20)) + "\n" + lines.get(19) + "\n"
                + String.join("\n", lines.subList(25, 60)) + "\n";
        Understood read = understood(text, StandardCharsets.UTF_8, BERLIN);
        assertEquals(55, read.table().size());
        assertEquals(
                List.of("5 rows are missing between 2026-03-31T06:19:00Z and 2026-03-31T06:25:00Z"),
                texts(read, Finding.Kind.MISSING_ROWS));
        assertEquals(1, texts(read, Finding.Kind.DOUBLED_ROWS).size());
    }

    @Test
    void doubled_rows_that_differ_are_asked_about() throws IOException {
        List<String> lines = rows("dd.MM.yyyy HH:mm:ss", ";", ',').lines().toList();
        String text =
                GERMAN + String.join("\n", lines) + "\n" + lines.getLast().replaceFirst(";20,5.", ";29,99") + "\n";
        assertEquals(List.of("doubled-rows"), keys(inDoubt(text, StandardCharsets.UTF_8, BERLIN)));
        Understood last = understood(text, StandardCharsets.UTF_8, BERLIN[0], "doubled-rows=last");
        assertEquals(
                new BigDecimal("29.99"),
                last.table().shown(last.table().size() - 1, 0).orElseThrow());
    }

    @Test
    void words_in_place_of_numbers_are_gaps_only_if_a_person_says_so() throws IOException {
        List<String> lines = rows("dd.MM.yyyy HH:mm:ss", ";", ',').lines().toList();
        String text = GERMAN + String.join("\n", lines)
                + "\n31.03.2026 14:00:00;Err;---\n31.03.2026 14:01:00;3276,7;3276,7\n";
        assertEquals(List.of("gaps"), keys(inDoubt(text, StandardCharsets.UTF_8, BERLIN)));
        Understood read = understood(text, StandardCharsets.UTF_8, BERLIN[0], "gaps=Err|3276,7");
        assertEquals(Optional.empty(), read.table().shown(read.table().size() - 1, 0));
    }

    @Test
    void each_broken_place_is_named() throws IOException {
        List<String> lines =
                new ArrayList<>(rows("dd.MM.yyyy HH:mm:ss", ";", ',').lines().toList());
        lines.set(10, lines.get(10).replaceFirst(";", ":"));
        lines.set(20, lines.get(20).replace("31.03.", "31.02."));
        lines.set(30, lines.get(30).replaceFirst(",\\d+$", ",4S"));
        Refused refused = assertInstanceOf(
                Refused.class, read(GERMAN + String.join("\n", lines) + "\n", StandardCharsets.UTF_8, BERLIN));
        assertEquals(
                List.of("12:1", "22:1", "32:3"),
                refused.errors().stream().map(e -> e.line() + ":" + e.column()).toList());
    }

    @Test
    void a_file_that_begins_with_the_newest_row_is_turned_round() throws IOException {
        List<String> lines = rows("dd.MM.yyyy HH:mm:ss", ";", ',').lines().toList();
        Understood read =
                understood(GERMAN + String.join("\n", lines.reversed()) + "\n", StandardCharsets.UTF_8, BERLIN);
        assertEquals(Instant.parse("2026-03-31T06:00:00Z"), read.table().at(0));
    }

    @Test
    void rows_of_one_minute_without_seconds_are_asked_about() throws IOException {
        String text = GERMAN + rows("dd.MM.yyyy HH:mm", ";", ',', "2026-03-31T08:00", 10);
        assertEquals(List.of("doubled-rows"), keys(inDoubt(text, StandardCharsets.UTF_8, BERLIN)));
        Understood read = understood(text, StandardCharsets.UTF_8, BERLIN[0], "doubled-rows=spread");
        assertEquals(Duration.ofSeconds(10), read.table().interval());
    }

    @ParameterizedTest
    @CsvSource({
        "'', the file is empty",
        "'hello\nworld\n', no rows of readings were found in the first 2 lines",
        "'Zeit,T °C,rF %\n31.03.2026 08:00:00,21,5,45,3\n31.03.2026 08:01:00,21,5,45,3\n', the headings have 3 cells and the readings 5",
        "'Time;T °C\n2026-03-31 08:00:00;21.5\n2026-03-31 08:01:00;21.5\n2026-03-31 07:00:00;21.5\n2026-03-31 07:01:00;21.5\n', the time goes back from 2026-03-31T06:01:00Z to 2026-03-31T05:00:00Z",
    })
    void what_cannot_be_read_is_refused_with_the_reason(String text, String what) throws IOException {
        Refused refused = assertInstanceOf(Refused.class, read(text, StandardCharsets.UTF_8, BERLIN));
        assertEquals(what, refused.errors().getFirst().what());
    }

    @Test
    void a_workbook_is_refused_before_it_is_read() throws IOException {
        Path file = folder.resolve("book.csv");
        Files.write(file, new byte[] {'P', 'K', 3, 4, 0, 0});
        Refused refused = assertInstanceOf(Refused.class, Export.of(file).understand(Answers.none()));
        assertEquals("export it as CSV or text", refused.errors().getFirst().remedy());
    }

    @Test
    void a_saved_profile_reads_the_next_file_and_refuses_another_kind() throws IOException {
        Understood first = understood(GERMAN + rows("dd.MM.yyyy HH:mm:ss", ";", ','), StandardCharsets.UTF_8, BERLIN);
        Profile saved = Profile.read(first.profile().document(), "german.yaml");
        assertEquals(first.profile(), saved);
        Path next = file(
                "Logger 8\n" + GERMAN + rows("dd.MM.yyyy HH:mm:ss", ";", ',', "2026-07-01T08:00", 60),
                StandardCharsets.UTF_8);
        Understood read = assertInstanceOf(Understood.class, Export.of(next).by(saved, Answers.none()));
        assertEquals(Instant.parse("2026-07-01T06:00:00Z"), read.table().at(0));
        Path other = file(
                "Zeit;Temperatur [°F];rel. Feuchte [% rF]\n" + rows("dd.MM.yyyy HH:mm:ss", ";", ','),
                StandardCharsets.UTF_8);
        Refused refused = assertInstanceOf(Refused.class, Export.of(other).by(saved, Answers.none()));
        RecordedError error = refused.errors().getFirst();
        assertEquals("1:2", error.line() + ":" + error.column());
    }

    @Test
    void an_answer_that_was_not_asked_for_is_noticed() throws IOException {
        Answers answers = Answers.of(Map.of("zone", "UTC", "zoen", "UTC"));
        Path file = file(GERMAN + rows("dd.MM.yyyy HH:mm:ss", ";", ','), StandardCharsets.UTF_8);
        assertInstanceOf(Understood.class, Export.of(file).understand(answers));
        assertTrue(answers.unused().contains("zoen"));
    }

    private static List<String> titles(Understood read) {
        return read.table().columns().stream().map(LoggedColumn::title).toList();
    }

    private static List<String> keys(InDoubt doubt) {
        return doubt.questions().stream().map(Question::key).toList();
    }

    private static List<String> texts(Understanding read, Finding.Kind kind) {
        return read.findings().stream()
                .filter(f -> f.kind() == kind)
                .map(Finding::text)
                .toList();
    }

    private Understood understood(String text, Charset charset, String... answers) throws IOException {
        return assertInstanceOf(Understood.class, read(text, charset, answers));
    }

    private InDoubt inDoubt(String text, Charset charset, String... answers) throws IOException {
        return assertInstanceOf(InDoubt.class, read(text, charset, answers));
    }

    private Understanding read(String text, Charset charset, String... answers) throws IOException {
        Map<String, String> given = new LinkedHashMap<>();
        for (String answer : answers) {
            given.put(answer.substring(0, answer.indexOf('=')), answer.substring(answer.indexOf('=') + 1));
        }
        return Export.of(file(text, charset)).understand(Answers.of(given));
    }

    private Path file(String text, Charset charset) throws IOException {
        Path file = folder.resolve("export.csv");
        Files.write(file, text.getBytes(charset));
        return file;
    }

    private static String rows(String pattern, String separator, char sign) {
        return rows(pattern, separator, sign, "2026-03-31T08:00", 60);
    }

    /** 360 rows with a temperature and a humidity. */
    private static String rows(String pattern, String separator, char sign, String first, int seconds) {
        Function<LocalDateTime, String> format = DateTimeFormatter.ofPattern(pattern, Locale.US)::format;
        StringBuilder text = new StringBuilder();
        LocalDateTime at = LocalDateTime.parse(first);
        for (int i = 0; i < 360; i++, at = at.plusSeconds(seconds)) {
            String numbers = String.format(Locale.ROOT, "20.5%d%s4%d.3", i % 10, separator, i % 7);
            text.append(format.apply(at))
                    .append(separator)
                    .append(numbers.replace('.', sign))
                    .append('\n');
        }
        return text.toString();
    }
}
