// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import com.digitalpetri.modbus.pdu.ReadHoldingRegistersRequest;
import com.digitalpetri.modbus.pdu.ReadInputRegistersRequest;
import com.digitalpetri.modbus.pdu.WriteMultipleRegistersRequest;
import com.digitalpetri.modbus.pdu.WriteSingleRegisterRequest;
import isohume.device.Trouble;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/**
 * The part of a frame that is the same in every framing: function and data. No input or output; nothing that arrives
 * makes it throw.
 *
 * <p>Source: Application Protocol V1.1b3, sections 6 (functions 3, 4, 6, 16) and 7 (exceptions).
 */
final class Requests {
    /** The most bytes of function and data together. */
    static final int MOST = 253;

    static final int EXCEPTION = 0x80;

    private Requests() {}

    /** Function and data of a question. */
    static byte[] bytes(Ask ask) {
        ByteBuffer pdu = ByteBuffer.allocate(MOST);
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
        byte[] bytes = new byte[pdu.flip().remaining()];
        pdu.get(bytes);
        return bytes;
    }

    /**
     * What function and data say to a question.
     *
     * @param pdu at least two bytes
     */
    static Reply reply(Ask ask, ByteBuffer pdu) {
        int function = pdu.get(0) & 0xFF;
        if (function == (function(ask) | EXCEPTION) && pdu.remaining() == 2) {
            return new Reply.Refusal(pdu.get(1) & 0xFF);
        }
        if (function != function(ask)) {
            return garbled("a reply to another function came");
        }
        return switch (ask) {
            case Ask.Read(Span span) -> words(span, pdu);
            case Ask.Write write -> written(write, pdu);
        };
    }

    /** How many bytes of function and data a good reply to this has. */
    static int length(Ask ask) {
        return switch (ask) {
            case Ask.Read(Span span) -> 2 + 2 * span.count();
            case Ask.Write write -> 5;
        };
    }

    static int function(Ask ask) {
        return switch (ask) {
            case Ask.Read read -> read.span().table() == Table.INPUT ? 4 : 3;
            case Ask.Write write -> write.words().size() == 1 ? 6 : 16;
        };
    }

    private static Reply words(Span span, ByteBuffer pdu) {
        int bytes = pdu.get(1) & 0xFF;
        if (bytes != 2 * span.count() || pdu.remaining() != 2 + bytes) {
            return garbled("a reply with another number of registers came");
        }
        List<Integer> words = new ArrayList<>();
        for (int i = 0; i < span.count(); i++) {
            words.add(word(pdu, 2 + 2 * i));
        }
        return new Reply.Words(List.copyOf(words));
    }

    private static Reply written(Ask.Write write, ByteBuffer pdu) {
        int last = write.words().size() == 1
                ? write.words().getFirst()
                : write.words().size();
        boolean echoed = pdu.remaining() == 5 && word(pdu, 1) == write.address() && word(pdu, 3) == last;
        return echoed ? new Reply.Written() : garbled("the device confirmed another write");
    }

    private static Reply.No garbled(String what) {
        return new Reply.No(Trouble.GARBLED, what);
    }

    private static byte[] bytes(List<Integer> words) {
        ByteBuffer bytes = ByteBuffer.allocate(2 * words.size());
        words.forEach(word -> bytes.putShort((short) (int) word));
        return bytes.array();
    }

    private static int word(ByteBuffer bytes, int at) {
        return bytes.getShort(at) & 0xFFFF;
    }
}
