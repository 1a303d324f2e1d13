// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Trouble;
import java.util.Map;

/** What is known of a device's registers after some spans were asked for. */
record Image(Map<Span, Reply.Held> spans) {
    Image {
        spans = Map.copyOf(spans);
    }

    /** Words of exactly this span, or why there are none. */
    Reply.Held of(Span span) {
        for (Map.Entry<Span, Reply.Held> asked : spans.entrySet()) {
            if (asked.getKey().holds(span)) {
                return switch (asked.getValue()) {
                    case Reply.Words(var words) -> {
                        int from = span.address() - asked.getKey().address();
                        yield new Reply.Words(words.subList(from, from + span.count()));
                    }
                    case Reply.No no -> no;
                };
            }
        }
        return new Reply.No(Trouble.SILENCE, "no time was left to ask for it");
    }
}
