// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import com.digitalpetri.modbus.MbapHeader;
import com.digitalpetri.modbus.pdu.ReadHoldingRegistersRequest;
import com.digitalpetri.modbus.pdu.ReadInputRegistersRequest;
import com.digitalpetri.modbus.pdu.WriteMultipleRegistersRequest;
import com.digitalpetri.modbus.pdu.WriteSingleRegisterRequest;
import isohume.device.Trouble;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Questions to bytes, and bytes to replies. No input or output; nothing that arrives makes it throw.
 *
 * <p>Source: MODBUS Messaging on TCP/IP V1.0b, 3.1.3 (header: transaction, protocol 0, length, unit; 260 bytes at
 * most), and Application Protocol V1.1b3, sections 6 (functions 3, 4, 6, 16) and 7 (exceptions). A reply is believed
 * only if every field of it agrees with the question.
 */
final class Frames {
    /** Bytes up to and with the length field, which tells how many follow. */
    static final int HEAD = 6;

    private static final int MOST_BYTES = 260;
    private static final int LEAST_FOLLOWING = 3; // unit, function and one byte
    private static final int EXCEPTION = 0x80;

    private Frames() {}

    /** The frame of a question. */
    static byte[] question(Ask ask, int transaction, int unit) {
        ByteBuffer pdu = ByteBuffer.allocate(MOST_BYTES);
        switch (ask) {
            case Ask.Read(Span(Table table, int address, int count)) -> {
                switch (table) {
                    case INPUT ->
                        ReadInputRegistersRequest.Serializer.encode(new ReadInputRegistersRequest(address, count), pdu);
                    case HOLDING ->
                        ReadHoldingRegistersRequest.Serializer.encode(
                                new ReadHoldingRegistersRequest(address, count), pdu);
                }
            }
            case Ask.Write(int address, List<Integer> words)
            when words.size() == 1 ->
                WriteSingleRegisterRequest.Serializer.encode(
                        new WriteSingleRegisterRequest(address, words.getFirst()), pdu);
            case Ask.Write(int address, List<Integer> words) ->
                WriteMultipleRegistersRequest.Serializer.encode(
                        new WriteMultipleRegistersRequest(address, words.size(), bytes(words)), pdu);
        }
        pdu.flip();
        ByteBuffer frame = ByteBuffer.allocate(HEAD + 1 + pdu.remaining());
        MbapHeader.Serializer.encode(new MbapHeader(transaction, 0, 1 + pdu.remaining(), unit), frame);
        return frame.put(pdu).array();
    }

    /** The whole length of a frame that begins with these {@link #HEAD} bytes; 0 if no reply can begin so. */
    static int length(byte[] head) {
        ByteBuffer bytes = ByteBuffer.wrap(head);
        int protocol = word(bytes, 2);
        int following = word(bytes, 4);
        boolean plausible = protocol == 0 && following >= LEAST_FOLLOWING && HEAD + following <= MOST_BYTES;
        return plausible ? HEAD + following : 0;
    }

    /** The transaction number at the beginning of a frame of at least {@link #HEAD} bytes. */
    static int transaction(byte[] frame) {
        return word(ByteBuffer.wrap(frame), 0);
    }

    /** What a frame says to a question. */
    static Reply reply(Ask ask, int transaction, int unit, byte[] frame) {
        if (frame.length < HEAD + LEAST_FOLLOWING || length(frame) != frame.length) {
            return garbled("a reply of a wrong length came", frame);
        }
        if (transaction(frame) != transaction) {
            return garbled("a reply to another question came", frame);
        }
        if ((frame[HEAD] & 0xFF) != unit) {
            return garbled("unit " + (frame[HEAD] & 0xFF) + " replied, unit " + unit + " was asked", frame);
        }
        ByteBuffer pdu =
                ByteBuffer.wrap(frame, HEAD + 1, frame.length - HEAD - 1).slice();
        int function = pdu.get(0) & 0xFF;
        if (function == (function(ask) | EXCEPTION) && pdu.remaining() == 2) {
            return new Reply.Refusal(pdu.get(1) & 0xFF);
        }
        if (function != function(ask)) {
            return garbled("a reply to another function came", frame);
        }
        return switch (ask) {
            case Ask.Read(Span span) -> words(span, pdu, frame);
            case Ask.Write write -> written(write, pdu, frame);
        };
    }

    /** A reply that is none. */
    static Reply.No garbled(String what, byte[] seen) {
        return new Reply.No(Trouble.GARBLED, what + " (" + hex(seen) + ")");
    }

    private static Reply words(Span span, ByteBuffer pdu, byte[] frame) {
        int bytes = pdu.get(1) & 0xFF;
        if (bytes != 2 * span.count() || pdu.remaining() != 2 + bytes) {
            return garbled("a reply with another number of registers came", frame);
        }
        List<Integer> words = new ArrayList<>();
        for (int i = 0; i < span.count(); i++) {
            words.add(word(pdu, 2 + 2 * i));
        }
        return new Reply.Words(List.copyOf(words));
    }

    private static Reply written(Ask.Write write, ByteBuffer pdu, byte[] frame) {
        int last = write.words().size() == 1
                ? write.words().getFirst()
                : write.words().size();
        boolean echoed = pdu.remaining() == 5 && word(pdu, 1) == write.address() && word(pdu, 3) == last;
        return echoed ? new Reply.Written() : garbled("the device confirmed another write", frame);
    }

    private static int function(Ask ask) {
        return switch (ask) {
            case Ask.Read read -> read.span().table() == Table.INPUT ? 4 : 3;
            case Ask.Write write -> write.words().size() == 1 ? 6 : 16;
        };
    }

    private static byte[] bytes(List<Integer> words) {
        ByteBuffer bytes = ByteBuffer.allocate(2 * words.size());
        words.forEach(word -> bytes.putShort((short) (int) word));
        return bytes.array();
    }

    private static int word(ByteBuffer bytes, int at) {
        return bytes.getShort(at) & 0xFFFF;
    }

    private static String hex(byte[] bytes) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Math.min(bytes.length, 16); i++) {
            text.append(i == 0 ? "" : " ").append(String.format(Locale.ROOT, "%02X", bytes[i]));
        }
        return text.append(bytes.length > 16 ? " …" : "").toString();
    }
}
