// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import com.digitalpetri.modbus.server.ModbusTcpServer;
import com.digitalpetri.modbus.server.ProcessImage;
import com.digitalpetri.modbus.server.ReadWriteModbusServices;
import com.digitalpetri.modbus.tcp.server.NettyTcpServerTransport;
import isohume.device.Answer;
import isohume.device.Chamber;
import isohume.device.Reading;
import isohume.device.Setpoint;
import isohume.device.driver.Devices;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.net.ServerSocket;
import java.nio.ByteBuffer;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Against a server that other people wrote: the Modbus library's own. */
class LibraryServerTest {
    private static final String DESCRIPTION = """
            device: chamber
            title: Portable chamber
            line: {modbus-tcp: {host: 127.0.0.1, port: 502, unit: 1}, timeout-ms: 5000}
            word-order: little
            channels:
              - {name: temperature, quantity: temperature, table: input, address: 0, type: int16, scale: 0.01, unit: °C, resolution: 0.01}
              - {name: humidity, quantity: relative_humidity, table: holding, address: 20, type: float32, unit: "% RH", resolution: 0.1}
            chamber:
              temperature: {address: 0, type: int32, scale: 0.001, unit: K, limits: [-10, 50]}
              humidity: {address: 4, type: float32, unit: "1", limits: [3, 97]}
              run: {address: 2, on: 256, off: 3}
            """;

    private final ProcessImage image = new ProcessImage();

    @Test
    void another_partys_server_understands_and_is_understood() throws Exception {
        int port = freePort();
        ModbusTcpServer server = ModbusTcpServer.create(
                NettyTcpServerTransport.create(config -> {
                    config.bindAddress = "127.0.0.1";
                    config.port = port;
                }),
                new ReadWriteModbusServices() {
                    @Override
                    protected Optional<ProcessImage> getProcessImage(int unit) {
                        return unit == 1 ? Optional.of(image) : Optional.empty();
                    }
                });
        server.start();
        try (Devices devices = new Devices()) {
            talk((Chamber) devices.open(
                    Parsed.tcp(DESCRIPTION, "chamber.yaml").withAddress("127.0.0.1", port), InstantSource.system()));
        } finally {
            server.stop();
        }
    }

    private void talk(Chamber chamber) {
        image.with(tx -> tx.writeInputRegisters(words -> words.put(0, word(-1234))));
        image.with(tx -> tx.writeHoldingRegisters(words -> {
            words.put(20, word(0x0000)); // 42.5 = 0x422A0000, low word first
            words.put(21, word(0x422A));
        }));
        assertEquals("-12.34", shown(chamber.read().getFirst()));
        assertEquals("42.5", shown(chamber.read().getLast()));

        Answer.Taken taken = assertInstanceOf(
                Answer.Taken.class,
                chamber.request(new Setpoint(Temperature.ofCelsius(20), RelativeHumidity.ofPercent(50))));
        assertEquals(20, taken.target().temperature().celsius(), 1e-9);
        assertEquals(50, taken.target().humidity().percent(), 1e-9);
        assertHolds(0, 293_150 & 0xFFFF); // 293.150 K, low word first
        assertHolds(1, 293_150 >> 16);
        assertHolds(4, 0x0000); // 0.5 = 0x3F000000
        assertHolds(5, 0x3F00);
        assertHolds(2, 256);
        assertEquals(new Answer.AtRest(), chamber.rest());
        assertHolds(2, 3);
    }

    private void assertHolds(int address, int word) {
        assertEquals(
                word,
                image.<Integer>get(tx -> tx.<Integer>readHoldingRegisters((Map<Integer, byte[]> words) ->
                        ByteBuffer.wrap(words.getOrDefault(address, word(0))).getShort() & 0xFFFF)));
    }

    private static byte[] word(int value) {
        return new byte[] {(byte) (value >> 8), (byte) value};
    }

    private static String shown(Reading reading) {
        return assertInstanceOf(Reading.Value.class, reading).shown().toPlainString();
    }

    private static int freePort() throws Exception {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }
}
