// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import isohume.device.sheet.SheetError;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the reader takes, the published schema takes, and what one refuses the other refuses. */
class ProfileTest {
    private static final Path TREE = Path.of("..");
    private static final String GOOD = """
            import-profile: 1
            title: "Loggers"
            encoding: windows-1252
            delimiter: semicolon
            decimal-sign: comma
            grouped-thousands: false
            heading-rows: 1
            time:
              counting: calendar
              date: {column: 1, heading: "Datum"}
              clock-column: {column: 2, heading: "Uhrzeit"}
              date-order: day_first
              zone: "Europe/Berlin"
              clock: follows
            columns:
              - {column: 3, heading: "Temp [°C]", channel: temperature, unit: "°C"}
              - {column: 4, heading: "rF [%]", channel: relative_humidity, unit: "% RH"}
            gaps: ["Err"]
            doubled-rows: ask
            """;

    private final Schema schema;

    ProfileTest() throws IOException {
        schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(TREE.resolve("docs/schemas/import-profile.schema.json")));
    }

    @Test
    void a_profile_is_written_as_it_is_read() {
        assertEquals(GOOD, Profile.read(GOOD, "p.yaml").document());
        assertTrue(schema.validate(GOOD, InputFormat.YAML).isEmpty());
    }

    @Test
    void the_one_in_the_documents_is_good() throws IOException {
        String page = Files.readString(TREE.resolve("docs/formats/import-profile.md"));
        String example = page.substring(page.indexOf("```yaml") + 8, page.lastIndexOf("```"));
        assertEquals(example, Profile.read(example, "p.yaml").document());
    }

    @ParameterizedTest(name = "{0} for {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "import-profile: 3 | import-profile: 1 | 1:17",
                "encoding: klingon-8 | encoding: windows-1252 | 3:11",
                "delimiter: dash | delimiter: semicolon | 4:12",
                "decimal-sign: dot | decimal-sign: comma | 5:15",
                "heading-rows: 3 | heading-rows: 1 | 7:15",
                "date-order: year_last | date-order: day_first | 12:15",
                "zone: \"Mars\" | zone: \"Europe/Berlin\" | 13:9",
                "channel: warmth | channel: temperature | 16:48",
                "unit: \"hPa\" | unit: \"°C\" | 16:67",
                "doubled-rows: some | doubled-rows: ask | 19:15",
                "colour: red | doubled-rows: ask | 19:1",
            })
    void both_refuse_the_same(String bad, String good, String place) {
        String text = GOOD.replace(good, bad);
        SheetError error = assertThrows(SheetError.class, () -> Profile.read(text, "p.yaml"));
        assertEquals(place, error.line() + ":" + error.column());
        boolean judged = !bad.startsWith("encoding") && !bad.startsWith("zone"); // names that no schema can list
        assertEquals(judged, !schema.validate(text, InputFormat.YAML).isEmpty());
    }

    @Test
    void a_date_order_is_needed_for_dates() {
        String text = GOOD.replace("  date-order: day_first\n", "");
        assertThrows(SheetError.class, () -> Profile.read(text, "p.yaml"));
        assertFalse(schema.validate(text, InputFormat.YAML).isEmpty());
    }
}
