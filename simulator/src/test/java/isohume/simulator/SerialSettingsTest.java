// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Reading;
import isohume.device.driver.Devices;
import isohume.device.protocol.Protocol;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A serial port is set as its description says. A pseudo-terminal has no wire, so it keeps speed, stop bits and which
 * parity, but neither that there is a parity bit nor a byte of seven bits.
 */
class SerialSettingsTest {
    private static String settings(String path) throws IOException, InterruptedException {
        Process stty = new ProcessBuilder("stty", "-F", path, "-a")
                .redirectErrorStream(true)
                .start();
        String said = new String(stty.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, stty.waitFor(), said);
        return said;
    }

    @ParameterizedTest
    @CsvSource({"none, 1, 9600", "even, 1, 19200", "odd, 2, 4800"})
    void speed_parity_and_stop_bits_are_those_of_the_description(String parity, int stopBits, int baud)
            throws IOException, InterruptedException {
        try (SimulatedBench bench = SimulatedBench.start(BenchParameters.portable(), 5, Rig.NOW, 0);
                Pty pty = new Pty(bench.speak(Spoken.TEXT, 0));
                Devices devices = new Devices()) {
            String line = "serial: {path: " + pty.path() + ", baud: " + baud + ", parity: " + parity + ", stop-bits: "
                    + stopBits + "}";
            Reading reading = devices.open(Protocol.parse("""
                            protocol: text
                            device: a
                            title: A
                            line: {LINE}
                            exchanges: [{ask: "?11", reply: '11 RH= *(?<rh>[-0-9.]+) .*'}]
                            channels: [{name: rh, quantity: relative_humidity, group: rh, unit: "% RH", resolution: 0.01}]
                            """.replace("LINE", line), "a.yaml"), () -> Rig.NOW)
                    .read()
                    .getFirst();
            assertInstanceOf(Reading.Value.class, reading, reading::toString);
            String settings = settings(pty.path());
            List<String> words = List.of(settings.split("[\\s;]+"));
            assertTrue(settings.contains("speed " + baud + " "), settings);
            assertTrue(words.contains(parity.equals("odd") ? "parodd" : "-parodd"), settings);
            assertTrue(words.contains(stopBits == 2 ? "cstopb" : "-cstopb"), settings);
        }
    }
}
