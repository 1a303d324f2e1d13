// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Channel;
import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.quantity.Quantity;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import org.junit.jupiter.api.Test;

class AbreastTest {
    private static final Instant NOW = Instant.EPOCH;

    /** Answers when it may. */
    private record Slow(String id, Semaphore may, CountDownLatch closed) implements Instrument {
        Slow(String id, int permits) {
            this(id, new Semaphore(permits), new CountDownLatch(1));
        }

        @Override
        public List<Channel> channels() {
            return List.of(new Channel(id, "t", Quantity.TEMPERATURE));
        }

        @Override
        public List<Reading> read() {
            may.acquireUninterruptibly();
            return List.of(new Reading.Value(channels().getFirst(), NOW, BigDecimal.TEN, "10"));
        }

        @Override
        public void close() {
            closed.countDown();
        }
    }

    private final Slow quick = new Slow("quick", 1000);
    private final Slow dead = new Slow("dead", 0);

    @Test
    void a_dead_one_delays_no_other_and_is_silent() {
        try (Abreast both = new Abreast(List.of(dead, quick), Duration.ofMillis(50), () -> NOW)) {
            long start = System.nanoTime();
            List<Reading> readings = both.read();
            assertTrue(System.nanoTime() - start < 1_000_000_000L);
            assertEquals(
                    both.channels(), readings.stream().map(Reading::channel).toList());
            assertInstanceOf(Reading.Absent.class, readings.get(0));
            assertInstanceOf(Reading.Value.class, readings.get(1));
        }
        assertEquals(0, dead.closed().getCount());
        dead.may().release();
    }

    @Test
    void what_comes_after_a_read_is_given_by_the_next() throws InterruptedException {
        try (Abreast one = new Abreast(List.of(dead), Duration.ofMillis(20), () -> NOW)) {
            assertInstanceOf(Reading.Absent.class, one.read().getFirst());
            dead.may().release();
            long end = System.nanoTime() + 5_000_000_000L;
            Reading next = one.read().getFirst();
            while (next instanceof Reading.Absent && System.nanoTime() < end) {
                next = one.read().getFirst();
            }
            assertInstanceOf(Reading.Value.class, next);
        }
        dead.may().release();
    }
}
