// SPDX-License-Identifier: Apache-2.0
package isohume.device;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What every driver promises, on a real line to a device that can be told to misbehave. */
public abstract class InstrumentContract {
    /** For the scheduler of a busy machine; the limits themselves are the rig's. */
    private static final Duration SLACK = Duration.ofMillis(400);

    /** A device on a line, and how to spoil what it answers to the next question. */
    public interface Rig extends AutoCloseable {
        Instrument instrument();

        /** The clock that the instrument was given stands still at this moment. */
        Instant now();

        Duration timeLimit();

        /** What the instrument shows while the device behaves, in the order of its channels. */
        List<String> shown();

        void beSilentOnce();

        void sendNoiseOnce();

        void refuseOnce();

        void breakOffOnce();

        /** The next reply comes just before the reply after it. */
        void answerLateOnce();

        void answerForAnotherOnce();

        /** A reply that comes byte by byte, and takes longer than the time limit in all. */
        void trickleOnce();

        void hangUpOnce();

        void unplug();

        void plugIn();

        @Override
        void close();
    }

    private Rig rig;

    /** A new rig whose device behaves. */
    protected abstract Rig rig();

    @BeforeEach
    void set_up() {
        rig = rig();
    }

    @AfterEach
    void tear_down() {
        rig.instrument().close();
        rig.close();
    }

    @Test
    void a_good_device_is_read() {
        assertGood();
    }

    @Test
    void a_silent_device_is_recorded_as_silence() {
        rig.beSilentOnce();
        assertTrouble(Trouble.SILENCE);
        assertGood();
    }

    @Test
    void a_device_that_stays_silent_is_silent_every_time_and_good_when_it_is_back() {
        for (int i = 0; i < 4; i++) {
            rig.beSilentOnce();
            assertTrouble(Trouble.SILENCE);
        }
        assertGood();
    }

    @Test
    void noise_is_recorded_as_garbled() {
        rig.sendNoiseOnce();
        assertTrouble(Trouble.GARBLED);
        assertGood();
    }

    @Test
    void a_refusal_is_recorded_as_refused() {
        rig.refuseOnce();
        assertTrouble(Trouble.REFUSED);
        assertGood();
    }

    @Test
    void half_an_answer_is_recorded_as_garbled() {
        rig.breakOffOnce();
        assertTrouble(Trouble.GARBLED);
        assertGood();
    }

    @Test
    void a_late_answer_is_never_taken_for_the_answer_to_the_next_question() {
        rig.answerLateOnce();
        assertTrouble(Trouble.SILENCE);
        assertGood();
        assertGood();
    }

    @Test
    void an_answer_from_another_device_is_recorded_as_garbled() {
        rig.answerForAnotherOnce();
        assertTrouble(Trouble.GARBLED);
        assertGood();
    }

    @Test
    void an_answer_that_trickles_in_does_not_stretch_the_time_limit() {
        rig.trickleOnce();
        assertTrouble(Trouble.GARBLED);
        assertGood();
    }

    @Test
    void a_device_that_hangs_up_is_unplugged_and_read_again_over_a_new_connection() {
        assertGood();
        rig.hangUpOnce();
        assertTrouble(Trouble.UNPLUGGED);
        assertGood();
    }

    @Test
    void an_unplugged_device_is_recorded_and_is_read_again_when_it_is_back() {
        assertGood();
        rig.unplug();
        assertTrouble(Trouble.UNPLUGGED);
        assertTrouble(Trouble.UNPLUGGED);
        rig.plugIn();
        assertGood();
    }

    @Test
    void a_closed_instrument_is_unplugged_and_may_be_closed_again() {
        assertGood();
        rig.instrument().close();
        rig.instrument().close();
        assertTrouble(Trouble.UNPLUGGED);
    }

    private void assertGood() {
        List<Reading> readings = readWithinTheLimit();
        for (int i = 0; i < readings.size(); i++) {
            Reading.Value value = assertInstanceOf(Reading.Value.class, readings.get(i));
            assertEquals(rig.shown().get(i), value.shown().toPlainString());
        }
    }

    private void assertTrouble(Trouble trouble) {
        for (Reading reading : readWithinTheLimit()) {
            Reading.Absent absent = assertInstanceOf(Reading.Absent.class, reading);
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
        readings.forEach(reading -> assertEquals(rig.now(), reading.at()));
        return readings;
    }
}
