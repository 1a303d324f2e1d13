// SPDX-License-Identifier: Apache-2.0
package isohume.station.trial;

import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.device.driver.DeviceDescription;
import isohume.device.driver.Devices;
import isohume.device.line.Transcript;
import isohume.device.trial.Trial;
import isohume.station.bench.OpenBench;
import isohume.station.bench.WallTime;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/** Reads a device again and again for a while: over a connection of its own, or as a bench has it connected already. */
public final class Attempt implements Source {
    private static final Duration PAUSE = Duration.ofMillis(250); // between two reads' beginnings

    private final DeviceDescription description;
    private final Supplier<Instrument> opening;
    private final Runnable lettingGo;
    private final Listener listener;
    private volatile boolean stopped;

    /** Hears what happens meanwhile, from several threads. */
    public interface Listener {
        /** Hears nothing. */
        Listener NONE = new Listener() {
            @Override
            public void moved(String line) {}

            @Override
            public void read(List<Reading> readings, Trial soFar) {}
        };

        /** Bytes moved; as a line of a transcript, with the text that they are behind it. */
        void moved(String line);

        /** The device was read; what it gave so far may be looked at until this returns. */
        void read(List<Reading> readings, Trial soFar);
    }

    private Attempt(
            DeviceDescription description, Supplier<Instrument> opening, Runnable lettingGo, Listener listener) {
        this.description = description;
        this.opening = opening;
        this.lettingGo = lettingGo;
        this.listener = listener;
    }

    /** Over a connection of its own, which the first read makes. */
    public static Attempt of(DeviceDescription description, InstantSource clock, Listener listener) {
        Devices devices = new Devices((place, sent, bytes) -> listener.moved(line(sent, bytes)));
        return new Attempt(description, () -> devices.open(description, clock), devices::close, listener);
    }

    /** Through a bench that has it connected, and reads nothing meanwhile; the listener hears of no bytes. */
    static Attempt through(OpenBench.Connected connected, Listener listener) {
        return new Attempt(connected.description(), connected::instrument, () -> {}, listener);
    }

    @Override
    public Trial carryOut(Duration howLong) {
        Trial trial = new Trial(description);
        long end = System.nanoTime() + howLong.toNanos();
        try {
            Instrument instrument = opening.get();
            do {
                long begun = System.nanoTime();
                List<Reading> readings = instrument.read();
                long now = System.nanoTime();
                if (stopped) { // what was under way may have ended with its connection
                    break;
                }
                trial.add(readings, now, Duration.ofNanos(now - begun));
                listener.read(readings, trial);
                long rest = Math.min(PAUSE.toNanos() - (now - begun), end - now);
                WallTime.pause(Duration.ofNanos(Math.max(0, rest)));
            } while (System.nanoTime() < end && !stopped);
        } finally {
            lettingGo.run();
        }
        return trial;
    }

    @Override
    public void stop() {
        stopped = true;
        lettingGo.run();
    }

    static String line(boolean sent, byte[] bytes) {
        StringBuilder text = new StringBuilder(Transcript.line(sent, bytes)).append("  # ");
        for (byte one : bytes) {
            text.append(one >= ' ' && one < 0x7F ? (char) one : '.');
        }
        return text.toString();
    }

    /** A reading as people say it. */
    public static String inWords(Reading reading) {
        return reading.channel().name() + " " + shown(reading);
    }

    /** A reading as people say it, without its name. */
    public static String shown(Reading reading) {
        String unit = reading.channel().quantity().unit();
        return switch (reading) {
            case Reading.Value value -> (value.shown().toPlainString() + " " + unit).strip();
            case Reading.Doubtful doubtful ->
                (doubtful.shown().toPlainString() + " " + unit).strip() + ", doubtful: " + doubtful.flag();
            case Reading.Absent absent -> absent.trouble().name().toLowerCase(Locale.ROOT) + ": " + absent.detail();
        };
    }
}
