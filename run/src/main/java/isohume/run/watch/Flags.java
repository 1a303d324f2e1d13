// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import isohume.device.Reading;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/**
 * What instruments and their descriptions say against their own values. Signs of the chamber count at once; of other
 * flags, one alone is no fault. A mirror that changes its deposit is {@link Undecided}'s.
 */
final class Flags implements Detector {
    private static final int POLLS = 3;
    private static final String OUTSIDE = "outside ";

    private record Flagged(Instant since, int polls) {}

    private final Channels channels;
    private final Set<String> needed;
    private final Map<String, Fault> signs;
    private final Map<String, Flagged> flagged = new HashMap<>();

    Flags(Channels channels, Bounds bounds) {
        this.channels = channels;
        this.needed = new HashSet<>(channels.needed());
        this.signs = bounds.signs();
    }

    @Override
    public void look(Poll poll, Consumer<Sighting> seen) {
        for (Reading reading : poll.readings()) {
            String id = reading.channel().id();
            if (reading instanceof Reading.Doubtful doubtful) {
                look(doubtful, id, poll, seen);
            } else {
                flagged.remove(id);
            }
        }
    }

    private void look(Reading.Doubtful doubtful, String id, Poll poll, Consumer<Sighting> seen) {
        Flagged now = flagged.merge(
                id, new Flagged(poll.at(), 1), (before, first) -> new Flagged(before.since(), before.polls() + 1));
        for (String flag : doubtful.flag().split("; ", -1)) {
            Fault sign = signs.get(flag);
            if (sign != null) {
                seen.accept(new Sighting(sign, doubtful.channel().instrument(), now.since(), flag));
            } else if (needed.contains(id)
                    && now.polls() >= POLLS
                    && !(channels.ofMirror(id) && !flag.startsWith(OUTSIDE))) {
                Fault fault = flag.startsWith(OUTSIDE) ? Fault.OUT_OF_RANGE : Fault.DOUBTFUL;
                String shown = doubtful.shown().toPlainString() + " "
                        + doubtful.channel().quantity().unit();
                seen.accept(new Sighting(fault, id, now.since(), shown + ": " + flag));
            }
        }
    }

    @Override
    public void retarget() {}
}
