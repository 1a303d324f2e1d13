// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import com.digitalpetri.modbus.MbapHeader;
import isohume.device.line.Question;
import java.nio.ByteBuffer;

/**
 * A question with a numbered header, and its reply. A reply is believed only if every field of it agrees with the
 * question.
 *
 * <p>Source: MODBUS Messaging on TCP/IP V1.0b, 3.1.3 (header: transaction, protocol 0, length, unit; 260 bytes at most).
 */
record TcpFrames(Ask ask, int unit) implements Question<Reply> {
    private static final int HEAD = 6; // bytes up to and with the length field, which tells how many follow
    private static final int MOST_BYTES = 260;
    private static final int LEAST_FOLLOWING = 3; // unit, function and one byte
    private static final int LATE = 1000; // how many questions back a reply still counts as late, not as nonsense

    @Override
    public boolean numbered() {
        return true;
    }

    @Override
    public byte[] bytes(int number) {
        byte[] pdu = Requests.bytes(ask);
        ByteBuffer frame = ByteBuffer.allocate(HEAD + 1 + pdu.length);
        MbapHeader.Serializer.encode(new MbapHeader(transaction(number), 0, 1 + pdu.length, unit), frame);
        return frame.put(pdu).array();
    }

    /** 1 to 65535 and round again. */
    private static int transaction(int number) {
        return (number - 1) % 0xFFFF + 1;
    }

    @Override
    public Hearing<Reply> hear(byte[] seen, int number) {
        if (seen.length < HEAD) {
            return new Hearing.More<>();
        }
        ByteBuffer bytes = ByteBuffer.wrap(seen);
        int following = word(bytes, 4);
        if (word(bytes, 2) != 0 || following < LEAST_FOLLOWING || HEAD + following > MOST_BYTES) {
            return new Hearing.Nonsense<>("something that is no Modbus reply came");
        }
        int length = HEAD + following;
        if (seen.length < length) {
            return new Hearing.More<>();
        }
        return isLate(word(bytes, 0), number)
                ? new Hearing.Late<>(length)
                : whole(bytes.slice(0, length), transaction(number));
    }

    private Hearing<Reply> whole(ByteBuffer frame, int transaction) {
        int replied = frame.get(HEAD) & 0xFF;
        if (word(frame, 0) != transaction) {
            return new Hearing.Nonsense<>("a reply to another question came");
        }
        if (replied != unit) {
            return new Hearing.Nonsense<>("unit " + replied + " replied, unit " + unit + " was asked");
        }
        Reply reply = Requests.reply(ask, frame.slice(HEAD + 1, frame.limit() - HEAD - 1));
        return reply instanceof Reply.No no
                ? new Hearing.Nonsense<>(no.detail())
                : new Hearing.Whole<>(reply, frame.limit());
    }

    /** Whether a frame replies to an earlier question on this connection. */
    private static boolean isLate(int transaction, int number) {
        int back = Math.floorMod(transaction(number) - transaction, 0xFFFF);
        return back > 0 && back < Math.min(number, LATE) && transaction != 0;
    }

    private static int word(ByteBuffer bytes, int at) {
        return bytes.getShort(at) & 0xFFFF;
    }
}
