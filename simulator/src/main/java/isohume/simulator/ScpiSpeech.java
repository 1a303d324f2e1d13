// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import isohume.quantity.Temperature;
import isohume.quantity.resistance.CallendarVanDusen;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.locks.Lock;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A scanning multimeter on the instruments under test: {@code MEAS:CURR:DC? (@11)} is the current of unit 11, 4 to 20 mA
 * for 0 to 100 % RH; {@code MEAS:FRES? (@11)} the resistance of a platinum thermometer at its temperature. What it does not
 * understand goes into its error queue, which {@code SYST:ERR?} empties.
 */
final class ScpiSpeech implements Speech {
    private static final Pattern MEASURE = Pattern.compile("MEAS:(CURR:DC|FRES)\\? \\(@([0-9]{1,3})\\)");
    private static final CallendarVanDusen PT100 = CallendarVanDusen.iec60751(100);

    private final List<Transmitter> transmitters;
    private final Lock lock;
    private volatile int last = Units.FIRST_TRANSMITTER;
    private volatile String error = "";

    ScpiSpeech(World world, Lock lock) {
        this.transmitters = world.transmitters();
        this.lock = lock;
    }

    @Override
    public Request next(InputStream in) throws IOException {
        String line = TextSpeech.line(in);
        Matcher measure = MEASURE.matcher(line);
        if (measure.matches()) {
            last = Integer.parseInt(measure.group(2));
            return new Asked(last, measure.group(1));
        }
        return new Asked(last, line);
    }

    private static byte[] bytes(String line) {
        return (line + "\n").getBytes(StandardCharsets.US_ASCII);
    }

    /** A measurement of a unit, or another command after one. */
    private final class Asked implements Request {
        private final int unit;
        private final String what;

        Asked(int unit, String what) {
            this.unit = unit;
            this.what = what;
        }

        @Override
        public int unit() {
            return unit;
        }

        @Override
        public byte[] answer() {
            int index = unit - Units.FIRST_TRANSMITTER;
            boolean there = index >= 0 && index < transmitters.size();
            return switch (what) {
                case "CURR:DC" -> there ? current(transmitters.get(index)) : refusal();
                case "FRES" -> there ? resistance(transmitters.get(index)) : refusal();
                case "*IDN?" -> bytes("ISOHUME,SIMULATED METER,0,1");
                case "SYST:ERR?" -> queue();
                default -> refusal();
            };
        }

        private byte[] current(Transmitter one) {
            return shown(0.004 + 0.016 * locked(one.relativeHumidity()) / 100);
        }

        private byte[] resistance(Transmitter one) {
            return shown(PT100.ohms(Temperature.ofCelsius(locked(one.temperature()))));
        }

        private double locked(Shown value) {
            lock.lock();
            try {
                return value.shown().getAsDouble();
            } finally {
                lock.unlock();
            }
        }

        private static byte[] shown(double value) {
            return bytes(String.format(Locale.ROOT, "%+.9E", value));
        }

        private byte[] queue() {
            String first = error.isEmpty() ? "+0,\"No error\"" : error;
            error = "";
            return bytes(first);
        }

        /** Nothing, and an entry in the queue. */
        @Override
        public byte[] refusal() {
            if (what.equals("SYST:ERR?")) {
                return queue();
            }
            error = "-222,\"Data out of range\"";
            return new byte[0];
        }

        @Override
        public byte[] garbled(byte[] answer) {
            byte[] other = answer.clone();
            other[2] = '#';
            return other;
        }

        /** To a question for two values. */
        @Override
        public byte[] foreign(byte[] answer) {
            String one = new String(answer, StandardCharsets.US_ASCII).strip();
            return bytes(one + "," + one);
        }

        @Override
        public byte[] broken(byte[] answer) {
            return java.util.Arrays.copyOf(answer, answer.length - LOST_BYTES);
        }
    }
}
