// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import isohume.run.Timekeeper;
import java.time.Duration;
import java.time.Instant;
import java.util.function.BooleanSupplier;

/** Serves the invented bench for somebody who works on the pages: {@code java -cp … isohume.station.web.Preview 60}. */
final class Preview {
    private Preview() {}

    public static void main(String... arguments) {
        InventedDesk desk = new InventedDesk(new Fast(Double.parseDouble(arguments[0])));
        Thread.ofPlatform().daemon().name("run").start(desk::carryOut);
        Web.serve(desk, "127.0.0.1", 8640, address -> System.err.println("Isohume is at " + address));
    }

    /** Time that passes some times faster. */
    private record Fast(double times, Instant start, long startNanos) implements Timekeeper {
        Fast(double times) {
            this(times, Instant.parse("2026-03-02T08:00:00Z"), System.nanoTime());
        }

        /** Whole seconds, so that polls keep to their grid. */
        @Override
        public Instant instant() {
            return start.plusSeconds((long) ((System.nanoTime() - startNanos) / 1e9 * times));
        }

        @Override
        public void waitUntil(Instant when, BooleanSupplier unless) {
            while (!unless.getAsBoolean() && instant().isBefore(when)) {
                long millis = (long) (Duration.between(instant(), when).toMillis() / times);
                java.util.concurrent.locks.LockSupport.parkNanos(Math.min(50, Math.max(1, millis)) * 1_000_000);
            }
        }
    }
}
