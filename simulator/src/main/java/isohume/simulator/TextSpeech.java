// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.LockSupport;

/**
 * Lines of text, in a form invented for this bench. {@code ?11} asks the instrument under test with that unit; it answers
 * {@code 11 RH= 45.31 %RH T= 23.12 C S=00*5A}, two hexadecimal digits at the end being the exclusive or of all before the
 * asterisk. A talking one sends that by itself, ten times a second.
 */
final class TextSpeech implements Speech {
    private static final String END = "\r\n";
    private static final long PERIOD_NANOS = 100_000_000;

    private final World world;
    private final Lock lock;
    private final Optional<Integer> talker;

    /** @param talker the unit that talks by itself; if there is none, each is asked */
    TextSpeech(World world, Lock lock, Optional<Integer> talker) {
        this.world = world;
        this.lock = lock;
        this.talker = talker;
    }

    @Override
    public Request next(InputStream in) throws IOException {
        if (talker.isPresent()) {
            LockSupport.parkNanos(PERIOD_NANOS);
            return new Asked(talker.get());
        }
        String line = line(in);
        return new Asked(line.matches("\\?[0-9]{1,3}") ? Integer.parseInt(line.substring(1)) : 0);
    }

    static String line(InputStream in) throws IOException {
        StringBuilder line = new StringBuilder();
        while (true) {
            int one = in.read();
            if (one < 0) {
                throw new EOFException();
            }
            if (one == '\n') {
                return line.toString().strip();
            }
            line.append((char) one);
        }
    }

    private final class Asked implements Request {
        private final int unit;

        Asked(int unit) {
            this.unit = unit;
        }

        @Override
        public int unit() {
            return unit;
        }

        @Override
        public byte[] answer() {
            return answer(unit);
        }

        private byte[] answer(int as) {
            int index = unit - Units.FIRST_TRANSMITTER;
            if (index < 0 || index >= world.transmitters().size()) {
                return new byte[0]; // on a line that several share, nobody feels addressed
            }
            lock.lock();
            try {
                Transmitter one = world.transmitters().get(index);
                return checked(String.format(
                        Locale.ROOT,
                        "%d RH=%6.2f %%RH T=%6.2f C S=00",
                        as,
                        one.relativeHumidity().shown().getAsDouble(),
                        one.temperature().shown().getAsDouble()));
            } finally {
                lock.unlock();
            }
        }

        private static byte[] checked(String text) {
            int check = 0;
            for (byte one : text.getBytes(StandardCharsets.US_ASCII)) {
                check ^= one;
            }
            return String.format(Locale.ROOT, "%s*%02X%s", text, check, END).getBytes(StandardCharsets.US_ASCII);
        }

        @Override
        public byte[] refusal() {
            return (unit + " ERR 4" + END).getBytes(StandardCharsets.US_ASCII);
        }

        @Override
        public byte[] garbled(byte[] answer) {
            byte[] other = answer.clone();
            int digit = new String(answer, StandardCharsets.US_ASCII).indexOf('.') + 1;
            other[digit] = (byte) (other[digit] == '0' ? '1' : '0'); // a figure is wrong, and the line looks right
            return other;
        }

        @Override
        public byte[] foreign(byte[] answer) {
            return answer(unit + 1);
        }

        /** One that talks by itself loses bytes in the middle; else its next line would only come behind this. */
        @Override
        public byte[] broken(byte[] answer) {
            byte[] broken = Arrays.copyOf(answer, answer.length - LOST_BYTES);
            if (talker.isPresent()) {
                System.arraycopy(END.getBytes(StandardCharsets.US_ASCII), 0, broken, broken.length - 2, 2);
            }
            return broken;
        }
    }
}
