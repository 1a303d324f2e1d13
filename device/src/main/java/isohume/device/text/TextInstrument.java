// SPDX-License-Identifier: Apache-2.0
package isohume.device.text;

import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.driver.Described;
import isohume.device.line.Deadline;
import isohume.device.line.Heard;
import isohume.device.line.Line;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Asks a device line by line. */
final class TextInstrument extends Described {
    private final TextDescription description;
    private final Line line;
    private final InstantSource clock;
    private final Runnable release;

    /** @param release what lets go of the line */
    TextInstrument(TextDescription description, Line line, InstantSource clock, Runnable release) {
        super(description);
        this.description = description;
        this.line = line;
        this.clock = clock;
        this.release = release;
    }

    @Override
    public List<Reading> read() {
        Instant at = clock.instant();
        Deadline deadline = Deadline.in(description.timeLimit());
        if (!line.take(deadline)) {
            Heard<Spoken> busy = new Heard.Nothing<>(Trouble.SILENCE, Line.held(deadline));
            return description.codec().readings(description.everywhere(busy), at);
        }
        try {
            return description.codec().readings(ask(deadline), at);
        } finally {
            line.release();
        }
    }

    /** Asks one thing after the other; once the device is silent or gone, the rest shares that fate. */
    private Map<String, Heard<Spoken>> ask(Deadline deadline) {
        Map<String, Heard<Spoken>> heard = new HashMap<>();
        for (Exchange exchange : description.exchanges()) {
            Heard<Spoken> reply = line.ask(exchange.question(description.manner()), deadline);
            exchange.pattern().groups().forEach(group -> heard.put(group, reply));
            if (reply instanceof Heard.Nothing<Spoken> nothing && nothing.trouble() != Trouble.GARBLED) {
                description.everywhere(reply).forEach(heard::putIfAbsent);
                break;
            }
        }
        return heard;
    }

    @Override
    public void close() {
        release.run();
    }
}
