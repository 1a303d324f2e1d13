// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** How fast the size of what is still to come has shrunk of late, as an exponential. */
public final class Closing {
    private static final double SECONDS = 180; // that are looked back

    private record Size(double at, double size) {}

    private final Deque<Size> sizes = new ArrayDeque<>();

    /** The next size, above 0; times in seconds from any origin, rising. */
    public void take(double seconds, double size) {
        sizes.addLast(new Size(seconds, size));
        while (sizes.getFirst().at() < seconds - SECONDS) {
            sizes.removeFirst();
        }
    }

    public void clear() {
        sizes.clear();
    }

    /** When it would be within a limit if it went on like that; empty when it has not shrunk or too little was seen. */
    public Optional<Duration> within(double seconds, double size, double limit) {
        if (size <= limit) {
            return Optional.of(Duration.ZERO);
        }
        if (sizes.isEmpty() || seconds - sizes.getFirst().at() < SECONDS / 2) {
            return Optional.empty();
        }
        double rate = Math.log(sizes.getFirst().size() / size)
                / (seconds - sizes.getFirst().at());
        return rate > 0
                ? Optional.of(Duration.ofSeconds(Math.round(Math.min(1e6, Math.log(size / limit) / rate))))
                : Optional.empty();
    }
}
