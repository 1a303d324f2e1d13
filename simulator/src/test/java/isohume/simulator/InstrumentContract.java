// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Reading;
import isohume.device.Trouble;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** What every driver promises, on a real line to a simulated device that can be told to misbehave. */
@Execution(ExecutionMode.CONCURRENT) // they wait for wires most of the time
abstract class InstrumentContract {
    /** For the scheduler of a busy machine; the limits themselves are the rig's. */
    private static final Duration SLACK = Duration.ofMillis(800);

    /** What a device that talks has said before it was told to misbehave: heard and not yet read, and half sent. */
    private static final int UNDER_WAY = 2;

    private Rig rig;
    private List<String> shown;

    /** A new rig whose device behaves. */
    protected abstract Rig rig();

    /** Whether the device talks by itself, so that something may be under way when a fault begins or ends. */
    protected boolean talks() {
        return false;
    }

    /** Whether the device's answer can come byte by byte. */
    protected boolean trickles() {
        return true;
    }

    /** What it is recorded as then. */
    protected Trouble trickled() {
        return Trouble.GARBLED;
    }

    @BeforeEach
    void set_up() {
        rig = rig();
        rig.fault(Fault.NONE);
        shown = rig.shown();
    }

    @AfterEach
    void tear_down() {
        if (rig != null) { // a machine may lack what it needs
            rig.close();
        }
    }

    @Test
    void a_good_device_is_read() {
        assertGood();
        assertGood();
    }

    @Test
    void a_silent_device_is_recorded_as_silence() {
        assertTroubleWhile(Fault.SILENT, Trouble.SILENCE);
    }

    @Test
    void a_device_that_stays_silent_is_silent_every_time_and_good_when_it_is_back() {
        begin(Fault.SILENT);
        for (int i = 0; i < 4; i++) {
            assertTrouble(Trouble.SILENCE);
        }
        begin(Fault.NONE);
        assertGood();
    }

    @Test
    void noise_is_recorded_as_garbled() {
        assertTroubleWhile(Fault.NOISE, Trouble.GARBLED);
    }

    @Test
    void a_refusal_is_recorded_as_refused() {
        assertTroubleWhile(Fault.REFUSING, Trouble.REFUSED);
    }

    @Test
    void half_an_answer_is_recorded_as_garbled() {
        assertTroubleWhile(Fault.BROKEN_OFF, Trouble.GARBLED);
    }

    @Test
    void an_answer_whose_own_check_does_not_fit_is_recorded_as_garbled() {
        assertTroubleWhile(Fault.GARBLED, Trouble.GARBLED);
    }

    @Test
    void a_late_answer_is_never_taken_for_the_answer_to_the_next_question() {
        assertTroubleWhile(Fault.LATE, Trouble.SILENCE);
        assertGood();
    }

    @Test
    void an_answer_to_another_question_is_recorded_as_garbled() {
        assertTroubleWhile(Fault.FOREIGN, Trouble.GARBLED);
    }

    @Test
    void an_answer_that_trickles_in_does_not_stretch_the_time_limit() {
        if (trickles()) {
            assertTroubleWhile(Fault.TRICKLING, trickled());
        }
    }

    @Test
    void an_unplugged_device_is_recorded_and_is_read_again_when_it_is_back() {
        assertGood();
        rig.unplug();
        assertTrouble(Trouble.UNPLUGGED);
        assertTrouble(Trouble.UNPLUGGED);
        rig.plugIn();
        assertGood();
        assertGood();
    }

    @Test
    void a_closed_instrument_is_unplugged_and_may_be_closed_again() {
        assertGood();
        rig.instrument().close();
        rig.instrument().close();
        assertTrouble(Trouble.UNPLUGGED);
    }

    private void assertTroubleWhile(Fault fault, Trouble trouble) {
        begin(fault);
        assertTrouble(trouble);
        begin(Fault.NONE);
        assertGood();
    }

    private void begin(Fault fault) {
        rig.fault(fault);
        for (int i = 0; talks() && i < UNDER_WAY; i++) {
            List<Reading> underWay = readWithinTheLimit();
            assertEquals(rig.instrument().channels().size(), underWay.size());
        }
    }

    private void assertGood() {
        List<Reading> readings = readWithinTheLimit();
        for (int i = 0; i < readings.size(); i++) {
            Reading reading = readings.get(i);
            Reading.Value value = assertInstanceOf(Reading.Value.class, reading, reading::toString);
            assertEquals(shown.get(i), value.shown().toPlainString());
        }
    }

    private void assertTrouble(Trouble trouble) {
        for (Reading reading : readWithinTheLimit()) {
            Reading.Absent absent = assertInstanceOf(Reading.Absent.class, reading, reading::toString);
            assertEquals(trouble, absent.trouble(), absent.detail());
            assertTrue(absent.detail().length() > 10, "says nothing: " + absent.detail());
        }
    }

    private List<Reading> readWithinTheLimit() {
        long start = System.nanoTime();
        List<Reading> readings = rig.instrument().read();
        Duration took = Duration.ofNanos(System.nanoTime() - start);
        assertTrue(took.compareTo(rig.timeLimit().plus(SLACK)) < 0, "took " + took);
        assertEquals(
                rig.instrument().channels(),
                readings.stream().map(Reading::channel).toList());
        readings.forEach(reading -> assertEquals(Rig.NOW, reading.at()));
        return readings;
    }
}
