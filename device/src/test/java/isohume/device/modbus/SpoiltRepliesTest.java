// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Reading;
import java.time.Instant;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
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
        long seed = System.nanoTime();
        System.out.println("SpoiltRepliesTest seed " + seed);
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        ReadingCodec codec = new ReadingCodec(DESCRIPTION);
        int believed = 0;
        for (int i = 0; i < REPLIES; i++) {
            byte[] frame = spoilt(random);
            Reply reply = Parsed.reply(new TcpFrames(new Ask.Read(SPAN), 7), 7, frame);
            if (reply instanceof Reply.Words words) {
                believed++;
                assertAnswersTheQuestion(frame, words, codec);
            }
        }
        assertTrue(believed > 1000, "too few whole replies to prove anything: " + believed);
        assertTrue(believed < REPLIES / 2, "too few spoilt replies to prove anything: " + believed);
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

    private static byte[] spoilt(RandomGenerator random) {
        byte[] frame = GOOD.clone();
        switch (random.nextInt(6)) {
            case 0 -> frame[random.nextInt(frame.length)] = (byte) random.nextInt();
            case 1 -> {
                for (int i = random.nextInt(5); i >= 0; i--) {
                    frame[random.nextInt(frame.length)] ^= (byte) (1 << random.nextInt(8));
                }
            }
            case 2 -> frame = Arrays.copyOf(frame, random.nextInt(frame.length + 10));
            case 3 -> random.nextBytes(frame);
            case 4 -> {
                frame = new byte[random.nextInt(300)];
                random.nextBytes(frame);
            }
            default -> frame[HEADER + random.nextInt(frame.length - HEADER)] = (byte) random.nextInt();
        }
        return frame;
    }
}
