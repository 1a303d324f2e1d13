// SPDX-License-Identifier: Apache-2.0
package isohume.device.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import isohume.device.driver.DeviceDescription;
import isohume.device.sheet.SheetError;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What the readers take, the published schema takes, and what one refuses the other refuses. */
class ProtocolTest {
    private static final Path TREE = Path.of("..");
    private final Schema schema;

    ProtocolTest() throws IOException {
        schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(TREE.resolve("docs/schemas/device.schema.json")));
    }

    @ParameterizedTest
    @EnumSource
    void each_has_a_worked_description_that_is_read_and_follows_the_schema(Protocol protocol) throws IOException {
        Path file = TREE.resolve("examples/devices/" + protocol.key() + ".yaml");
        DeviceDescription read = Protocol.read(file);
        assertFalse(read.channels().isEmpty());
        assertTrue(read.channels().stream()
                .allMatch(channel -> read.resolution(channel.name()).isPresent()));
        assertEquals(Files.readString(file), protocol.scaffold());
        assertEquals("", schemaFinds(protocol.scaffold()));
    }

    @Test
    void a_description_without_a_protocol_is_of_modbus_tcp() {
        String text = Protocol.MODBUS_TCP.scaffold();
        String older = text.replace("protocol: modbus-tcp\n", "");
        assertEquals(
                Protocol.parse(text, "new.yaml").place(),
                Protocol.parse(older, "old.yaml").place());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "MODBUS_RTU | protocol: modbus-rtu | protocol: modbus-ascii | one of modbus-tcp",
                "MODBUS_RTU | unit: 11  | unit: 248  | from 1 to 247",
                "MODBUS_RTU | path: /dev/ttyUSB0 | path: ttyUSB0 | the port's whole name",
                "MODBUS_RTU | baud: 19200 | baud: 10 | from 50 to 4000000",
                "MODBUS_RTU | parity: even | parity: mark | one of none, even, odd",
                "TEXT | reply-end: crlf | reply-end: tab | one of cr, lf, crlf",
                "TEXT | exchanges: | exchange: | was meant to be",
                "SCPI | MEAS:CURR:DC? (@101) | CONF:CURR:DC | one query is needed here",
                "SCPI | from: [4, 20] | from: [4] | two numbers",
                "SCPI | iec60751: {r0: 100} | iec60751: {r0: 0} | R0 > 0",
                "SCPI | signal: mA | signal: µA | one of mA, A, mV, V",
                "MQTT | topic: bench/11, pointer: /t | topic: bench/#, pointer: /t | a whole topic",
                "MQTT | pointer: /t, | pointer: t, | a pointer such as",
                "HTTP_JSON | path: /11.json | path: 11.json | a path such as",
                "HTTP_JSON | host: 192.168.1.60, | host: a/b, | a name such as",
            })
    void a_faulty_description_is_refused_and_by_the_schema_too(
            Protocol protocol, String good, String spoilt, String remedy) {
        assertTrue(protocol.scaffold().contains(good), "the sample does not have " + good);
        String text = protocol.scaffold().replace(good, spoilt);
        SheetError error = assertThrows(SheetError.class, () -> Protocol.parse(text, "x.yaml"));
        assertTrue(String.valueOf(error.getMessage()).contains(remedy), error.getMessage());
        assertFalse(schemaFinds(text).isEmpty(), "the schema takes it");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "TEXT | group: rh, | group: humidity, | a group of a reply is needed here",
                "TEXT | (?<rh>[-0-9.]+) | (?<rh>[-0-9.]+ | it is no pattern",
                "TEXT | (?<checksum>..) | .. | a checksum needs the groups",
                "SCPI | from: [4, 20] | from: [20, 4] | the lower one first",
            })
    void what_a_schema_cannot_say_is_refused_all_the_same(
            Protocol protocol, String good, String spoilt, String remedy) {
        assertTrue(protocol.scaffold().contains(good), "the sample does not have " + good);
        String text = protocol.scaffold().replace(good, spoilt);
        SheetError error = assertThrows(SheetError.class, () -> Protocol.parse(text, "x.yaml"));
        assertTrue(String.valueOf(error.getMessage()).contains(remedy), error.getMessage());
    }

    private String schemaFinds(String text) {
        try {
            return schema.validate(text, InputFormat.YAML).stream()
                    .map(Object::toString)
                    .collect(Collectors.joining("\n"));
        } catch (IllegalArgumentException e) {
            return "not well-formed: " + e.getMessage();
        }
    }
}
