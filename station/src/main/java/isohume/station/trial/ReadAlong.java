// SPDX-License-Identifier: Apache-2.0
package isohume.station.trial;

import isohume.device.Reading;
import isohume.device.driver.DeviceDescription;
import isohume.device.trial.Trial;
import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.station.bench.WallTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** What a run reads from a device, as its facts come; nothing is asked of the device. */
final class ReadAlong implements Source {
    private static final Duration PAUSE = Duration.ofMillis(250); // between two looks
    private static final int BEFORE = 60; // facts that were there already
    private static final int PAGE = 500;

    private final Journal journal;
    private final StreamName run;
    private final DeviceDescription description;
    private final Attempt.Listener listener;
    private volatile boolean over;

    ReadAlong(Journal journal, StreamName run, DeviceDescription description, Attempt.Listener listener) {
        this.journal = journal;
        this.run = run;
        this.description = description;
        this.listener = listener;
    }

    @Override
    public Trial carryOut(Duration howLong) {
        Trial trial = new Trial(description);
        long end = System.nanoTime() + howLong.toNanos();
        long taken = Math.max(0, journal.last(run) - BEFORE);
        while (true) {
            for (Entry entry : journal.read(run, taken, PAGE)) {
                taken = entry.number();
                take(RunNotation.decode(entry.fact()), trial);
            }
            if (over || System.nanoTime() >= end) {
                return trial;
            }
            WallTime.pause(PAUSE);
        }
    }

    private void take(RunFact fact, Trial trial) {
        switch (fact) {
            case RunFact.Observed(Instant at, List<Reading> readings) -> {
                List<Reading> own = readings.stream()
                        .filter(reading -> reading.channel().instrument().equals(description.id()))
                        .toList();
                if (!own.isEmpty()) {
                    trial.add(own, at.getEpochSecond() * 1_000_000_000L + at.getNano());
                    listener.read(own, trial);
                }
            }
            case RunFact.Finished finished -> over = true;
            default -> {} // says nothing of a device
        }
    }

    @Override
    public void stop() {
        over = true;
    }
}
