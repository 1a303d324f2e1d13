// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.digitalpetri.modbus.ExceptionCode;
import com.digitalpetri.modbus.exceptions.ModbusException;
import com.digitalpetri.modbus.exceptions.ModbusResponseException;
import com.digitalpetri.modbus.exceptions.ModbusTimeoutException;
import isohume.quantity.Quantity;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.time.Instant;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SimulatedBenchTest {
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    private static final long SEED = 11;

    private final SimulatedBench bench = SimulatedBench.start(BenchParameters.portable(), SEED, START, 0);
    private Wire wire;

    @BeforeEach
    void connect() throws ModbusException {
        wire = new Wire(bench);
    }

    @AfterEach
    void disconnect() throws ModbusException {
        wire.close();
        bench.close();
    }

    @Test
    void what_was_asked_of_the_chamber_reads_back() throws ModbusException {
        wire.ask(12.34, 56.78);
        assertEquals(1234, wire.holding(1, 0, 3).getShort(0));
        assertEquals(5678, wire.holding(1, 0, 3).getShort(2));
        assertEquals(1, wire.holding(1, 0, 3).getShort(4));
    }

    @Test
    void the_chamber_goes_where_it_was_asked_to_go() throws ModbusException {
        wire.ask(30, 60);
        bench.advanceTo(START.plusSeconds(3600));
        assertEquals(30, bench.trueValue("chamber", Quantity.TEMPERATURE), 0.2);
        assertEquals(60, bench.trueValue("chamber", Quantity.RELATIVE_HUMIDITY), 1.5);
    }

    @Test
    void at_rest_the_chamber_drifts_back_to_its_room() throws ModbusException {
        wire.ask(40, 30);
        bench.advanceTo(START.plusSeconds(1800));
        wire.write(1, 2, 0);
        bench.advanceTo(START.plusSeconds(10 * 3600));
        double fanHeat = 1 / 0.25; // W over W/K: the fan stays on
        assertEquals(23 + fanHeat, bench.trueValue("chamber", Quantity.TEMPERATURE), 2);
        assertEquals(0, wire.input(1, 4, 1).getShort(), "flow of the streams");
    }

    @Test
    void a_set_point_beyond_the_limits_is_an_illegal_value() {
        assertRefused(0, 499);
        assertRefused(0, 5001);
        assertRefused(1, 299);
        assertRefused(1, 9701);
        assertRefused(2, 2);
    }

    private void assertRefused(int address, int value) {
        ModbusResponseException refusal =
                assertThrows(ModbusResponseException.class, () -> wire.write(1, address, value));
        assertEquals(ExceptionCode.ILLEGAL_DATA_VALUE.getCode(), refusal.getExceptionCode());
    }

    @Test
    void a_register_that_is_not_there_is_an_illegal_address() {
        ModbusResponseException refusal = assertThrows(ModbusResponseException.class, () -> wire.input(2, 500, 1));
        assertEquals(ExceptionCode.ILLEGAL_DATA_ADDRESS.getCode(), refusal.getExceptionCode());
    }

    @Test
    void a_silent_unit_never_answers_and_the_others_do() throws ModbusException {
        bench.fault(Units.MIRROR, Fault.SILENT);
        assertThrows(ModbusTimeoutException.class, () -> wire.input(Units.MIRROR, 0, 1));
        assertEquals(2, wire.input(Units.FIRST_TRANSMITTER, 0, 1).remaining());
        bench.fault(Units.MIRROR, Fault.NONE);
        assertEquals(2, wire.input(Units.MIRROR, 0, 1).remaining());
    }

    @Test
    void a_refusing_unit_answers_with_device_failure() {
        bench.fault(Units.MIRROR, Fault.REFUSING);
        ModbusResponseException refusal =
                assertThrows(ModbusResponseException.class, () -> wire.input(Units.MIRROR, 0, 1));
        assertEquals(ExceptionCode.SLAVE_DEVICE_FAILURE.getCode(), refusal.getExceptionCode());
    }

    @Test
    void a_garbled_answer_is_no_answer_that_a_client_accepts() {
        bench.fault(Units.MIRROR, Fault.GARBLED);
        ModbusException trouble = assertThrows(ModbusException.class, () -> wire.input(Units.MIRROR, 0, 1));
        assertTrue(!(trouble instanceof ModbusTimeoutException), () -> "it came as " + trouble);
    }

    @Test
    void an_unplugged_unit_drops_the_connection() throws IOException {
        bench.fault(Units.MIRROR, Fault.UNPLUGGED);
        byte[] request = {0, 1, 0, 0, 0, 6, Units.MIRROR, 4, 0, 0, 0, 1};
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), bench.port())) {
            socket.setSoTimeout(2000);
            socket.getOutputStream().write(request);
            assertEquals(-1, socket.getInputStream().read(), "end of the stream");
        }
    }

    @Test
    void an_open_door_is_told_and_lets_the_room_in() throws ModbusException {
        wire.ask(23, 80);
        bench.advanceTo(START.plusSeconds(1200));
        double before = bench.trueValue("chamber", Quantity.RELATIVE_HUMIDITY);
        bench.openDoor();
        bench.advanceTo(START.plusSeconds(1260));
        assertEquals(1, wire.input(1, 10, 1).getShort() & 1);
        assertTrue(bench.trueValue("chamber", Quantity.RELATIVE_HUMIDITY) < before - 15);
        bench.closeDoor();
        assertEquals(0, wire.input(1, 10, 1).getShort() & 1);
    }

    @Test
    void reading_at_any_moment_of_a_long_advance_is_answered() throws ModbusException {
        CompletableFuture<Void> advance = CompletableFuture.runAsync(() -> bench.advanceTo(START.plusSeconds(36_000)));
        int readings = 0;
        while (!advance.isDone() || readings < 10) {
            assertEquals(4, wire.input(Units.FIRST_TRANSMITTER, 0, 2).remaining());
            readings++;
        }
        advance.join();
        assertEquals(START.plusSeconds(36_000), bench.now());
    }

    @Test
    void time_does_not_go_back() {
        bench.advanceTo(START.plusSeconds(10));
        bench.advanceTo(START.plusSeconds(5));
        assertEquals(START.plusSeconds(10), bench.now());
    }

    @Test
    void a_port_that_is_taken_is_an_error_that_says_so() {
        UncheckedIOException refusal = assertThrows(
                UncheckedIOException.class,
                () -> SimulatedBench.start(BenchParameters.portable(), SEED, START, bench.port()));
        assertTrue(String.valueOf(refusal.getMessage()).contains("port " + bench.port()), refusal::getMessage);
    }

    @Test
    void an_unknown_instrument_is_an_error_that_names_the_known_ones() {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> bench.trueError("Z-1", Quantity.RELATIVE_HUMIDITY));
        assertTrue(String.valueOf(refusal.getMessage()).contains("A-1042"), refusal::getMessage);
    }

    @Test
    void a_bench_can_stand_alone_by_a_clock_that_runs_faster() {
        Instant[] wall = {START};
        Pace pace = Pace.of(bench, 60, () -> wall[0]);
        wall[0] = wall[0].plusSeconds(7);
        pace.tick();
        assertEquals(START.plusSeconds(420), bench.now());
        assertNotEquals(wall[0], bench.now());
    }

    @Test
    void a_pace_ends_when_its_thread_is_interrupted() throws InterruptedException {
        Thread thread = new Thread(Pace.of(bench, 10, () -> START));
        thread.start();
        thread.interrupt();
        thread.join(5000);
        assertFalse(thread.isAlive());
    }

    @Test
    void walls_that_get_too_hot_cut_the_drive_out_until_the_chamber_is_started_anew() throws ModbusException {
        BenchParameters parameters = BenchParameters.portable();
        BenchParameters becalmed = parameters.with(
                new Enclosure(3, 120, 1200, 0.5, 0.10, 0.15, 0.03, 0, 500, 40)); // still air: walls run ahead
        try (SimulatedBench hot = SimulatedBench.start(becalmed, SEED, START, 0);
                Wire other = new Wire(hot)) {
            other.ask(50, 20);
            hot.advanceTo(START.plusSeconds(300));
            assertEquals(4, other.input(1, 10, 1).getShort() & 4);
            assertEquals(0, other.input(1, 5, 1).getShort(), "drive in 0.1 W");
            other.write(1, 2, 0);
            other.write(1, 2, 1);
            assertEquals(0, other.input(1, 10, 1).getShort() & 4);
        }
    }

    @Test
    void low_water_and_spent_drying_agent_are_told_until_the_chamber_is_serviced() throws ModbusException {
        BenchParameters parameters = BenchParameters.portable();
        BenchParameters neglected =
                parameters.with(parameters.streams().withTank(1).withDryingAgent(500, 80, -38));
        try (SimulatedBench dry = SimulatedBench.start(neglected, SEED, START, 0);
                Wire other = new Wire(dry)) {
            other.ask(23, 60);
            dry.advanceTo(START.plusSeconds(6 * 3600));
            assertEquals(0b1010, other.input(1, 10, 1).getShort());
            dry.service();
            assertEquals(0, other.input(1, 10, 1).getShort());
        }
    }
}
