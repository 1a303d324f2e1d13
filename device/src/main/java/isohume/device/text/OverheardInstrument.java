// SPDX-License-Identifier: Apache-2.0
package isohume.device.text;

import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.driver.Described;
import isohume.device.driver.Newest;
import isohume.device.line.Deadline;
import isohume.device.line.Heard;
import isohume.device.line.Line;
import isohume.device.line.Question;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;

/** Listens to a device that talks by itself, on a thread of its own from the first read on. */
final class OverheardInstrument extends Described {
    private static final long PAUSE_NANOS = 100_000_000; // before a lost line is tried again

    private final TextDescription description;
    private final Line line;
    private final InstantSource clock;
    private final Runnable release;
    private final Newest<Spoken> newest;
    private volatile boolean closed;
    private @Nullable Thread listener;

    /** @param release what lets go of the line */
    OverheardInstrument(TextDescription description, Line line, InstantSource clock, Runnable release) {
        super(description);
        this.description = description;
        this.line = line;
        this.clock = clock;
        this.release = release;
        this.newest = new Newest<>(description.mostAge());
    }

    @Override
    public List<Reading> read() {
        if (listener == null && !closed) {
            listener = Thread.ofPlatform().daemon().name("listen to " + line).start(this::listen);
        }
        Newest.Event<Spoken> event = closed
                ? new Newest.Event<>(
                        new Heard.Nothing<>(Trouble.UNPLUGGED, "the line to " + line + " is closed"), clock.instant())
                : newest.get(Deadline.in(description.timeLimit()), clock.instant());
        return description.codec().readings(description.everywhere(event.heard()), event.at());
    }

    private void listen() {
        Question<Spoken> question = description.exchanges().getFirst().question(description.manner());
        while (!closed) {
            Deadline deadline = Deadline.in(description.timeLimit());
            if (!line.take(deadline)) {
                continue;
            }
            Heard<Spoken> heard;
            try {
                heard = line.ask(question, deadline);
            } finally {
                line.release();
            }
            boolean silent = heard instanceof Heard.Nothing<Spoken> no && no.trouble() == Trouble.SILENCE;
            if (!silent) {
                newest.put(heard, clock.instant());
            }
            if (heard instanceof Heard.Nothing<Spoken> no && no.trouble() == Trouble.UNPLUGGED) {
                LockSupport.parkNanos(PAUSE_NANOS);
            }
        }
    }

    @Override
    public void close() {
        closed = true;
        release.run();
    }
}
