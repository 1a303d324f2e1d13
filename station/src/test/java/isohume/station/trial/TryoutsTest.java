// SPDX-License-Identifier: Apache-2.0
package isohume.station.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.driver.DeviceDescription;
import isohume.device.protocol.Protocol;
import isohume.journal.Journal;
import isohume.journal.MemoryJournal;
import isohume.simulator.BenchParameters;
import isohume.station.bench.Workplace;
import isohume.station.rehearsal.BenchPapers;
import isohume.station.rehearsal.Rehearsal;
import isohume.station.rehearsal.SimulatedTime;
import isohume.station.trial.Tryout.State;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class TryoutsTest {
    private static final Instant START = Instant.parse("2026-03-02T07:00:00Z");
    private static final Duration SHORT = Duration.ofMillis(600);
    private static final Duration LONG = Tryouts.LONGEST;

    private Rehearsal bench;
    private Workplace workplace;
    private Tryouts tryouts;

    @BeforeEach
    void set_up() {
        BenchParameters portable = BenchParameters.portable();
        bench = Rehearsal.of(
                BenchPapers.worksheet(portable, "a bench", "  - {temperature: 23, humidity: [40]}\n"),
                portable,
                1,
                START);
        Journal journal = new MemoryJournal(bench.simulated()::now);
        workplace = new Workplace(
                journal,
                bench.worksheet(),
                bench.open(),
                SimulatedTime.paced(bench.simulated(), 100, InstantSource.system()));
        tryouts = new Tryouts(journal, Optional.of(workplace), InstantSource.system());
    }

    @AfterEach
    void tear_down() {
        workplace.close();
        bench.close();
    }

    private DeviceDescription own(String id) {
        return tryouts.ofBench().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The simulated mirror as somebody else describes it; its registers are those of the example of a mirror. */
    private DeviceDescription described() {
        return Protocol.parse(
                """
                device: another
                title: The mirror by another name
                line: {modbus-tcp: {host: localhost, port: PORT, unit: 2}}
                channels:
                  - {name: dew_point, quantity: dew_point, table: input, address: 0, type: int32, scale: 0.001, unit: °C, resolution: 0.01}
                """.replace("PORT", String.valueOf(bench.simulated().port())), "another.yaml");
    }

    private Tryout begun(DeviceDescription description, Duration howLong) {
        return assertInstanceOf(Tryouts.Begun.Yes.class, tryouts.begin(description, howLong))
                .tryout();
    }

    private static void until(BooleanSupplier there) {
        long end = System.nanoTime() + 20_000_000_000L;
        while (!there.getAsBoolean()) {
            assertTrue(System.nanoTime() < end, "it did not come");
            Thread.onSpinWait();
        }
    }

    @Test
    void a_described_device_is_read_over_a_connection_of_its_own_until_its_time_is_over() {
        Tryout tryout = begun(described(), SHORT);
        until(() -> tryout.state() == State.OVER);
        Report report = tryout.report();
        assertTrue(report.good() && report.reads() >= 2, report::toString);
        assertTrue(report.latency().isPresent());
        assertTrue(tryout.lines().getFirst().startsWith("> "), tryout.lines()::toString);
    }

    @Test
    void a_device_of_a_bench_at_rest_is_read_as_the_bench_has_it_connected() {
        Tryout tryout = begun(own("mirror"), SHORT);
        until(() -> tryout.state() == State.OVER);
        assertTrue(tryout.report().good());
        assertTrue(tryout.run().isEmpty());
        assertFalse(tryout.lines().isEmpty());
    }

    @Test
    void a_trial_can_be_stopped_and_keeps_what_it_found() {
        Tryout tryout = begun(described(), LONG);
        until(() -> tryout.report().reads() > 0);
        tryouts.stop(tryout);
        assertEquals(State.STOPPED, tryout.state());
        tryout.join(Duration.ofSeconds(5));
        assertTrue(tryout.report().good(), "the end of the connection is no finding: " + tryout.report());
    }

    @Test
    void while_a_run_is_at_work_a_trial_shows_what_the_run_reads_and_asks_nothing() {
        String run = workplace.begin("M. Example").orElseThrow().id();
        Tryout tryout = begun(own("mirror"), LONG);
        assertEquals(Optional.of(run), tryout.run());
        until(() -> tryout.report().reads() > 2);
        assertTrue(tryout.report().latency().isEmpty(), "nobody measured it");
        assertEquals(own("mirror").channels().size(), tryout.report().channels().size());
        until(() -> !tryout.lines().isEmpty());
    }

    @Test
    void a_line_that_a_run_reads_gets_no_second_connection_under_another_name() {
        assertTrue(workplace.begin("M. Example").isPresent());
        String why = assertInstanceOf(Tryouts.Begun.Refused.class, tryouts.begin(described(), SHORT))
                .why();
        assertTrue(why.contains("is at work on the line"), why);
        assertEquals(0, tryouts.all().size());
    }

    @Test
    void a_run_that_begins_takes_the_line_of_trials_that_read_there() {
        Tryout own = begun(own("mirror"), LONG);
        until(() -> own.report().reads() > 0);
        assertTrue(workplace.begin("M. Example").isPresent());
        assertEquals(State.GAVE_WAY, own.state());
        int reads = own.report().reads();
        assertEquals(reads, own.report().reads());
    }

    @Test
    void one_place_is_tried_once_at_a_time_and_no_more_than_four_trials_are_at_work() {
        Tryout first = begun(described(), LONG);
        String why = assertInstanceOf(Tryouts.Begun.Refused.class, tryouts.begin(described(), LONG))
                .why();
        assertTrue(why.startsWith("Trial " + first.number() + " is reading"), why);
        for (int i = 1; i < 4; i++) {
            assertTrue(begun(nobody(i), LONG).atWork());
        }
        assertInstanceOf(Tryouts.Begun.Refused.class, tryouts.begin(nobody(4), LONG));
        tryouts.all().forEach(tryouts::stop);
    }

    /** Nobody listens on these ports of this machine's own network. */
    private static DeviceDescription nobody(int number) {
        return Protocol.parse("""
                device: nobody
                title: Nobody
                line: {modbus-tcp: {host: 127.0.0.1, port: PORT, unit: 2}}
                channels:
                  - {name: t, quantity: temperature, table: input, address: 0, type: int16, unit: °C, resolution: 1}
                """.replace("PORT", String.valueOf(number)), "nobody.yaml");
    }
}
