// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Trouble;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The bodies are the worked examples of the MODBUS Application Protocol Specification V1.1b3, 6.3, 6.4, 6.6, 6.12 and
 * 7; the header before them is composed by hand after the Messaging on TCP/IP Guide V1.0b, 3.1.3: transaction 0x1501,
 * protocol 0, length, unit 0xFF.
 */
class TcpFramesTest {
    private static final int TRANSACTION = 0x1501;
    private static final int UNIT = 0xFF;
    private static final Ask THREE_HOLDING = new Ask.Read(new Span(Table.HOLDING, 0x6B, 3));
    private static final Ask ONE_INPUT = new Ask.Read(new Span(Table.INPUT, 8, 1));
    private static final Ask WRITE_ONE = new Ask.Write(1, List.of(3));
    private static final Ask WRITE_TWO = new Ask.Write(1, List.of(0x000A, 0x0102));

    @Test
    void questions_are_the_specifications_examples() {
        assertQuestion("15 01 00 00 00 06 FF 03 00 6B 00 03", THREE_HOLDING);
        assertQuestion("15 01 00 00 00 06 FF 04 00 08 00 01", ONE_INPUT);
        assertQuestion("15 01 00 00 00 06 FF 06 00 01 00 03", WRITE_ONE);
        assertQuestion("15 01 00 00 00 0B FF 10 00 01 00 02 04 00 0A 01 02", WRITE_TWO);
    }

    @Test
    void replies_are_the_specifications_examples() {
        assertEquals(
                new Reply.Words(List.of(0x022B, 0, 0x0064)),
                reply(THREE_HOLDING, "15 01 00 00 00 09 FF 03 06 02 2B 00 00 00 64"));
        assertEquals(new Reply.Words(List.of(10)), reply(ONE_INPUT, "15 01 00 00 00 05 FF 04 02 00 0A"));
        assertEquals(new Reply.Written(), reply(WRITE_ONE, "15 01 00 00 00 06 FF 06 00 01 00 03"));
        assertEquals(new Reply.Written(), reply(WRITE_TWO, "15 01 00 00 00 06 FF 10 00 01 00 02"));
    }

    @ParameterizedTest
    @CsvSource({
        "1, it does not know this function",
        "2, it has no such register",
        "3, it does not accept this value",
        "4, it failed while it carried the request out",
        "6, it is busy",
        "11, it did not answer the gateway",
        "77, a code that the specification does not have",
    })
    void an_exception_is_a_refusal_in_plain_words(int code, String words) {
        Reply reply = reply(ONE_INPUT, "15 01 00 00 00 03 FF 84 %02X".formatted(code));
        Reply.No no = assertInstanceOf(Reply.Refusal.class, reply).inWords();
        assertEquals(Trouble.REFUSED, no.trouble());
        assertTrue(no.detail().contains(words), no.detail());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "", // nothing at all
                "15 01 00 00 00 05",
                "15 02 00 00 00 05 FF 04 02 00 0A", // another transaction
                "15 01 00 01 00 05 FF 04 02 00 0A", // another protocol
                "15 01 00 00 00 05 FE 04 02 00 0A", // another unit
                "15 01 00 00 00 05 FF 03 02 00 0A", // another function
                "15 01 00 00 00 05 FF 83 02 00 0A", // an exception to another function
                "15 01 00 00 00 04 FF 84 02 00", // an exception that is too long
                "15 01 00 00 00 07 FF 04 04 00 0A 00 0A", // two registers for one
                "15 01 00 00 00 03 FF 04 00", // none for one
                "15 01 00 00 00 05 FF 04 04 00 0A", // a count that is not the data's
                "15 01 00 00 00 06 FF 04 02 00 0A", // a length that is not the frame's
                "15 01 00 00 00 06 FF 04 02 00 0A 00", // a byte too many, counted
                "15 01 00 00 00 05 FF 04 02 00 0A 00", // a byte too many, not counted
            })
    void what_does_not_agree_with_the_question_is_garbled(String bytes) {
        Reply.No no = assertInstanceOf(Reply.No.class, reply(ONE_INPUT, bytes));
        assertEquals(Trouble.GARBLED, no.trouble());
    }

    @ParameterizedTest
    @ValueSource(strings = {"00 02 00 03", "00 01 00 04", "00 01", "00 01 00 03 00"})
    void an_echo_of_another_write_is_garbled(String echo) {
        byte[] body = bytes(echo);
        Reply reply = reply(WRITE_ONE, "15 01 00 00 00 %02X FF 06 %s".formatted(2 + body.length, echo));
        assertEquals(Trouble.GARBLED, assertInstanceOf(Reply.No.class, reply).trouble());
    }

    private static void assertQuestion(String bytes, Ask ask) {
        assertEquals(
                bytes,
                HexFormat.ofDelimiter(" ").withUpperCase().formatHex(new TcpFrames(ask, UNIT).bytes(TRANSACTION)));
    }

    private static Reply reply(Ask ask, String bytes) {
        return Parsed.reply(new TcpFrames(ask, UNIT), TRANSACTION, bytes(bytes));
    }

    private static byte[] bytes(String text) {
        return HexFormat.of().parseHex(text.replace(" ", ""));
    }
}
