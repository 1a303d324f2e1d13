// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.device.Answer;
import isohume.device.Chamber;
import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.device.Setpoint;
import isohume.device.Trouble;
import isohume.device.driver.Devices;
import isohume.device.modbus.ModbusDescription;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bench as the program's own driver sees it. */
class DriverTest {
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    private static final long SEED = 3;

    private final SimulatedBench bench = SimulatedBench.start(BenchParameters.portable(), SEED, START, 0);
    private final Devices devices = new Devices();

    @AfterEach
    void unplug() {
        devices.close();
        bench.close();
    }

    private Instrument device(String id) {
        ModbusDescription description = bench.descriptions().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
        return devices.open(description, bench::now);
    }

    @TestFactory
    Stream<DynamicTest> every_channel_reads_what_the_instrument_shows() {
        bench.advanceTo(START.plusSeconds(600));
        World twin = new World(BenchParameters.portable(), SEED); // same seed, same time, and no wire between
        Quiet.pass(twin, 600);
        return bench.descriptions().stream().flatMap(one -> {
            List<Reading> readings = device(one.id()).read();
            return readings.stream()
                    .map(reading -> dynamicTest(reading.channel().id(), () -> assertShows(twin, one, reading)));
        });
    }

    private static void assertShows(World twin, ModbusDescription description, Reading reading) {
        Reading.Value value = assertInstanceOf(Reading.Value.class, reading);
        String name = reading.channel().name();
        Shown expected = name.equals("mirror_pressure")
                ? twin.thermometer().mirrorPressure()
                : twin.shown(description.id(), reading.channel().quantity());
        double half = description.resolution(name).orElseThrow().doubleValue() / 2;
        assertEquals(expected.shown().getAsDouble(), value.shown().doubleValue(), half + 1e-9);
    }

    @Test
    void the_descriptions_name_the_six_devices_in_the_order_of_their_units() {
        List<String> ids =
                bench.descriptions().stream().map(ModbusDescription::id).toList();
        assertEquals(List.of("chamber", "mirror", "thermometer", "A-1042", "B-2077", "C-3310"), ids);
    }

    @Test
    void the_chamber_takes_a_set_point_and_comes_to_rest() {
        Chamber chamber = (Chamber) device("chamber");
        Setpoint target = new Setpoint(Temperature.ofCelsius(17.5), RelativeHumidity.ofPercent(62.5));
        Answer.Taken taken = assertInstanceOf(Answer.Taken.class, chamber.request(target));
        assertEquals(17.5, taken.target().temperature().celsius(), 1e-9);
        assertEquals(62.5, taken.target().humidity().percent(), 1e-9);
        assertInstanceOf(Answer.AtRest.class, chamber.rest());
    }

    @ParameterizedTest
    @CsvSource({"SILENT, SILENCE", "GARBLED, GARBLED", "REFUSING, REFUSED", "UNPLUGGED, UNPLUGGED"})
    void a_fault_is_met_as_the_trouble_that_it_is_and_ends_with_it(Fault fault, Trouble trouble) {
        Instrument one = device("A-1042");
        bench.fault(Units.FIRST_TRANSMITTER, fault);
        for (Reading reading : one.read()) {
            assertEquals(
                    trouble, assertInstanceOf(Reading.Absent.class, reading).trouble());
        }
        bench.fault(Units.FIRST_TRANSMITTER, Fault.NONE);
        one.read().forEach(reading -> assertInstanceOf(Reading.Value.class, reading));
    }

    @Test
    void an_open_door_makes_the_chamber_doubtful() {
        bench.openDoor();
        Reading.Doubtful doubtful = assertInstanceOf(
                Reading.Doubtful.class, device("chamber").read().getFirst());
        assertTrue(doubtful.flag().contains("door"), doubtful::flag);
    }

    @Test
    void while_the_deposit_freezes_the_mirror_is_doubtful() {
        Setpoint dry = new Setpoint(Temperature.ofCelsius(23), RelativeHumidity.ofPercent(8));
        assertInstanceOf(Answer.Taken.class, ((Chamber) device("chamber")).request(dry));
        Instrument mirror = device("mirror");
        int doubtful = 0;
        for (int minute = 1; minute <= 30; minute++) {
            bench.advanceTo(START.plusSeconds(60L * minute));
            doubtful += mirror.read().getFirst() instanceof Reading.Doubtful ? 1 : 0;
        }
        assertTrue(doubtful > 0, "never doubtful");
        Reading.Value deposit =
                assertInstanceOf(Reading.Value.class, mirror.read().getLast());
        assertEquals(2, deposit.shown().intValue(), "ice");
    }
}
