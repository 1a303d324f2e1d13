// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.locks.Lock;

/**
 * Modbus: answers from registers, one request at a time and never in the middle of a step.
 *
 * <p>Source: MODBUS Application Protocol V1.1b3, 6.3, 6.4, 6.6, 6.12 and 7; Messaging on TCP/IP V1.0b, 3.1.3; over Serial
 * Line V1.02, 2.5.1. Written apart from the driver, which packs its frames with a library.
 */
final class ModbusSpeech implements Speech {
    private static final int FAILURE = 4;
    private static final int NO_PATH = 11; // as a gateway says of a unit that does not answer

    private final Map<Integer, Registers> units;
    private final Lock lock;
    private final boolean checksums;

    /** @param checksums frames of a serial line; otherwise those of TCP */
    ModbusSpeech(Map<Integer, Registers> units, Lock lock, boolean checksums) {
        this.units = units;
        this.lock = lock;
        this.checksums = checksums;
    }

    @Override
    public Request next(InputStream in) throws IOException {
        DataInputStream bytes = new DataInputStream(in);
        return checksums ? serial(bytes) : numbered(bytes);
    }

    private Request numbered(DataInputStream in) throws IOException {
        byte[] head = new byte[6];
        in.readFully(head);
        byte[] body = new byte[ByteBuffer.wrap(head).getShort(4) & 0xFF];
        in.readFully(body);
        return new Asked(Arrays.copyOf(head, 4), body[0] & 0xFF, Arrays.copyOfRange(body, 1, body.length));
    }

    private Request serial(DataInputStream in) throws IOException {
        while (true) {
            byte[] start = new byte[7];
            in.readFully(start);
            int more = start[1] == 16 ? (start[6] & 0xFF) + 2 : 1;
            byte[] frame = Arrays.copyOf(start, start.length + more);
            in.readFully(frame, start.length, more);
            if (crc(frame, frame.length) == 0) {
                return new Asked(new byte[0], frame[0] & 0xFF, Arrays.copyOfRange(frame, 1, frame.length - 2));
            }
        }
    }

    /** The checksum; 0 of a frame that ends with its own. */
    private static int crc(byte[] bytes, int count) {
        int crc = 0xFFFF;
        for (int i = 0; i < 8 * count; i++) {
            int bit = ((bytes[i / 8] >> (i % 8)) ^ crc) & 1;
            crc = (crc >> 1) ^ (bit * 0xA001);
        }
        return crc;
    }

    /** A request; a numbered answer begins with its {@code head}, which one with a checksum does not have. */
    private final class Asked implements Request {
        private final byte[] head;
        private final int unit;
        private final byte[] pdu;

        Asked(byte[] head, int unit, byte[] pdu) {
            this.head = head;
            this.unit = unit;
            this.pdu = pdu;
        }

        @Override
        public int unit() {
            return unit;
        }

        @Override
        public byte[] answer() {
            Registers registers = units.get(unit);
            if (registers == null) {
                return checksums ? new byte[0] : refusal(NO_PATH);
            }
            lock.lock();
            try {
                return framed(unit, answer(registers, ByteBuffer.wrap(pdu)));
            } catch (Registers.Illegal illegal) {
                return refusal(illegal.code());
            } finally {
                lock.unlock();
            }
        }

        private byte[] answer(Registers registers, ByteBuffer asked) throws Registers.Illegal {
            int address = asked.getShort(1) & 0xFFFF;
            short argument = asked.getShort(3);
            switch (pdu[0]) {
                case 3 -> {
                    return counted(registers.readHolding(address, argument));
                }
                case 4 -> {
                    return counted(registers.readInput(address, argument));
                }
                case 6 -> registers.write(address, argument);
                case 16 -> {
                    short[] words = new short[argument];
                    asked.slice(6, asked.limit() - 6).asShortBuffer().get(words);
                    registers.write(address, words);
                }
                default -> throw new Registers.Illegal(Registers.Illegal.FUNCTION);
            }
            return Arrays.copyOf(pdu, 5);
        }

        private byte[] counted(byte[] data) {
            return ByteBuffer.allocate(2 + data.length)
                    .put(pdu[0])
                    .put((byte) data.length)
                    .put(data)
                    .array();
        }

        @Override
        public byte[] refusal() {
            return refusal(FAILURE);
        }

        private byte[] refusal(int code) {
            return framed(unit, new byte[] {(byte) (pdu[0] | 0x80), (byte) code});
        }

        /** With a checksum, one that does not fit; else, a count that does not. */
        @Override
        public byte[] garbled(byte[] answer) {
            byte[] other = answer.clone();
            other[checksums ? other.length - 1 : 8] ^= 0x7F;
            return other;
        }

        @Override
        public byte[] foreign(byte[] answer) {
            int from = checksums ? 1 : 7;
            int to = checksums ? answer.length - 2 : answer.length;
            return framed(unit + 1, Arrays.copyOfRange(answer, from, to));
        }

        private byte[] framed(int from, byte[] answer) {
            if (!checksums) {
                ByteBuffer frame = ByteBuffer.allocate(7 + answer.length).put(head);
                return frame.putShort((short) (1 + answer.length))
                        .put((byte) from)
                        .put(answer)
                        .array();
            }
            byte[] frame = new byte[answer.length + 3];
            frame[0] = (byte) from;
            System.arraycopy(answer, 0, frame, 1, answer.length);
            int crc = crc(frame, answer.length + 1);
            frame[frame.length - 2] = (byte) crc;
            frame[frame.length - 1] = (byte) (crc >> 8);
            return frame;
        }
    }
}
