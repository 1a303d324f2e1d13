// SPDX-License-Identifier: Apache-2.0
package isohume.device.line;

import java.net.SocketTimeoutException;
import java.time.Duration;

/**
 * The moment by which a call has to end. It bounds how long a thread waits on a wire and goes into no record, so it
 * runs on the machine's own steady counter and not on the clock that dates readings.
 *
 * @param nanos on the counter of {@link System#nanoTime}
 * @param limit how long the whole call may take, for messages
 */
public record Deadline(long nanos, Duration limit) {
    /** So long from now on. */
    public static Deadline in(Duration limit) {
        return new Deadline(System.nanoTime() + limit.toNanos(), limit);
    }

    /** This moment, or so long from now on if that is earlier. */
    public Deadline orIn(Duration shorter) {
        Deadline other = in(shorter);
        return other.nanos - nanos < 0 ? other : this;
    }

    /** Milliseconds left, rounded up; 0 when it has passed. */
    public int millisLeft() {
        return (int) Math.max(0, (nanos - System.nanoTime() + 999_999) / 1_000_000);
    }

    /**
     * Milliseconds left, at least 1, for what takes 0 for ever.
     *
     * @throws SocketTimeoutException if none are left
     */
    public int millisToWait() throws SocketTimeoutException {
        int millis = millisLeft();
        if (millis == 0) {
            throw new SocketTimeoutException("the time limit has passed");
        }
        return millis;
    }

    /** A wait that takes the milliseconds left. */
    public interface Wait<T, E extends Exception> {
        /** Waits no longer than that. */
        T forAtMost(int millis) throws InterruptedException, E;
    }

    /**
     * Waits even if the thread is interrupted, and leaves it interrupted: the wait is short, and bringing a chamber to
     * rest must also work on a thread that was told to stop.
     */
    public <T, E extends Exception> T get(Wait<T, E> wait) throws E {
        boolean interrupted = Thread.interrupted();
        try {
            while (true) {
                try {
                    return wait.forAtMost(millisLeft());
                } catch (InterruptedException e) {
                    interrupted = true;
                }
            }
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    /** The whole limit, as messages give it. */
    public String limitText() {
        return limit.toMillis() + " ms";
    }
}
