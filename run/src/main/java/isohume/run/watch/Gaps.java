// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import isohume.device.Reading;
import isohume.device.Trouble;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** Channels from which nothing usable comes. One lost reply is no fault: its poll is not used, and that is all. */
final class Gaps implements Detector {
    private static final int POLLS = 3;

    private record Gap(Instant since, int polls) {}

    private final Set<String> needed;
    private final Map<String, Gap> gaps = new HashMap<>();

    Gaps(Channels channels) {
        needed = new HashSet<>(channels.needed());
    }

    @Override
    public void look(Poll poll, Consumer<Sighting> seen) {
        for (Reading reading : poll.readings()) {
            String id = reading.channel().id();
            switch (reading) {
                case Reading.Absent absent -> {
                    if (needed.contains(id)) {
                        look(absent, id, poll, seen);
                    }
                }
                case Reading.Value value -> gaps.remove(id);
                case Reading.Doubtful doubtful -> gaps.remove(id);
            }
        }
    }

    private void look(Reading.Absent absent, String id, Poll poll, Consumer<Sighting> seen) {
        Gap gap = gaps.merge(id, new Gap(poll.at(), 1), (before, now) -> new Gap(before.since(), before.polls() + 1));
        if (gap.polls() >= POLLS) {
            seen.accept(new Sighting(fault(absent.trouble()), id, gap.since(), absent.detail()));
        }
    }

    private static Fault fault(Trouble trouble) {
        return switch (trouble) {
            case SILENCE -> Fault.SILENT;
            case GARBLED -> Fault.GARBLED;
            case REFUSED -> Fault.REFUSED;
            case UNPLUGGED -> Fault.UNPLUGGED;
        };
    }

    @Override
    public void retarget() {}
}
