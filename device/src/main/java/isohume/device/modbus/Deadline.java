// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import java.time.Duration;

/**
 * The moment by which a call has to end. It bounds how long a thread waits on a socket and goes into no record, so it
 * runs on the machine's own steady counter and not on the clock that dates readings.
 */
record Deadline(long nanos, Duration limit) {
    static Deadline in(Duration limit) {
        return new Deadline(System.nanoTime() + limit.toNanos(), limit);
    }

    /** Milliseconds left, rounded up; 0 when it has passed. */
    int millisLeft() {
        return (int) Math.max(0, (nanos - System.nanoTime() + 999_999) / 1_000_000);
    }

    /** A wait that takes the milliseconds left. */
    interface Wait<T, E extends Exception> {
        T forAtMost(int millis) throws InterruptedException, E;
    }

    /**
     * Waits even if the thread is interrupted, and leaves it interrupted: the wait is short, and bringing a chamber to
     * rest must also work on a thread that was told to stop.
     */
    <T, E extends Exception> T get(Wait<T, E> wait) throws E {
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

    String limitText() {
        return limit.toMillis() + " ms";
    }
}
