// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.export.Understanding.InDoubt;
import isohume.device.export.Understanding.Refused;
import isohume.device.export.Understanding.Understood;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Layouts as technicians meet them; the files are invented. What they show can be read in them by eye. */
class LayoutsMetTest {
    private static final String BERLIN = "zone=Europe/Berlin";

    @TempDir
    private Path folder;

    @Test
    void columns_that_blanks_set_apart_are_read() throws IOException {
        Understood read = understood(sample("aligned-columns.txt"), BERLIN);
        assertEquals(List.of("temperature [°C]", "relative_humidity [% RH]"), titles(read));
        assertEquals(Instant.parse("2026-03-31T06:00:00Z"), read.table().at(0));
        assertEquals(new BigDecimal("45.3"), read.table().shown(1, 1).orElseThrow());
        assertEquals(40, read.table().size());
    }

    @Test
    void a_saved_profile_reads_columns_that_blanks_set_apart() throws IOException {
        Path file = sample("aligned-columns.txt");
        Profile saved = understood(file, BERLIN).profile();
        assertEquals(saved, Profile.read(saved.document(), "blanks.yaml"));
        Understood again = assertInstanceOf(
                Understood.class, Export.of(file).by(Profile.read(saved.document(), "blanks.yaml"), Answers.none()));
        assertEquals(40, again.table().size());
    }

    @Test
    void a_cell_that_is_missing_between_blanks_moves_no_other_one_into_its_place() throws IOException {
        String text = Files.readString(sample("aligned-columns.txt")).replaceFirst("    20.70 ", "          ");
        Refused refused = assertInstanceOf(Refused.class, read(file(text), BERLIN));
        assertEquals(
                "the line has 3 cells, the others have 4",
                refused.errors().getFirst().what());
    }

    @Test
    void one_blank_between_cells_is_enough() throws IOException {
        String text = """
                Date Time Temp_C RH_%RH
                2026-03-31 08:00:00 20.5 45.0
                2026-03-31 08:01:00 20.6 45.1
                2026-03-31 08:02:00 20.7 45.2
                """;
        Understood read = understood(file(text), BERLIN);
        assertEquals(List.of("temperature [°C]", "relative_humidity [% RH]"), titles(read));
        assertEquals(new BigDecimal("45.2"), read.table().shown(2, 1).orElseThrow());
    }

    @Test
    void the_half_of_the_day_may_have_a_column_of_its_own() throws IOException {
        Path file = sample("half-days-in-a-column.csv");
        Understood read = understood(file, "zone=UTC");
        assertEquals(Instant.parse("2026-03-31T08:00:00Z"), read.table().at(0));
        assertEquals(Instant.parse("2026-03-31T12:30:00Z"), read.table().at(9)); // 12:30 PM
        assertEquals(Instant.parse("2026-03-31T13:00:00Z"), read.table().at(10)); // 01:00 PM
        Profile saved = Profile.read(read.profile().document(), "halves.yaml");
        assertEquals(read.profile(), saved);
        Understood again = assertInstanceOf(Understood.class, Export.of(file).by(saved, Answers.none()));
        assertEquals(Instant.parse("2026-03-31T13:00:00Z"), again.table().at(10));
    }

    @Test
    void a_date_with_its_time_may_have_the_half_of_the_day_beside_it() throws IOException {
        String text = """
                Time;;Temp [°C]
                2026-03-31 01:00:00;PM;20.5
                2026-03-31 01:01:00;PM;20.6
                2026-03-31 01:02:00;PM;20.7
                """;
        assertEquals(
                Instant.parse("2026-03-31T13:00:00Z"),
                understood(file(text), "zone=UTC").table().at(0));
    }

    @Test
    void commas_between_and_in_quoted_numbers_are_told_apart() throws IOException {
        Understood read = understood(sample("decimal-comma-quoted.csv"), BERLIN);
        assertEquals(new BigDecimal("20.60"), read.table().shown(1, 0).orElseThrow());
        assertEquals(
                0, new BigDecimal("101350").compareTo(read.table().shown(0, 1).orElseThrow())); // 1.013,5 hPa in Pa
    }

    @Test
    void a_summary_behind_the_readings_is_no_reading() throws IOException {
        Understood read = understood(sample("summary-behind.txt"));
        assertEquals(40, read.table().size());
        assertEquals(Instant.parse("2026-03-31T06:00:00Z"), read.table().at(0));
        assertEquals(
                3,
                read.findings().stream()
                        .filter(f -> f.text().equals("the line after the readings is passed over"))
                        .count());
    }

    @Test
    void a_summary_above_the_readings_is_no_reading() throws IOException {
        String text = "Serial;4711\nMin;20.5\nMax;20.7\nStart;31.03.2026 08:00:00\n" + SEMICOLONS;
        assertEquals(3, understood(file(text), BERLIN).table().size());
    }

    private static final String SEMICOLONS = """
            Time;Temp [°C];RH [%]
            2026-03-31 08:00:00;20.5;45.0
            2026-03-31 08:01:00;20.6;45.1
            2026-03-31 08:02:00;20.7;45.2
            """;

    @Test
    void headings_that_come_again_are_passed_over() throws IOException {
        String text = SEMICOLONS + SEMICOLONS.replace("08:", "09:");
        assertEquals(6, understood(file(text), BERLIN).table().size());
    }

    @Test
    void one_heading_over_two_columns_makes_two_channels() throws IOException {
        String text = SEMICOLONS.replace("RH [%]", "Temp [°C]");
        assertEquals(List.of("temperature [°C]", "temperature_2 [°C]"), titles(understood(file(text), BERLIN)));
    }

    @ParameterizedTest
    @CsvSource({"---", "n/a", "NaN", "'--.-'"})
    void dashes_and_their_like_are_gaps(String cell) throws IOException {
        Understood read = understood(file(SEMICOLONS.replace("20.6", cell)), BERLIN);
        assertEquals(Optional.empty(), read.table().shown(1, 0));
        assertTrue(read.findings().stream().anyMatch(f -> f.kind() == Finding.Kind.GAPS));
    }

    @ParameterizedTest
    @CsvSource({"OL", "Error", "> 100"})
    void other_words_are_asked_about_or_refused(String cell) throws IOException {
        Understanding read = read(file(SEMICOLONS.replace("20.6", cell)), BERLIN);
        assertTrue(!(read instanceof Understood), read.toString());
    }

    @Test
    void headings_that_stand_over_other_columns_are_not_believed() throws IOException {
        String together = "Date;Time;Temp [°C];RH [%]\n" + SEMICOLONS.substring(SEMICOLONS.indexOf('\n') + 1);
        assertEquals(List.of("column.2", "column.3"), keys(together));
        String apart = SEMICOLONS.replace("31 08", "31;08");
        assertEquals(List.of("column.3", "column.4"), keys(apart));
    }

    @Test
    void one_comma_for_both_uses_is_refused_also_with_one_column() throws IOException {
        String text = """
                Time,Temp [°C]
                2026-03-31 08:00:00,20,5
                2026-03-31 08:01:00,20,6
                2026-03-31 08:02:00,20,7
                """;
        Refused refused = assertInstanceOf(Refused.class, read(file(text), BERLIN));
        assertEquals(
                "the headings have 2 cells and the readings 3",
                refused.errors().getFirst().what());
    }

    @Test
    void a_separator_at_the_end_of_each_row_is_no_column() throws IOException {
        String text = SEMICOLONS.replaceAll("(?m)^(2026.*)$", "$1;").replace(';', ',');
        assertEquals(List.of("temperature [°C]", "relative_humidity [% RH]"), titles(understood(file(text), BERLIN)));
    }

    @Test
    void zero_bytes_in_a_text_are_refused() throws IOException {
        Refused refused = assertInstanceOf(Refused.class, read(file(SEMICOLONS + "\0\0\0\0"), BERLIN));
        assertEquals("the file is not a text", refused.errors().getFirst().what());
    }

    private Path sample(String name) throws IOException {
        Path file = folder.resolve(name);
        try (InputStream in = Objects.requireNonNull(LayoutsMetTest.class.getResourceAsStream(name))) {
            Files.write(file, in.readAllBytes());
        }
        return file;
    }

    private Path file(String text) throws IOException {
        return Files.write(folder.resolve("export.txt"), text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> titles(Understood read) {
        return read.table().columns().stream().map(LoggedColumn::title).toList();
    }

    private List<String> keys(String text) throws IOException {
        return assertInstanceOf(InDoubt.class, read(file(text), BERLIN)).questions().stream()
                .map(Question::key)
                .toList();
    }

    private static Understood understood(Path file, String... answers) {
        return assertInstanceOf(Understood.class, read(file, answers));
    }

    private static Understanding read(Path file, String... answers) {
        Map<String, String> given = new LinkedHashMap<>();
        for (String answer : answers) {
            given.put(answer.substring(0, answer.indexOf('=')), answer.substring(answer.indexOf('=') + 1));
        }
        return Export.of(file).understand(Answers.of(given));
    }
}
