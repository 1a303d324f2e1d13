// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.concurrent.locks.Lock;

/** What an instrument under test says in JSON: {@code {"unit":11,"rh":{"value":45.31,"unit":"%"},"t":23.12}}. */
final class JsonDocument {
    private final World world;
    private final Lock lock;

    JsonDocument(World world, Lock lock) {
        this.world = world;
        this.lock = lock;
    }

    boolean isThere(int unit) {
        int index = unit - Units.FIRST_TRANSMITTER;
        return index >= 0 && index < world.transmitters().size();
    }

    /** @param as what it says of who it is */
    byte[] of(int unit, int as) {
        lock.lock();
        try {
            Transmitter one = world.transmitters().get(unit - Units.FIRST_TRANSMITTER);
            String text = String.format(
                    Locale.ROOT,
                    "{\"unit\":%d,\"rh\":{\"value\":%.2f,\"unit\":\"%%\"},\"t\":%.2f}",
                    as,
                    one.relativeHumidity().shown().getAsDouble(),
                    one.temperature().shown().getAsDouble());
            return text.getBytes(StandardCharsets.UTF_8);
        } finally {
            lock.unlock();
        }
    }
}
