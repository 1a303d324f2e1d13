// SPDX-License-Identifier: Apache-2.0
package isohume.device.protocol;

import isohume.device.driver.DeviceDescription;
import isohume.device.http.HttpDescription;
import isohume.device.modbus.ModbusDescription;
import isohume.device.mqtt.MqttDescription;
import isohume.device.scpi.ScpiDescription;
import isohume.device.sheet.Sheet;
import isohume.device.text.TextDescription;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** How a device is spoken to. A description names it under {@code protocol}; one that does not is of Modbus TCP. */
public enum Protocol {
    /** Registers over TCP. */
    MODBUS_TCP,
    /** Registers over a serial line, or over TCP through a gateway. */
    MODBUS_RTU,
    /** Lines of text over a serial line or TCP. */
    TEXT,
    /** Queries to multimeters, over a serial line or TCP. */
    SCPI,
    /** Messages of an MQTT broker. */
    MQTT,
    /** A JSON document over HTTP. */
    HTTP_JSON;

    /** As written in descriptions: {@code modbus-tcp}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** All keys. */
    public static List<String> keys() {
        return Arrays.stream(values()).map(Protocol::key).toList();
    }

    /** A description to begin with: an invented device, with comments. */
    public String scaffold() {
        String name = key() + ".yaml";
        try (InputStream in = Protocol.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException("the program's own " + name + " cannot be read", broken);
        }
    }

    /** The protocol with this key; one of {@link #keys}. */
    public static Protocol ofKey(String key) {
        return valueOf(key.replace('-', '_').toUpperCase(Locale.ROOT));
    }

    /**
     * Reads a description from a file.
     *
     * @throws isohume.device.sheet.SheetError with line and column, if it is not a valid description
     */
    public static DeviceDescription read(Path file) {
        return description(Sheet.read(file));
    }

    /**
     * Reads a description from a text.
     *
     * @param name what errors call it
     * @throws isohume.device.sheet.SheetError with line and column, if it is not a valid description
     */
    public static DeviceDescription parse(String text, String name) {
        return description(Sheet.parse(text, name));
    }

    private static DeviceDescription description(Sheet sheet) {
        Protocol protocol = sheet.has("protocol") ? ofKey(sheet.oneOf("protocol", keys())) : MODBUS_TCP;
        return switch (protocol) {
            case MODBUS_TCP -> ModbusDescription.tcp(sheet);
            case MODBUS_RTU -> ModbusDescription.rtu(sheet);
            case TEXT -> TextDescription.of(sheet);
            case SCPI -> ScpiDescription.of(sheet);
            case MQTT -> MqttDescription.of(sheet);
            case HTTP_JSON -> HttpDescription.of(sheet);
        };
    }
}
