// SPDX-License-Identifier: Apache-2.0
package isohume.device.scpi;

import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.driver.Described;
import isohume.device.line.Deadline;
import isohume.device.line.Heard;
import isohume.device.line.Line;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Sends a meter its queries, and asks for its error queue when one stays without an answer. */
final class ScpiInstrument extends Described {
    private final ScpiDescription description;
    private final Line line;
    private final InstantSource clock;
    private final Runnable release;

    /** @param release what lets go of the line */
    ScpiInstrument(ScpiDescription description, Line line, InstantSource clock, Runnable release) {
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
            return description.absent(at, Trouble.SILENCE, Line.held(deadline));
        }
        try {
            Map<String, Heard<ScpiSaid>> heard = ask(deadline);
            Heard<ScpiSaid> none = new Heard.Nothing<>(Trouble.SILENCE, "no time was left to ask for it");
            return description.scpiChannels().stream()
                    .map(one -> one.reading(heard.getOrDefault(one.ask(), none), at))
                    .toList();
        } finally {
            line.release();
        }
    }

    /** Asks one thing after the other; once the device is not understood, the rest shares that fate. */
    private Map<String, Heard<ScpiSaid>> ask(Deadline deadline) {
        Map<String, Heard<ScpiSaid>> heard = new HashMap<>();
        for (ScpiChannel one : description.scpiChannels()) {
            Heard<ScpiSaid> reply = heard.get(one.ask());
            if (reply == null) {
                long left = description.scpiChannels().stream()
                        .filter(other -> !heard.containsKey(other.ask()))
                        .map(ScpiChannel::ask)
                        .distinct()
                        .count();
                reply = ask(one.ask(), Duration.ofMillis(deadline.millisLeft() * 3L / 5 / left), deadline);
                heard.put(one.ask(), reply);
            }
            if (reply instanceof Heard.Nothing) {
                Heard<ScpiSaid> fate = reply;
                description.scpiChannels().forEach(other -> heard.putIfAbsent(other.ask(), fate));
                break;
            }
        }
        return heard;
    }

    /** @param most how long the answer is waited for; the rest is for the error queue and other queries */
    private Heard<ScpiSaid> ask(String what, Duration most, Deadline deadline) {
        Heard<ScpiSaid> reply = line.ask(new ScpiQuestion(description.manner(), what), deadline.orIn(most));
        if (reply instanceof Heard.Nothing<ScpiSaid> no && no.trouble() == Trouble.SILENCE) {
            Heard<ScpiSaid> queue = line.ask(new ScpiQuestion(description.manner(), ScpiQuestion.ERRORS), deadline);
            boolean refused =
                    queue instanceof Heard.Said<ScpiSaid>(ScpiSaid.Queued(int code, String text)) && code != 0;
            return refused ? queue : reply;
        }
        return reply;
    }

    @Override
    public void close() {
        release.run();
    }
}
