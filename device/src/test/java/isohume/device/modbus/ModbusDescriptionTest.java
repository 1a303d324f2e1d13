// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import isohume.device.Channel;
import isohume.device.protocol.Protocol;
import isohume.device.sheet.SheetError;
import isohume.quantity.Quantity;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the reader takes, the published schema takes, and what one refuses the other refuses. */
class ModbusDescriptionTest {
    private static final Path TREE = Path.of("..");
    private static final String GOOD = """
            device: chamber
            title: Portable chamber
            line:
              modbus-tcp: {host: chamber.lab, port: 502, unit: 1}
              timeout-ms: 500
            word-order: little
            channels:
              - name: t
                quantity: temperature
                table: input
                address: 0
                type: int16
                scale: 0.01
                offset: -10
                unit: K
                resolution: 0.01
                limits: [-10, 60]
              - {name: deposit, quantity: deposit, table: holding, address: 7, type: uint16}
            status:
              table: input
              address: 8
              bits: {0: door is open, 15: dry}
            chamber:
              temperature: {address: 0, type: int16, scale: 0.01, unit: °C, limits: [5, 50]}
              humidity: {address: 1, type: uint16, unit: "% RH", limits: [3, 97]}
              run: {address: 2, on: 1, off: 0}
            """;

    private final Schema schema;

    ModbusDescriptionTest() throws IOException {
        schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(TREE.resolve("docs/schemas/device.schema.json")));
    }

    @Test
    void what_was_written_is_what_it_says() {
        ModbusDescription description = Parsed.tcp(GOOD, "chamber.yaml");
        assertEquals("chamber", description.id());
        assertEquals("Portable chamber", description.title());
        assertEquals("chamber.lab:502", description.place());
        assertEquals(1, description.unit());
        assertEquals(Duration.ofMillis(500), description.timeLimit());
        assertTrue(description.isChamber());
        assertEquals(
                List.of(
                        new Channel("chamber", "t", Quantity.TEMPERATURE),
                        new Channel("chamber", "deposit", Quantity.DEPOSIT)),
                description.channels());
        assertEquals(Optional.of(new BigDecimal("0.01")), description.resolution("t"));
        assertEquals(Optional.of(BigDecimal.ONE), description.resolution("deposit"));
        assertEquals(Optional.empty(), description.resolution("x"));
        assertEquals(
                WordOrder.LITTLE, description.registers().getFirst().field().order());
        ModbusDescription elsewhere = description.withAddress("127.0.0.1", 8640);
        assertEquals("127.0.0.1:8640", elsewhere.place());
        assertEquals(description.channels(), elsewhere.channels());
        assertTrue(schemaFinds(GOOD).isEmpty(), schemaFinds(GOOD));
    }

    @Test
    void what_may_be_left_out_has_its_default() {
        String text = GOOD.lines()
                        .filter(line -> !line.matches("( +(timeout-ms|scale|offset|limits)|word-order):.*"))
                        .collect(java.util.stream.Collectors.joining("\n"))
                        .replaceAll("(?s)\nstatus:.*", "")
                + "\n";
        ModbusDescription description = Parsed.tcp(text, "chamber.yaml");
        assertEquals(Duration.ofSeconds(1), description.timeLimit());
        assertFalse(description.isChamber());
        Register first = description.registers().getFirst();
        assertEquals(WordOrder.BIG, first.field().order());
        assertEquals(BigDecimal.ONE, first.field().scale());
        assertEquals(BigDecimal.ZERO, first.field().offset());
        assertEquals(Optional.empty(), first.shown().limits());
        assertTrue(schemaFinds(text).isEmpty(), schemaFinds(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"mirror.yaml", "chamber.yaml"})
    void the_examples_are_read_and_follow_the_schema(String name) throws IOException {
        Path file = TREE.resolve("examples/devices").resolve(name);
        assertEquals(name, Protocol.read(file).id() + ".yaml");
        assertEquals("", schemaFinds(Files.readString(file)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "device: chamber    |                 | 2:1 | device is missing",
                "device: chamber    | device: a/b     | 1:9 | letters, digits, dots",
                "title: Portable chamber | title:     | 2:1 | title is empty",
                "host: chamber.lab, |                 | 4:15 | host is missing",
                "host: chamber.lab  | host: a b       | 4:22 | a name such as",
                "port: 502          | port: 0         | 4:41 | from 1 to 65535",
                "port: 502          | port: 65536     | 4:41 | from 1 to 65535",
                "unit: 1}           | unit: 256}      | 4:52 | from 0 to 255",
                "modbus-tcp:        | modbus:         | 4:3 | is that what modbus was meant to be?",
                "timeout-ms: 500    | timeout-ms: 5   | 5:15 | from 10 to 60000",
                "timeout-ms: 500    | timeout: 500    | 5:3 | did you mean timeout-ms?",
                "word-order: little | word-order: middle | 6:13 | one of big, little",
                "quantity: temperature | quantity: warmth | 9:15 | one of relative_humidity,",
                "table: input⏎    address: 0 | table: coil⏎    address: 0 | 10:12 | one of input, holding",
                "address: 0⏎        | address: -1⏎    | 11:14 | from 0 to 65535",
                "address: 0⏎        | address: 65536⏎ | 11:14 | from 0 to 65535",
                "address: 0⏎    type: int16 | address: 65535⏎    type: int32 | 11:14 | begin at 65534 or before",
                "type: int16⏎       | type: int8⏎     | 12:11 | one of int16, uint16",
                "scale: 0.01⏎       | scale: 0⏎       | 13:12 | other than zero",
                "scale: 0.01⏎       | scale: 0,01⏎    | 13:12 | write the decimal point as a point: 0.01",
                "offset: -10        | offset: cold    | 14:13 | a number is needed",
                "unit: K            | unit: Pa        | 15:11 | °C or K or °F is needed here for temperature",
                "unit: K⏎           | ⏎               | 8:5 | unit is missing",
                "resolution: 0.01   | resolution: 0   | 16:17 | a step above zero",
                "resolution: 0.01⏎  | ⏎               | 8:5 | resolution is missing",
                "limits: [-10, 60]  | limits: [60]    | 17:13 | two numbers are needed",
                "limits: [-10, 60]  | limits: []      | 17:13 | at least one value",
                "limits: [-10, 60]  | limits: [a, b]  | 17:14 | a number in °C",
                "limits: [-10, 60]  | colour: red     | 17:5 | known are name,",
                "type: uint16}      | type: uint16, unit: Pa} | 18:88 | a deposit has no unit",
                "{0: door is open,  | {16: door is open, | 22:10 | a bit from 0 to 15",
                "{0: door is open, 15: dry} | [door is open] | 22:9 | bits is a list",
                "unit: °C, limits: [5, 50] | unit: °C | 24:16 | limits is missing",
                "unit: \"% RH\"     | unit: °C        | 25:46 | % RH or \"1\" is needed here",
                "run: {address: 2, on: 1, off: 0} | halt: 1 | 24:3 | run is missing",
                "off: 0             | on: 0           | 26:28 | is given twice",
                "chamber:⏎          | chamber:⏎  speed: 3⏎ | 24:3 | speed is not known here",
                "status:⏎           | state:⏎         | 19:1 | did you mean status?",
            })
    void a_faulty_description_is_refused_at_its_place_and_by_the_schema(
            String good, String spoilt, String place, String remedy) {
        String from = good.replace('⏎', '\n');
        assertTrue(GOOD.contains(from), "the sample does not have " + from);
        String text = GOOD.replace(from, spoilt == null ? "" : spoilt.replace('⏎', '\n'));
        SheetError error = assertThrows(SheetError.class, () -> Parsed.tcp(text, "chamber.yaml"));
        assertTrue(String.valueOf(error.getMessage()).contains(remedy), error.getMessage());
        assertEquals(place, error.line() + ":" + error.column(), error.getMessage());
        assertFalse(schemaFinds(text).isEmpty(), "the schema takes it");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "name: deposit     | name: t           | another channel has this name",
                "limits: [-10, 60] | limits: [60, -10] | two numbers are needed here, the lower one first",
                "off: 0            | off: 1            | another number than for on",
            })
    void what_a_schema_cannot_say_is_refused_all_the_same(String good, String spoilt, String remedy) {
        String text = GOOD.replace(good, spoilt);
        SheetError error = assertThrows(SheetError.class, () -> Parsed.tcp(text, "chamber.yaml"));
        assertTrue(error.remedy().contains(remedy), error.getMessage());
        assertTrue(schemaFinds(text).isEmpty(), "the schema could say it now: move the sample");
    }

    private String schemaFinds(String text) {
        try {
            StringBuilder found = new StringBuilder();
            schema.validate(text, InputFormat.YAML)
                    .forEach(error -> found.append(error).append('\n'));
            return found.toString();
        } catch (IllegalArgumentException e) {
            return "not well-formed: " + e.getMessage();
        }
    }
}
