// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Trouble;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Questions to one unit on a line, under one deadline, by the thread that holds the line. */
final class Talk {
    private final TcpLine line;
    private final int unit;
    private final Deadline deadline;
    private boolean registersMissing;

    Talk(TcpLine line, int unit, Deadline deadline) {
        this.line = line;
        this.unit = unit;
        this.deadline = deadline;
    }

    Reply ask(Ask ask) {
        return line.ask(ask, unit, deadline);
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
