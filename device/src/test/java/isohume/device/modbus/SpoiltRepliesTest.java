// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Reading;
import isohume.device.Spoiler;
import java.time.Instant;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A hundred thousand replies with bytes changed, lost, added or made up. */
class SpoiltRepliesTest {
    private static final int REPLIES = 100_000;
    private static final int HEADER = 9; // up to and with the byte count
    private static final Instant NOW = Instant.EPOCH;
    private static final ModbusDescription DESCRIPTION = Parsed.tcp("""
            device: probe
            title: A probe
            line: {modbus-tcp: {host: 127.0.0.1, port: 502, unit: 7}}
            channels:
              - {name: rh, quantity: relative_humidity, table: input, address: 0, type: float32, unit: "1", resolution: 0.01}
              - {name: t, quantity: temperature, table: input, address: 2, type: int16, scale: 0.1, unit: K, resolution: 0.1}
            status: {table: input, address: 3, bits: {0: warming up, 15: sensor broken}}
            """, "probe.yaml");
    private static final Span SPAN = new Span(Table.INPUT, 0, 4);
    private static final byte[] GOOD = HexFormat.of().parseHex("00070000000B0704083F0000000BA20001");

    @Test
    void no_reply_makes_the_codec_throw_and_none_is_believed_that_does_not_answer_the_question() {
        numbered(REPLIES);
        checked(REPLIES);
    }

    @Test
    @Tag("slow")
    void nor_does_one_of_ten_million_numbered_ones() {
        numbered(10_000_000);
    }

    @Test
    @Tag("slow")
    void nor_does_one_of_ten_million_with_a_checksum() {
        checked(10_000_000);
    }

    private static void numbered(int replies) {
        Spoiler spoiler = Spoiler.of(SpoiltRepliesTest.class);
        ReadingCodec codec = new ReadingCodec(DESCRIPTION);
        int believed = 0;
        for (int i = 0; i < replies; i++) {
            byte[] frame = spoiler.spoilt(GOOD, 300);
            Reply reply = Parsed.reply(new TcpFrames(new Ask.Read(SPAN), 7), 7, frame);
            if (reply instanceof Reply.Words words) {
                believed++;
                assertAnswersTheQuestion(frame, words, codec);
            }
        }
        assertTrue(believed > replies / 100, "too few whole replies to prove anything: " + believed);
        assertTrue(believed < replies / 2, "too few spoilt replies to prove anything: " + believed);
    }

    /** With a checksum, a reply is believed only if it is the good one, or another whose checksum fits by chance. */
    private static void checked(int replies) {
        Spoiler spoiler = Spoiler.of(SpoiltRepliesTest.class);
        RtuFrames question = new RtuFrames(new Ask.Read(SPAN), 7);
        byte[] good = HexFormat.of().parseHex("0704083F0000000BA200010000");
        int crc = crc(good, good.length - 2);
        good[good.length - 2] = (byte) crc;
        good[good.length - 1] = (byte) (crc >> 8);
        int others = 0;
        for (int i = 0; i < replies; i++) {
            byte[] frame = spoiler.spoilt(good, 300);
            Reply reply = Parsed.reply(question, 1, frame);
            if (reply instanceof Reply.Words words) {
                assertArrayEquals(Arrays.copyOf(good, 3), Arrays.copyOf(frame, 3));
                assertEquals(0, crc(frame, frame.length));
                for (int w = 0; w < 4; w++) {
                    int held = ((frame[3 + 2 * w] & 0xFF) << 8) | (frame[4 + 2 * w] & 0xFF);
                    assertEquals(held, words.words().get(w));
                }
                others += Arrays.equals(good, frame) ? 0 : 1;
            }
        }
        assertTrue(others <= 2 + replies / 10_000, others + " spoilt replies were believed");
    }

    /** The checksum written again, by dividing bit by bit as MODBUS over Serial Line V1.02, 6.2.2 tells it. */
    private static int crc(byte[] bytes, int count) {
        int rest = 0xFFFF;
        for (int i = 0; i < 8 * count; i++) {
            boolean one = (((bytes[i / 8] >> (i % 8)) ^ rest) & 1) == 1;
            rest = (rest >> 1) ^ (one ? 0xA001 : 0);
        }
        return rest;
    }

    /** Modbus TCP has no checksum, so changed data bytes pass; everything else has to be as asked. */
    private static void assertAnswersTheQuestion(byte[] frame, Reply.Words words, ReadingCodec codec) {
        assertEquals(GOOD.length, frame.length);
        assertArrayEquals(Arrays.copyOf(GOOD, HEADER), Arrays.copyOf(frame, HEADER));
        String data = HexFormat.of().withUpperCase().formatHex(frame, HEADER, frame.length);
        List<Reading> readings = codec.readings(new Image(Map.of(SPAN, words)), NOW);
        assertEquals(2, readings.size());
        assertRaw(data.substring(0, 8), readings.get(0));
        assertRaw(data.substring(8, 12), readings.get(1));
    }

    private static void assertRaw(String hex, Reading reading) {
        switch (reading) {
            case Reading.Value value -> assertEquals(hex, value.raw().replace(" ", ""));
            case Reading.Doubtful doubtful -> assertEquals(hex, doubtful.raw().replace(" ", ""));
            case Reading.Absent absent -> assertTrue(absent.detail().contains("hold"), absent.detail());
        }
    }
}
