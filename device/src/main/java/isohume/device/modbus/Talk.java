// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Trouble;
import isohume.device.line.Deadline;
import isohume.device.line.Heard;
import isohume.device.line.Line;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Questions to one unit on a line, under one deadline, by the thread that holds the line. */
final class Talk {
    private final Line line;
    private final Framing framing;
    private final int unit;
    private final Deadline deadline;
    private boolean registersMissing;

    Talk(Line line, Framing framing, int unit, Deadline deadline) {
        this.line = line;
        this.framing = framing;
        this.unit = unit;
        this.deadline = deadline;
    }

    Reply ask(Ask ask) {
        return switch (line.ask(framing.question(ask, unit), deadline)) {
            case Heard.Said<Reply>(Reply reply) -> reply;
            case Heard.Nothing<Reply>(Trouble trouble, String detail) -> new Reply.No(trouble, detail);
        };
    }

    /** Reads spans one after the other; once the device is silent or gone, the rest shares that fate. */
    Image read(List<Span> plan) {
        Map<Span, Reply.Held> seen = new HashMap<>();
        for (Span span : plan) {
            Reply.Held held = held(ask(new Ask.Read(span)));
            seen.put(span, held);
            if (held instanceof Reply.No no && no.trouble() != Trouble.REFUSED) {
                plan.forEach(other -> seen.putIfAbsent(other, no));
                break;
            }
        }
        return new Image(seen);
    }

    /** Whether the device said of some span that it has no such registers. */
    boolean registersMissing() {
        return registersMissing;
    }

    private Reply.Held held(Reply reply) {
        return switch (reply) {
            case Reply.Held held -> held;
            case Reply.Refusal refusal -> {
                registersMissing |= refusal.code() == Reply.Refusal.ILLEGAL_ADDRESS;
                yield refusal.inWords();
            }
            case Reply.Written written -> new Reply.No(Trouble.GARBLED, "a read was confirmed as a write");
        };
    }
}
