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

    private final Channels channels;
    private final Map<String, Gap> gaps = new HashMap<>();

    Gaps(Channels channels) {
        this.channels = channels;
    }

    @Override
    public void look(Poll poll, Consumer<Sighting> seen) {
        Set<String> answering = new HashSet<>();
        for (Reading reading : poll.readings()) {
            if (!(reading instanceof Reading.Absent)) {
                answering.add(reading.channel().instrument());
                gaps.remove(reading.channel().id());
            }
        }
        for (Reading reading : poll.readings()) {
            if (reading instanceof Reading.Absent absent && channels.isNeeded(absent.channel())) {
                String instrument = absent.channel().instrument();
                String id = absent.channel().id();
                look(absent, id, answering.contains(instrument) ? id : instrument, poll, seen);
            }
        }
    }

    /** @param name the channel, or its whole instrument where none of its channels comes */
    private void look(Reading.Absent absent, String id, String name, Poll poll, Consumer<Sighting> seen) {
        Gap gap = gaps.merge(id, new Gap(poll.at(), 1), (before, now) -> new Gap(before.since(), before.polls() + 1));
        if (gap.polls() >= POLLS) {
            seen.accept(new Sighting(fault(absent.trouble()), name, gap.since(), absent.detail()));
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
