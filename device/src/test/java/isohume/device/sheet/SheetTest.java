// SPDX-License-Identifier: Apache-2.0
package isohume.device.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.Phase;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetTest {
    private static final String PLAN = """
            title: Two points
            deposit: ice
            made: 2026-03-31
            serial: 00123
            hold: true
            points:
              - temperature: 20
                humidity: 50.0
              - temperature: -10.5
                humidity: 1e1
            limits: [-60, 95]
            notes: [dry, wet]
            chamber:
              run: {address: 2, on: 1}
            """;

    @Test
    void what_a_person_wrote_is_given_back_by_kind() {
        Sheet plan = Sheet.parse(PLAN, "plan.yaml");
        assertEquals("Two points", plan.text("title"));
        assertEquals(Phase.ICE, plan.oneOf("deposit", Phase.class));
        assertEquals(LocalDate.of(2026, 3, 31), plan.date("made"));
        assertEquals("00123", plan.text("serial"));
        assertTrue(plan.truthOr("hold", false));
        assertEquals(List.of(new BigDecimal("-60"), new BigDecimal("95")), plan.numbers("limits", "°C"));
        assertEquals(List.of("dry", "wet"), plan.texts("notes"));
        List<Sheet> points = plan.list("points");
        assertEquals(new BigDecimal("50.0"), points.get(0).number("humidity", "% RH"));
        assertEquals(new BigDecimal("-10.5"), points.get(1).number("temperature", "°C"));
        assertEquals(0, BigDecimal.TEN.compareTo(points.get(1).number("humidity")));
        Sheet run = plan.section("chamber").section("run");
        assertEquals(2, run.whole("address", 0, 65_535));
        assertEquals(List.of("address", "on"), run.keys());
        run.refuseOthers();
        plan.refuseOthers();
    }

    @Test
    void what_is_not_there_has_the_fallback() {
        Sheet sheet = Sheet.parse("a: 1\nempty:\n", "x.yaml");
        assertFalse(sheet.has("b"));
        assertFalse(sheet.has("empty"));
        assertEquals("none", sheet.textOr("b", "none"));
        assertEquals(BigDecimal.ONE, sheet.numberOr("empty", "", BigDecimal.ONE));
        assertEquals(7, sheet.wholeOr("b", 0, 9, 7));
        assertEquals(Phase.WATER, sheet.oneOfOr("b", Phase.class, Phase.WATER));
        assertTrue(sheet.optional("b").isEmpty());
        assertEquals(List.of(), sheet.optionalList("b"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "a: warm      | x.yaml:1:4: a is \"warm\"; a number in °C is needed here",
                "a: 20,5      | x.yaml:1:4: a is \"20,5\"; write the decimal point as a point: 20.5",
                "a: .nan      | x.yaml:1:4: a is \".nan\"; a number in °C is needed here, and a finite one",
                "a: -.inf     | x.yaml:1:4: a is \"-.inf\"; a number in °C is needed here, and a finite one",
                "a: Infinity  | x.yaml:1:4: a is \"Infinity\"; a number in °C is needed here, and a finite one",
                "a: '20'      | x.yaml:1:4: a is \"20\"; write the number without quotation marks",
                "a: 1e99      | x.yaml:1:4: a is \"1e99\"; a number in °C is needed here",
                "a: 20 °C     | x.yaml:1:4: a is \"20 °C\"; a number in °C is needed here",
                "a: 0x10      | x.yaml:1:4: a is \"0x10\"; a number in °C is needed here",
                "a: 1_000     | x.yaml:1:4: a is \"1_000\"; a number in °C is needed here",
                "a: 12:30     | x.yaml:1:4: a is \"12:30\"; a number in °C is needed here",
                "a: [1, 2]    | x.yaml:1:4: a is a list; a number in °C is needed here",
                "a: {b: 2}    | x.yaml:1:4: a is a section; a number in °C is needed here",
                "a:           | x.yaml:1:1: a is empty; a number in °C is needed here",
                "b: 1         | x.yaml:1:1: a is missing; add it to this section: a number in °C",
            })
    void a_text_where_a_number_should_be_is_named(String document, String message) {
        assertMessage(message, document, sheet -> sheet.number("a", "°C"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2.0", "1e1", "017", "300", "-1", "two", "99999999999999999999"})
    void a_whole_number_is_whole_and_within_its_bounds(String text) {
        SheetError error = assertThrows(
                SheetError.class, () -> Sheet.parse("unit: " + text, "x.yaml").whole("unit", 0, 255));
        assertEquals("a whole number from 0 to 255 is needed here", error.remedy());
        assertEquals(1, error.line());
        assertEquals(7, error.column());
    }

    @Test
    void a_misspelt_word_is_answered_with_the_one_that_was_meant() {
        assertMessage(
                "x.yaml:1:10: deposit is \"Ize\"; one of water, ice is needed here; did you mean ice?",
                "deposit: Ize",
                sheet -> sheet.oneOf("deposit", Phase.class));
        assertMessage(
                "x.yaml:2:1: adress is not known here; did you mean address? known are port, address",
                "port: 1\nadress: 2",
                sheet -> {
                    int port = sheet.whole("port", 0, 9);
                    assertEquals(1, port);
                    assertFalse(sheet.has("address"));
                    return refusingOthers(sheet);
                });
        assertMessage(
                "x.yaml:1:1: address is missing; add it to this section: a whole number from 0 to 9; is that what"
                        + " adress was meant to be?",
                "adress: 2",
                sheet -> sheet.whole("address", 0, 9));
    }

    @Test
    void a_decimal_comma_in_braces_is_recognised() {
        assertMessage(
                "x.yaml:1:14: \"001\" stands alone; if it belongs to the number before it, write a decimal point,"
                        + " not a comma",
                "a: {scale: 0,001}",
                sheet -> {
                    Sheet a = sheet.section("a");
                    assertEquals(BigDecimal.ZERO, a.number("scale"));
                    return refusingOthers(a);
                });
    }

    @Test
    void a_callers_own_error_has_the_place_of_what_it_is_about() {
        Sheet sheet = Sheet.parse("a: 1\npoint:\n  humidity: 104\n", "plan.yaml");
        Sheet point = sheet.section("point");
        assertEquals(
                "plan.yaml:3:13: humidity is 104; at most 100 % RH is possible",
                point.wrong("humidity", "at most 100 % RH is possible").getMessage());
        assertEquals(
                "plan.yaml:3:13: too wet; dry it",
                point.wrong("humidity", "too wet", "dry it").getMessage());
        assertEquals("plan.yaml:3:3: a; b", point.wrong("absent", "a", "b").getMessage());
        assertEquals("plan.yaml:3:3: a; b", point.wrongHere("a", "b").getMessage());
        assertEquals(
                "plan.yaml:1:1: \"a\" stands here; c", sheet.wrongKey("a", "c").getMessage());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "a: 1⏎a: 2            | 2 | 1 | a is given twice",
                "a: !!java.net.URL x  | 1 | 4 | not well-formed YAML (Global tag is not allowed",
                "a: !mine x           | 1 | 4 | tag !mine",
                "a: !!binary eA==     | 1 | 4 | tag tag:yaml.org,2002:binary",
                "a: &x {b: *x}        | 1 | 4 | contains itself",
                "a: *x                | 1 | 4 | undefined alias",
                "? [1, 2]⏎: 3         | 1 | 3 | a list stands where a key should be",
                "- 1⏎- 2              | 1 | 1 | begins with a list",
                "just words           | 1 | 1 | begins with a single value",
                "a: 1⏎---⏎b: 2        | 2 | 1 | another document",
                "a:⏎→b: 1             | 2 | 1 | not well-formed",
                "a: [1, 2             | 1 | 9 | not well-formed",
                "a: 'x                | 1 | 6 | not well-formed",
                "a: 1⏎ b: 2           | 2 | 3 | not well-formed",
                "a: 1⏎b: ␇            | 2 | 4 | U+0007",
            })
    void what_is_not_a_plain_document_is_refused_at_its_place(String document, int line, int column, String what) {
        String text = document.replace('⏎', '\n').replace('→', '\t').replace('␇', '\u0007');
        SheetError error = assertThrows(SheetError.class, () -> Sheet.parse(text, "x.yaml"));
        assertTrue(error.what().contains(what), error.getMessage());
        assertEquals(line + ":" + column, error.line() + ":" + error.column(), error.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "# only a remark\n", "---\n", "~", "\uFEFF"})
    void an_empty_document_is_refused(String text) {
        assertEquals(
                "x.yaml: the document is empty; write at least one \"key: value\" line",
                assertThrows(SheetError.class, () -> Sheet.parse(text, "x.yaml"))
                        .getMessage());
    }

    @Test
    void a_document_that_explodes_is_refused() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 30; i++) {
            bomb.append("a%d: &a%d [*a%d, *a%d, *a%d]\n".formatted(i, i, i - 1, i - 1, i - 1));
        }
        SheetError aliases = assertThrows(SheetError.class, () -> Sheet.parse(bomb.toString(), "x.yaml"));
        assertTrue(aliases.what().contains("too deeply"), aliases.getMessage());
        String deep = "[".repeat(50_000);
        SheetError nested = assertThrows(SheetError.class, () -> Sheet.parse("a: " + deep, "x.yaml"));
        assertTrue(nested.what().contains("too deeply"), nested.getMessage());
        String large = "a: " + "x".repeat(1 << 20);
        SheetError size = assertThrows(SheetError.class, () -> Sheet.parse(large, "x.yaml"));
        assertTrue(size.what().contains("larger than 1 MB"), size.getMessage());
    }

    @Test
    void a_file_is_read_with_or_without_a_byte_order_mark(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("a.yaml"), "\uFEFFunit: °C\n");
        assertEquals("°C", Sheet.read(file).text("unit"));
        Files.writeString(file, "unit: °C\r\n");
        assertEquals("°C", Sheet.read(file).text("unit"));
    }

    @Test
    void a_file_that_cannot_be_read_says_why(@TempDir Path folder) throws IOException {
        assertReadError("gone.yaml: there is no such file; check the name and the folder", folder.resolve("gone.yaml"));
        Path latin = folder.resolve("latin.yaml");
        Files.write(latin, "a: 1\nunit: °C\n".getBytes(StandardCharsets.ISO_8859_1));
        assertReadError("latin.yaml:2:7: the text is not UTF-8 here; save the document as UTF-8", latin);
        Path large = folder.resolve("large.yaml");
        Files.write(large, new byte[3 << 20]);
        assertReadError(
                "large.yaml: the document is larger than 1 MB; a document of this kind has a few kilobytes", large);
        SheetError directory = assertThrows(SheetError.class, () -> Sheet.read(folder));
        assertTrue(directory.what().contains("cannot be read"), directory.getMessage());
    }

    private static void assertReadError(String message, Path file) {
        assertEquals(
                message, assertThrows(SheetError.class, () -> Sheet.read(file)).getMessage());
    }

    private static void assertMessage(String message, String document, Function<Sheet, Object> reading) {
        Sheet sheet = Sheet.parse(document, "x.yaml");
        assertEquals(
                message,
                assertThrows(SheetError.class, () -> reading.apply(sheet)).getMessage());
    }

    private static Sheet refusingOthers(Sheet sheet) {
        sheet.refuseOthers();
        return sheet;
    }
}
