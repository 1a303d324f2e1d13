// SPDX-License-Identifier: Apache-2.0
package isohume.device.recorded;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Channel;
import isohume.device.recorded.RecordedReadings.Row;
import isohume.quantity.Phase;
import isohume.quantity.Quantity;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecordedReadingsTest {
    private static final Channel HUMIDITY = new Channel("A-1042", "relative_humidity", Quantity.RELATIVE_HUMIDITY);
    private static final Channel SECOND = new Channel("A-1042", "temperature_2", Quantity.TEMPERATURE);
    private static final String HEADINGS =
            "time,point,deposit,dew_point [°C],temperature [°C],pressure [Pa],A-1042/relative_humidity [% RH]\n";
    private static final String GOOD = "2026-03-31T08:00:00Z,1,water,9.27,20.01,101325,49.8\n";

    @Test
    void rows_have_what_was_written_in_the_quantities_units() {
        RecordedReadings readings = RecordedReadings.parse("""
                time,point,deposit,dew_point [K],temperature [°F],pressure [hPa],mirror_pressure [kPa],A-1042/relative_humidity [1],A-1042/temperature_2 [°C]
                2026-03-31T10:00:00+02:00,1,ice,263.15,68,1013.25,101.3,0.4980,20.10
                2026-03-31T08:00:10.5Z,2,water,283.15,-4,990,99,,
                """, "readings.csv");
        assertEquals(List.of(HUMIDITY, SECOND), readings.channels());
        Row first = readings.rows().getFirst();
        assertEquals(2, first.line());
        assertEquals(Instant.parse("2026-03-31T08:00:00Z"), first.at());
        assertEquals(1, first.point());
        assertEquals(Phase.ICE, first.deposit());
        assertNumber("-10", first.dewPoint());
        assertNumber("20", first.temperature());
        assertNumber("101325", first.pressure());
        assertNumber("101300", first.mirrorPressure());
        assertEquals(
                Map.of(HUMIDITY, new BigDecimal("49.8000"), SECOND, new BigDecimal("20.10")),
                first.shown()); // with the digits written
        Row second = readings.rows().getLast();
        assertEquals(Map.of(), second.shown());
        assertNumber("-20", second.temperature());
        assertEquals(Phase.WATER, second.deposit());
    }

    @Test
    void without_a_pressure_at_the_mirror_it_is_that_of_the_air() {
        assertNumber("101325", parse(GOOD).rows().getFirst().mirrorPressure());
    }

    @Test
    void what_is_written_is_read_again() {
        Row row = new Row(
                2,
                Instant.parse("2026-03-31T08:00:00.250Z"),
                3,
                Phase.ICE,
                new BigDecimal("-10.20"),
                new BigDecimal("20.00"),
                new BigDecimal("101325"),
                new BigDecimal("101300"),
                Map.of(SECOND, new BigDecimal("20.1")),
                Map.of());
        StringWriter text = new StringWriter();
        new RecordedWriter(List.of(HUMIDITY, SECOND), text).write(row);
        RecordedReadings readings = RecordedReadings.parse(text.toString(), "readings.csv");
        assertEquals(List.of(HUMIDITY, SECOND), readings.channels());
        assertEquals(List.of(row), readings.rows());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\uFEFF", "\n\n"})
    void a_mark_or_empty_lines_in_front_do_no_harm(String before) {
        assertEquals(
                1,
                RecordedReadings.parse(before + HEADINGS + GOOD + "\n", "readings.csv")
                        .rows()
                        .size());
    }

    @Test
    void windows_line_ends_and_quoted_cells_are_understood() {
        String text = HEADINGS.replace("A-1042/relative_humidity [% RH]", "\"A-1042/relative_humidity [%RH]\"") + GOOD;
        assertEquals(
                parse(GOOD).rows(),
                RecordedReadings.parse(text.replace("\n", "\r\n"), "readings.csv")
                        .rows());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "9.27    | warm    | 2:4 | dew_point is \"warm\"; a number in °C is needed here",
                "9.27    | \"9,27\" | 2:4 | dew_point is \"9,27\"; write the decimal point as a point: 9.27",
                "9.27    | NaN     | 2:4 | dew_point is \"NaN\"; a number in °C is needed here, and a finite one",
                "9.27    | -inf    | 2:4 | dew_point is \"-inf\"; a number in °C is needed here, and a finite one",
                "9.27    |         | 2:4 | dew_point is empty; a reference needs a value in every line",
                "9.27    | -273.15 | 2:4 | dew_point is \"-273.15\"; nothing can have this value, and a reference needs one in every line",
                "101325  | -1      | 2:6 | pressure is \"-1\"; nothing can have this value, and a reference needs one in every line",
                "9.27    | 1234567890.1234567890 | 2:4 | dew_point is \"1234567890.1234567890\"; a number in °C is needed here with 18 digits at most",
                "49.8    | dry     | 2:7 | A-1042/relative_humidity is \"dry\"; a number in % RH is needed here",
                ",1,     | ,0,     | 2:2 | point is \"0\"; the point's number in the plan is needed here, 1 to 9999",
                ",1,     | ,1.5,   | 2:2 | point is \"1.5\"; the point's number in the plan is needed here, 1 to 9999",
                ",1,     | ,,      | 2:2 | point is empty; the point's number in the plan is needed here, 1 to 9999",
                "water   | Wasser  | 2:3 | deposit is \"Wasser\"; water or ice is needed here",
                "00Z     | 00      | 2:1 | time is \"2026-03-31T08:00:00\"; write it with a T and its distance from UTC, as in 2026-03-31T08:00:00+01:00, or Z for UTC",
                "2026-03-31T08:00:00Z | 31.03.2026 08:00 | 2:1 | time is \"31.03.2026 08:00\"; a time such as 2026-03-31T08:00:00Z or 2026-03-31T10:00:00+02:00 is needed here",
                "9.27    | 9,27    | 2   | the line has 8 cells, the headings are 7; is there a decimal comma in a number? write a point",
                ",49.8   |         | 2   | the line has 6 cells, the headings are 7; leave a cell empty where an instrument shows nothing, but keep its comma",
            })
    void a_cell_that_cannot_be_used_is_named(String good, String spoilt, String place, String message) {
        String line = GOOD.replace(good, spoilt == null ? "" : spoilt);
        assertEquals(List.of("readings.csv:" + place + ": " + message), errors(HEADINGS + line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "dew_point [°C],    |                   | 1 | the column dew_point [°C] is missing; add it",
                "time,              |                   | 1 | the column time is missing; add it",
                "[Pa]               | [bar]             | 1:6 | pressure has the unit [bar]; write [Pa] or [hPa] or [kPa] behind it",
                "[Pa]               | [°C]              | 1:6 | pressure has the unit [°C]; write [Pa] or [hPa] or [kPa] behind it",
                "pressure [Pa]      | pressure          | 1:6 | pressure has no unit; write [Pa] or [hPa] or [kPa] behind it",
                ",point,            | ,point [1],       | 1:2 | point has the unit 1; remove the unit",
                "temperature [°C]   | dew_point [°C]    | 1:5 | a second column dew_point; keep one of the two",
                "[% RH]             | [%]               | 1:7 | A-1042/relative_humidity has the unit [%]; write [% RH] or [1] behind it",
            })
    void a_heading_that_cannot_be_used_is_named(String good, String spoilt, String place, String message) {
        String headings = HEADINGS.replace(good, spoilt == null ? "" : spoilt);
        assertEquals(List.of("readings.csv:" + place + ": " + message), errors(headings + GOOD));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Pressure [Pa]", "A-1042/humidity [% RH]", "A 1042/temperature [°C]", "/temperature [°C]", "x]["
            })
    void a_column_that_is_not_known_is_named_with_those_that_are(String heading) {
        String error =
                errors(HEADINGS.replace("deposit", "deposit," + heading) + GOOD).getFirst();
        assertTrue(error.startsWith("readings.csv:1:4: the "), error);
        assertTrue(error.contains("known are time, point,"), error);
    }

    @Test
    void a_file_for_another_country_is_recognised() {
        assertEquals(
                List.of("readings.csv:1: the columns are separated by semicolons; save the file again with commas"
                        + " between the columns and a decimal point in the numbers"),
                errors((HEADINGS + GOOD).replace(',', ';')));
        assertEquals(
                List.of(
                        "readings.csv:1: the columns are separated by tabs; save the file again with commas between them"),
                errors((HEADINGS + GOOD).replace(',', '\t')));
    }

    @Test
    void time_must_not_go_backwards_but_may_stand_still() {
        assertEquals(2, parse(GOOD + GOOD).rows().size());
        assertEquals(
                List.of("readings.csv:3:1: the time 2026-03-31T07:59:59Z is before the one above, 2026-03-31T08:00:00Z;"
                        + " the lines have to be in the order of time; was a clock set back?"),
                errors(HEADINGS + GOOD + GOOD.replace("08:00:00", "07:59:59")));
    }

    @Test
    void a_file_without_readings_is_refused() {
        String empty = "the file is empty; a line of headings and at least one line of readings are needed";
        assertEquals(List.of("readings.csv: " + empty), errors(""));
        assertEquals(List.of("readings.csv: " + empty), errors("\n\n"));
        assertEquals(
                List.of("readings.csv: there are headings, but no readings; add at least one line of readings"),
                errors(HEADINGS));
        assertTrue(errors("time,point,deposit,dew_point [°C],temperature [°C],pressure [Pa]\n")
                .getFirst()
                .contains("there is no column of an instrument"));
    }

    @Test
    void twenty_errors_are_listed_together_and_no_more() {
        RecordingRefused refused = assertThrows(
                RecordingRefused.class, () -> parse(GOOD.replace("49.8", "x").repeat(30)));
        assertEquals(20, refused.errors().size());
        assertEquals(21, refused.errors().getLast().line());
        assertEquals(21, String.valueOf(refused.getMessage()).lines().count());
        assertEquals(3, errors(HEADINGS + GOOD.replace("49.8", "x").repeat(3)).size());
    }

    @Test
    void a_quotation_mark_that_is_not_closed_is_refused() {
        String error = errors(HEADINGS + GOOD + "\"2026").getFirst();
        assertTrue(error.startsWith("readings.csv:2: the line after this one is not well-formed CSV"), error);
    }

    @Test
    void a_line_that_never_ends_is_refused() {
        String error = errors(HEADINGS + GOOD + "x".repeat(3 << 20)).getFirst();
        assertTrue(error.contains("not well-formed CSV"), error);
    }

    private static RecordedReadings parse(String rows) {
        return RecordedReadings.parse(HEADINGS + rows, "readings.csv");
    }

    private static List<String> errors(String text) {
        RecordingRefused refused =
                assertThrows(RecordingRefused.class, () -> RecordedReadings.parse(text, "readings.csv"));
        return refused.errors().stream().map(RecordedError::message).toList();
    }

    private static void assertNumber(String number, BigDecimal actual) {
        assertEquals(0, new BigDecimal(number).compareTo(actual), actual.toString());
    }
}
