// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import isohume.device.Trouble;
import isohume.device.line.Question.Hearing;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The bodies are the worked examples of the MODBUS Application Protocol Specification V1.1b3, 6.4 and 7; the checksum is
 * checked with the value that the catalogue of CRC algorithms gives for CRC-16/MODBUS (G. Cook, "Catalogue of
 * parametrised CRC algorithms": check 0x4B37 over the digits 1 to 9).
 */
class RtuFramesTest {
    private static final Ask ONE_INPUT = new Ask.Read(new Span(Table.INPUT, 8, 1));
    private static final RtuFrames QUESTION = new RtuFrames(ONE_INPUT, 17);

    @Test
    void the_checksum_is_the_catalogues() {
        assertEquals(0x4B37, RtuFrames.crc("123456789".getBytes(StandardCharsets.US_ASCII), 9));
    }

    @Test
    void a_question_is_unit_function_and_data_and_checks_itself() {
        byte[] bytes = QUESTION.bytes(1);
        assertArrayEquals(hex("11 04 00 08 00 01"), Arrays.copyOf(bytes, 6));
        assertEquals(0, RtuFrames.crc(bytes, bytes.length), "over a frame with its checksum it is zero");
    }

    @Test
    void a_reply_is_taken_when_all_of_it_agrees() {
        assertEquals(new Reply.Words(List.of(10)), reply(checked("11 04 02 00 0A")));
        assertEquals(
                2,
                assertInstanceOf(Reply.Refusal.class, reply(checked("11 84 02")))
                        .code());
    }

    @Test
    void a_reply_is_waited_for_until_it_is_whole() {
        byte[] whole = checked("11 04 02 00 0A");
        for (int count = 1; count < whole.length; count++) {
            assertInstanceOf(Hearing.More.class, QUESTION.hear(Arrays.copyOf(whole, count), 1));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "12 04 02 00 0A", // another unit
                "11 03 02 00 0A", // another function
                "11 04 04 00 0A 00 0A", // two registers for one
                "11 83 02", // a refusal of another function
            })
    void what_does_not_agree_with_the_question_is_garbled(String bytes) {
        assertEquals(
                Trouble.GARBLED,
                assertInstanceOf(Reply.No.class, reply(checked(bytes))).trouble());
    }

    @Test
    void a_reply_with_any_one_bit_changed_is_garbled() {
        byte[] whole = checked("11 04 02 00 0A");
        for (int bit = 0; bit < 8 * whole.length; bit++) {
            byte[] other = whole.clone();
            other[bit / 8] ^= (byte) (1 << (bit % 8));
            assertInstanceOf(Reply.No.class, reply(other));
        }
    }

    private static Reply reply(byte[] bytes) {
        return Parsed.reply(QUESTION, 1, bytes);
    }

    private static byte[] checked(String body) {
        byte[] bytes = hex(body);
        byte[] frame = Arrays.copyOf(bytes, bytes.length + 2);
        int crc = RtuFrames.crc(bytes, bytes.length);
        frame[bytes.length] = (byte) crc;
        frame[bytes.length + 1] = (byte) (crc >> 8);
        return frame;
    }

    private static byte[] hex(String text) {
        return HexFormat.of().parseHex(text.replace(" ", ""));
    }
}
