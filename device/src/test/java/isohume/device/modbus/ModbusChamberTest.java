// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Answer;
import isohume.device.Chamber;
import isohume.device.Setpoint;
import isohume.device.Trouble;
import isohume.device.driver.Devices;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ModbusChamberTest {
    private final FakeServer server = new FakeServer(1);
    private final Devices devices = new Devices();
    private final Chamber chamber = (Chamber) devices.open(
            Parsed.tcp("""
                            device: chamber
                            title: Portable chamber
                            line: {modbus-tcp: {host: 127.0.0.1, port: 8640, unit: 1}, timeout-ms: 400}
                            channels:
                              - {name: temperature, quantity: temperature, table: input, address: 0, type: int16, scale: 0.01, unit: °C, resolution: 0.01}
                            chamber:
                              temperature: {address: 0, type: int16, scale: 0.01, unit: °C, limits: [-10, 50]}
                              humidity: {address: 1, type: uint16, scale: 0.01, unit: "% RH", limits: [3, 97]}
                              run: {address: 2, on: 1, off: 0}
                            """, "chamber.yaml").withAddress("127.0.0.1", server.port()), InstantSource.system());

    @AfterEach
    void unplug() {
        devices.close();
        server.close();
    }

    @Test
    void a_request_writes_both_targets_then_starts_the_drives_and_reads_back() {
        assertTaken(-5.5, 42.25, chamber.request(target(-5.5, 42.25)));
        assertEquals(List.of("16 0 2", "6 2 1", "3 0 3"), server.requests);
        assertEquals(-550 & 0xFFFF, server.holding.get(0));
        assertEquals(4225, server.holding.get(1));
        assertEquals(1, server.holding.get(2));
    }

    @Test
    void what_the_controller_made_of_the_target_is_told() {
        server.next(FakeServer.GOOD, (good, socket) -> {
            server.holding.put(1, 4000);
            FakeServer.GOOD.send(good, socket);
        });
        assertTaken(20, 40, chamber.request(target(20, 42)));
    }

    @ParameterizedTest
    @CsvSource({
        "50.01, 50, 'temperature: 50.01 °C was asked; this chamber goes from -10 to 50 °C'",
        "20, 2.9, 'humidity: 2.9 % RH was asked; this chamber goes from 3 to 97 % RH'",
        "-11, 50, 'temperature: -11 °C was asked; this chamber goes from -10 to 50 °C'",
    })
    void a_target_beyond_the_limits_is_refused_without_touching_the_wire(double celsius, double percent, String why) {
        assertEquals(new Answer.Refused(why), chamber.request(target(celsius, percent)));
        assertEquals(0, server.connections.get());
    }

    @ParameterizedTest
    @CsvSource({"50, 97", "-10, 3"})
    void the_limits_themselves_are_within(double celsius, double percent) {
        assertTaken(celsius, percent, chamber.request(target(celsius, percent)));
    }

    @Test
    void a_controller_that_says_no_has_refused_and_is_not_started() {
        server.next(FakeServer.refusing(3));
        Answer.Refused refused = assertInstanceOf(Answer.Refused.class, chamber.request(target(20, 50)));
        assertTrue(refused.why().contains("it does not accept this value"), refused.why());
        assertEquals(List.of("16 0 2"), server.requests);
    }

    @Test
    void a_controller_that_does_not_start_has_refused() {
        server.next(FakeServer.GOOD, (good, socket) -> {
            server.holding.put(2, 0);
            FakeServer.GOOD.send(good, socket);
        });
        Answer.Refused refused = assertInstanceOf(Answer.Refused.class, chamber.request(target(20, 50)));
        assertEquals("the controller does not drive: its run register holds 0, 1 was written", refused.why());
    }

    @Test
    void trouble_is_an_answer() {
        server.next(FakeServer.SILENT);
        assertTrouble(Trouble.SILENCE, chamber.request(target(20, 50)));
        server.next(FakeServer.with(9, 7));
        assertTrouble(Trouble.GARBLED, chamber.request(target(20, 50)));
        server.unplug();
        assertTrouble(Trouble.UNPLUGGED, chamber.request(target(20, 50)));
        server.plugIn();
        assertTaken(20, 50, chamber.request(target(20, 50)));
    }

    @Test
    void rest_stops_the_drives_and_may_be_repeated() {
        assertTaken(20, 50, chamber.request(target(20, 50)));
        assertEquals(new Answer.AtRest(), chamber.rest());
        assertEquals(0, server.holding.get(2));
        assertEquals(new Answer.AtRest(), chamber.rest());
    }

    @Test
    void rest_is_tried_again_over_a_new_connection() {
        assertTaken(20, 50, chamber.request(target(20, 50)));
        server.next(FakeServer.HANG_UP);
        assertEquals(new Answer.AtRest(), chamber.rest());
        assertEquals(2, server.connections.get());
    }

    @Test
    void rest_works_on_a_thread_that_was_told_to_stop() {
        Thread.currentThread().interrupt();
        assertEquals(new Answer.AtRest(), chamber.rest());
        assertTrue(Thread.interrupted(), "the thread has to stay interrupted");
    }

    @Test
    void rest_without_a_device_or_a_line_says_so() {
        server.unplug();
        assertTrouble(Trouble.UNPLUGGED, chamber.rest());
        devices.close();
        assertTrouble(Trouble.UNPLUGGED, chamber.rest());
    }

    @Test
    void rest_that_the_controller_does_not_take_is_no_rest() {
        assertTaken(20, 50, chamber.request(target(20, 50)));
        server.next((good, socket) -> {
            server.holding.put(2, 1);
            FakeServer.GOOD.send(good, socket);
        });
        assertEquals(
                new Answer.Refused("the controller does not rest: its run register holds 1, 0 was written"),
                chamber.rest());
    }

    @Test
    void rest_from_another_thread_during_a_request_leaves_the_chamber_at_rest() throws Exception {
        CountDownLatch underWay = new CountDownLatch(1);
        FutureTask<Answer> rest = new FutureTask<>(chamber::rest);
        server.next((good, socket) -> {
            Thread.ofPlatform().start(rest);
            underWay.countDown();
            FakeServer.GOOD.send(good, socket);
        });
        Answer request = chamber.request(target(20, 50));
        assertTrue(underWay.await(5, TimeUnit.SECONDS));
        assertEquals(new Answer.AtRest(), rest.get(5, TimeUnit.SECONDS));
        assertTaken(20, 50, request);
        assertEquals(0, server.holding.get(2));
    }

    private static Setpoint target(double celsius, double percent) {
        return new Setpoint(Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(percent));
    }

    private static void assertTaken(double celsius, double percent, Answer answer) {
        Answer.Taken taken = assertInstanceOf(Answer.Taken.class, answer);
        assertEquals(celsius, taken.target().temperature().celsius(), 1e-9);
        assertEquals(percent, taken.target().humidity().percent(), 1e-9);
    }

    private static void assertTrouble(Trouble trouble, Answer answer) {
        Answer.None none = assertInstanceOf(Answer.None.class, answer);
        assertEquals(trouble, none.trouble(), none.detail());
    }
}
