// SPDX-License-Identifier: Apache-2.0
package isohume.device.line;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * The lines in use: devices at the same place share one. Safe for any thread. Closing it closes every line; a device
 * whose line is closed reads as unplugged.
 */
public final class Lines implements AutoCloseable {
    private final Tap tap;
    private final Map<String, Line> lines = new HashMap<>();
    private final Map<Line, Integer> users = new HashMap<>();
    private boolean closed;

    /** None yet. */
    public Lines(Tap tap) {
        this.tap = tap;
    }

    /** A device's share of a line; {@code release} lets go of it and may be run again. */
    public record Share(Line line, Runnable release) {}

    /** What sees all that goes over the lines. */
    public Tap tap() {
        return tap;
    }

    /**
     * A share of the line to a place. Touches no wire: the connection is made by the first question.
     *
     * @param user who wants it, for the error message
     * @throws IllegalStateException if closed
     * @throws IllegalArgumentException if the place is in use with other settings
     */
    public synchronized Share share(Place place, String user) {
        if (closed) {
            throw new IllegalStateException("the lines are closed; " + user + " cannot be opened");
        }
        String key = place.toString();
        Line line = lines.computeIfAbsent(key, p -> new Line(place, tap));
        if (!line.place().equals(place)) {
            throw new IllegalArgumentException(key + " was opened with other settings than " + user
                    + " describes; devices on one port need the same");
        }
        users.merge(line, 1, Integer::sum);
        AtomicBoolean released = new AtomicBoolean();
        return new Share(line, () -> {
            if (!released.getAndSet(true)) {
                release(key, line);
            }
        });
    }

    private synchronized void release(String key, Line line) {
        if (users.merge(line, -1, Integer::sum) == 0) {
            users.remove(line);
            lines.remove(key, line);
            line.close();
        }
    }

    /** Closes every line. Idempotent; never throws. */
    @Override
    public synchronized void close() {
        closed = true;
        lines.values().forEach(Line::close);
    }
}
