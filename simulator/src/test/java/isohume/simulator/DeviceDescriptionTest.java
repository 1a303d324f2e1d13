// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.digitalpetri.modbus.exceptions.ModbusException;
import isohume.quantity.Quantity;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.yaml.snakeyaml.Yaml;

/** What the descriptions say is in a register is in that register. */
class DeviceDescriptionTest {
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");

    @TestFactory
    Stream<DynamicTest> a_channel_read_as_described_gives_what_the_instrument_shows() {
        World twin = new World(BenchParameters.portable(), 3); // the same seed and time, without a wire between
        for (int i = 0; i < 600; i++) {
            twin.step();
        }
        return Stream.of("chamber", "mirror", "thermometer", "A-1042", "B-2077", "C-3310")
                .map(id -> dynamicTest(id, () -> compare(id, twin)));
    }

    private static void compare(String id, World twin) throws IOException, ModbusException {
        Map<String, Object> description = description(id);
        assertEquals(id, description.get("device"));
        try (SimulatedBench bench = SimulatedBench.start(BenchParameters.portable(), 3, START, 0);
                Wire wire = new Wire(bench)) {
            bench.advanceTo(START.plusSeconds(600));
            for (Map<String, Object> channel : channels(description)) {
                double read = read(wire, description, channel);
                double shown = shown(twin, id, text(channel, "name")).getAsDouble();
                assertEquals(shown, read, number(channel, "resolution") / 2 + 1e-4, () -> channel.toString());
                assertWithinLimits(channel, read);
            }
        }
    }

    private static void assertWithinLimits(Map<String, Object> channel, double read) {
        List<?> limits = (List<?>) Objects.requireNonNull(channel.get("limits"));
        double scale = "hPa".equals(channel.get("unit")) ? 100 : 1;
        double lowest = ((Number) limits.get(0)).doubleValue() * scale;
        double highest = ((Number) limits.get(1)).doubleValue() * scale;
        assertTrue(read >= lowest && read <= highest, () -> channel + " read " + read);
    }

    private static double read(Wire wire, Map<String, Object> description, Map<String, Object> channel)
            throws ModbusException {
        Map<String, Object> line = map(Objects.requireNonNull(description.get("line")));
        int unit = (int) number(map(Objects.requireNonNull(line.get("modbus-tcp"))), "unit");
        int address = (int) number(channel, "address");
        String type = text(channel, "type");
        int words = type.endsWith("16") ? 1 : 2;
        ByteBuffer bytes = "input".equals(channel.get("table"))
                ? wire.input(unit, address, words)
                : wire.holding(unit, address, words);
        boolean little = "little".equals(description.get("word-order"));
        int bits = words == 1
                ? bytes.getShort(0)
                : little ? (bytes.getShort(2) << 16) | (bytes.getShort(0) & 0xffff) : bytes.getInt(0);
        double raw = switch (type) {
            case "int16", "int32" -> bits;
            case "uint16" -> bits & 0xffff;
            case "uint32" -> Integer.toUnsignedLong(bits);
            case "float32" -> Float.intBitsToFloat(bits);
            default -> throw new AssertionError(type);
        };
        double value = raw * number(channel, "scale") + number(channel, "offset");
        return "hPa".equals(channel.get("unit")) ? value * 100 : value;
    }

    private static DoubleSupplier shown(World twin, String id, String channel) {
        if (channel.equals("mirror_pressure")) {
            return twin.thermometer().mirrorPressure().shown();
        }
        return twin.shown(id, Quantity.ofKey(channel)).shown();
    }

    private static double number(Map<String, Object> from, String key) {
        return ((Number) Objects.requireNonNull(from.get(key))).doubleValue();
    }

    private static String text(Map<String, Object> from, String key) {
        return (String) Objects.requireNonNull(from.get(key));
    }

    private static List<Map<String, Object>> channels(Map<String, Object> description) {
        return ((List<?>) Objects.requireNonNull(description.get("channels")))
                .stream().map(DeviceDescriptionTest::map).toList();
    }

    @SuppressWarnings("unchecked") // the keys of these YAML maps are strings
    private static Map<String, Object> map(Object value) {
        return (Map<String, Object>) value;
    }

    private static Map<String, Object> description(String id) throws IOException {
        String name = "devices/" + id + ".yaml";
        try (InputStream in = Objects.requireNonNull(SimulatedBench.class.getResourceAsStream(name), name)) {
            return map(new Yaml().load(in));
        }
    }
}
