// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.device.Chamber;
import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.driver.Devices;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class DevicesTest {
    private static final String PROBE = """
            device: probe
            title: A probe
            line: {modbus-tcp: {host: 127.0.0.1, port: 502, unit: 1}, timeout-ms: 300}
            channels:
              - {name: temperature, quantity: temperature, table: input, address: 0, type: int16, scale: 0.1, unit: °C, resolution: 0.1}
              - {name: far, quantity: temperature, table: input, address: 6, type: int16, scale: 0.1, unit: °C, resolution: 0.1}
            """;

    private final FakeServer server = new FakeServer(1);
    private final Devices devices = new Devices();

    @AfterEach
    void unplug() {
        devices.close();
        server.close();
    }

    @Test
    void devices_on_one_host_and_port_share_a_connection() throws Exception {
        List<FutureTask<List<Reading>>> reads = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            Instrument probe = open("127.0.0.1");
            FutureTask<List<Reading>> read = new FutureTask<>(probe::read);
            reads.add(read);
            Thread.ofPlatform().start(read);
        }
        for (FutureTask<List<Reading>> read : reads) {
            assertGood(read.get(5, TimeUnit.SECONDS));
        }
        assertEquals(1, server.connections.get());
    }

    @Test
    void the_connection_lives_until_its_last_device_is_closed() {
        Instrument one = open("127.0.0.1");
        Instrument other = open("127.0.0.1");
        assertGood(one.read());
        one.close();
        one.close();
        assertGood(other.read());
        other.close();
        assertTrouble(Trouble.UNPLUGGED, other.read());
        assertEquals(1, server.connections.get());
        assertGood(open("127.0.0.1").read());
    }

    @Test
    void closing_all_closes_each_and_opens_no_more() {
        Instrument probe = open("127.0.0.1");
        assertGood(probe.read());
        devices.close();
        devices.close();
        assertTrouble(Trouble.UNPLUGGED, probe.read());
        assertThrows(IllegalStateException.class, () -> open("127.0.0.1"));
        probe.close();
    }

    @Test
    void closing_all_ends_a_read_that_is_waiting() throws Exception {
        Instrument probe = devices.open(
                Parsed.tcp(PROBE.replace("300", "20000"), "probe.yaml").withAddress("127.0.0.1", server.port()),
                InstantSource.system());
        server.next((good, socket) -> devices.close());
        FutureTask<List<Reading>> read = new FutureTask<>(probe::read);
        Thread.ofPlatform().start(read);
        assertTrouble(Trouble.UNPLUGGED, read.get(5, TimeUnit.SECONDS));
    }

    @Test
    void opening_touches_no_wire() {
        assertFalse(open("no-such-host.invalid") instanceof Chamber);
        assertEquals(0, server.connections.get());
    }

    @Test
    void a_host_that_nobody_knows_is_unplugged_within_the_time_limit() {
        long start = System.nanoTime();
        Reading.Absent absent =
                assertTrouble(Trouble.UNPLUGGED, open("no-such-host.invalid").read());
        assertTrue(absent.detail().contains("no-such-host.invalid"), absent.detail());
        assertTrue(System.nanoTime() - start < Duration.ofMillis(700).toNanos());
    }

    @Test
    void a_device_that_refuses_gaps_is_read_without_them_from_then_on() {
        Instrument probe = open("127.0.0.1");
        server.next(FakeServer.refusing(2));
        assertGood(probe.read());
        assertGood(probe.read());
        assertEquals(List.of("4 0 7", "4 0 1", "4 6 1", "4 0 1", "4 6 1"), server.requests);
    }

    @Test
    void a_register_that_is_missing_is_refused_and_the_others_are_read() {
        Instrument probe = open("127.0.0.1");
        server.next(FakeServer.refusing(2), FakeServer.GOOD, FakeServer.refusing(2));
        List<Reading> readings = probe.read();
        assertInstanceOf(Reading.Value.class, readings.getFirst());
        Reading.Absent absent = assertInstanceOf(Reading.Absent.class, readings.getLast());
        assertEquals(Trouble.REFUSED, absent.trouble());
        assertEquals("the device refused: it has no such register (Modbus exception 2)", absent.detail());
    }

    private Instrument open(String host) {
        return devices.open(Parsed.tcp(PROBE, "probe.yaml").withAddress(host, server.port()), InstantSource.system());
    }

    private static void assertGood(List<Reading> readings) {
        readings.forEach(reading -> assertInstanceOf(Reading.Value.class, reading));
    }

    @CanIgnoreReturnValue
    private static Reading.Absent assertTrouble(Trouble trouble, List<Reading> readings) {
        Reading.Absent absent = assertInstanceOf(Reading.Absent.class, readings.getFirst());
        assertEquals(trouble, absent.trouble(), absent.detail());
        return absent;
    }
}
