// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import isohume.device.Trouble;
import isohume.device.line.Deadline;
import isohume.device.line.Heard;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/**
 * What a device that talks by itself said last. One thread puts, others wait. What it said is shown until it is too old,
 * each time with the instant at which it came.
 *
 * @param <R> what it says
 */
public final class Newest<R> {
    /** Something that was heard, and when. */
    public record Event<R>(Heard<R> heard, Instant at) {}

    private final ReentrantLock lock = new ReentrantLock();
    private final Condition came = lock.newCondition();
    private final Duration mostAge;
    private @Nullable Event<R> last;
    private long lastNanos;
    private long count;

    /** @param mostAge how old a value may be when it is shown; zero if only what comes after the question counts */
    public Newest(Duration mostAge) {
        this.mostAge = mostAge;
    }

    /** Takes what was heard just now. */
    public void put(Heard<R> heard, Instant at) {
        lock.lock();
        try {
            last = new Event<>(heard, at);
            lastNanos = System.nanoTime();
            count++;
            came.signalAll();
        } finally {
            lock.unlock();
        }
    }

    /**
     * The last value if it is young enough, else what comes next, else the trouble that there is.
     *
     * @param now what dates a silence
     */
    public Event<R> get(Deadline deadline, Instant now) {
        lock.lock();
        try {
            Event<R> young = last;
            if (young != null && young.heard() instanceof Heard.Said && isYoung()) {
                return young;
            }
            return deadline.<Event<R>, IllegalStateException>get(left -> next(left, deadline, now));
        } finally {
            lock.unlock();
        }
    }

    private boolean isYoung() {
        return System.nanoTime() - lastNanos < mostAge.toNanos();
    }

    private Event<R> next(int millis, Deadline deadline, Instant now) throws InterruptedException {
        long before = count;
        long left = TimeUnit.MILLISECONDS.toNanos(millis);
        while (left > 0 && (count == before || isUnplugged())) {
            left = came.awaitNanos(left);
        }
        Event<R> event = last;
        if (event == null || (count == before && !isUnplugged())) {
            return new Event<>(
                    new Heard.Nothing<>(Trouble.SILENCE, "it sent nothing within " + deadline.limitText()), now);
        }
        return event.heard() instanceof Heard.Nothing ? new Event<>(event.heard(), now) : event;
    }

    /** Being unplugged is a state; it may be plugged in again while one waits. */
    private boolean isUnplugged() {
        Event<R> event = last;
        return event != null
                && event.heard() instanceof Heard.Nothing<R> nothing
                && nothing.trouble() == Trouble.UNPLUGGED;
    }
}
