// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.line.Question;
import java.nio.ByteBuffer;
import java.util.Arrays;

/**
 * A question with a checksum, and its reply. A reply is believed only if unit, function, length and checksum agree with
 * the question; nothing in it tells which question it replies to.
 *
 * <p>Source: MODBUS over Serial Line V1.02, 2.5.1 (unit, function, data, CRC; 256 bytes at most) and 6.2.2 (the CRC: polynomial
 * 0xA001 reflected, begun with 0xFFFF, low byte first).
 */
record RtuFrames(Ask ask, int unit) implements Question<Reply> {
    private static final int AROUND = 3; // unit in front, checksum behind
    private static final int REFUSAL = 5;

    @Override
    public boolean numbered() {
        return false;
    }

    @Override
    public byte[] bytes(int number) {
        byte[] pdu = Requests.bytes(ask);
        byte[] frame = new byte[pdu.length + AROUND];
        frame[0] = (byte) unit;
        System.arraycopy(pdu, 0, frame, 1, pdu.length);
        int crc = crc(frame, frame.length - 2);
        frame[frame.length - 2] = (byte) crc;
        frame[frame.length - 1] = (byte) (crc >> 8);
        return frame;
    }

    @Override
    public Hearing<Reply> hear(byte[] seen, int number) {
        if ((seen[0] & 0xFF) != unit) {
            return new Hearing.Nonsense<>("unit " + (seen[0] & 0xFF) + " replied, unit " + unit + " was asked");
        }
        if (seen.length < REFUSAL) {
            return new Hearing.More<>();
        }
        boolean refusal = (seen[1] & 0xFF) == (Requests.function(ask) | Requests.EXCEPTION);
        int length = refusal ? REFUSAL : Requests.length(ask) + AROUND;
        boolean begins = refusal || begins(seen);
        if (begins && seen.length < length) {
            return new Hearing.More<>();
        }
        return begins ? whole(Arrays.copyOf(seen, length)) : new Hearing.Nonsense<>("a reply to another question came");
    }

    private boolean begins(byte[] seen) {
        boolean counted = !(ask instanceof Ask.Read(Span span)) || (seen[2] & 0xFF) == 2 * span.count();
        return (seen[1] & 0xFF) == Requests.function(ask) && counted;
    }

    private Hearing<Reply> whole(byte[] frame) {
        int last = frame.length - 2;
        int given = (frame[last] & 0xFF) | ((frame[last + 1] & 0xFF) << 8);
        if (given != crc(frame, last)) {
            return new Hearing.Nonsense<>("a reply with a wrong checksum came");
        }
        Reply reply = Requests.reply(ask, ByteBuffer.wrap(frame, 1, last - 1).slice());
        return reply instanceof Reply.No no
                ? new Hearing.Nonsense<>(no.detail())
                : new Hearing.Whole<>(reply, frame.length);
    }

    /** The checksum of the first bytes. */
    static int crc(byte[] bytes, int count) {
        int crc = 0xFFFF;
        for (int i = 0; i < count; i++) {
            crc ^= bytes[i] & 0xFF;
            for (int bit = 0; bit < 8; bit++) {
                crc = (crc & 1) == 1 ? (crc >>> 1) ^ 0xA001 : crc >>> 1;
            }
        }
        return crc;
    }
}
