// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.device.driver.DeviceDescription;
import isohume.device.driver.Devices;
import isohume.device.line.Transcript;
import isohume.device.trial.Trial;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.function.BooleanSupplier;

/** Reads a described device again and again for a while. */
public final class Attempt {
    private static final Duration PAUSE = Duration.ofMillis(250); // between two reads' beginnings

    private Attempt() {}

    /** Hears what happens meanwhile, from several threads. */
    public interface Listener {
        /** Hears nothing. */
        Listener NONE = new Listener() {
            @Override
            public void moved(String line) {}

            @Override
            public void read(List<Reading> readings) {}
        };

        /** Bytes moved; as a line of a transcript, with the text that they are behind it. */
        void moved(String line);

        /** The device was read. */
        void read(List<Reading> readings);
    }

    /** Reads for so long, and once at least. */
    public static Trial of(
            DeviceDescription description,
            Duration howLong,
            InstantSource clock,
            Listener listener,
            BooleanSupplier enough) {
        Trial trial = new Trial(description);
        long end = System.nanoTime() + howLong.toNanos();
        try (Devices devices = new Devices((place, sent, bytes) -> listener.moved(line(sent, bytes)))) {
            Instrument instrument = devices.open(description, clock);
            do {
                long begun = System.nanoTime();
                List<Reading> readings = instrument.read();
                long now = System.nanoTime();
                trial.add(readings, now, Duration.ofNanos(now - begun));
                listener.read(readings);
                long rest = Math.min(PAUSE.toNanos() - (now - begun), end - now);
                WallTime.pause(Duration.ofNanos(Math.max(0, rest)));
            } while (System.nanoTime() < end && !enough.getAsBoolean());
            instrument.close();
        }
        return trial;
    }

    private static String line(boolean sent, byte[] bytes) {
        StringBuilder text = new StringBuilder(Transcript.line(sent, bytes)).append("  # ");
        for (byte one : bytes) {
            text.append(one >= ' ' && one < 0x7F ? (char) one : '.');
        }
        return text.toString();
    }

    /** A reading as people say it. */
    public static String inWords(Reading reading) {
        String name = reading.channel().name() + " ";
        String unit = reading.channel().quantity().unit();
        return switch (reading) {
            case Reading.Value value -> name + value.shown().toPlainString() + " " + unit;
            case Reading.Doubtful doubtful ->
                name + doubtful.shown().toPlainString() + " " + unit + ", doubtful: " + doubtful.flag();
            case Reading.Absent absent ->
                name + absent.trouble().name().toLowerCase(java.util.Locale.ROOT) + ": " + absent.detail();
        };
    }
}
