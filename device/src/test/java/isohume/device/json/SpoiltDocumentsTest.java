// SPDX-License-Identifier: Apache-2.0
package isohume.device.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonPointer;
import isohume.device.Channel;
import isohume.device.Reading;
import isohume.device.Spoiler;
import isohume.device.Unit;
import isohume.device.driver.Meaning;
import isohume.device.driver.Shown;
import isohume.quantity.Quantity;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A reading is invented if the document does not name its unit as described, or has no such number behind its key; judged
 * here in the plain text. JSON has no checksum, so another digit in its place is another number.
 */
class SpoiltDocumentsTest {
    private static final byte[] GOOD =
            "{\"unit\":11,\"rh\":{\"value\":45.31,\"unit\":\"%\"},\"t\":23.12}".getBytes(StandardCharsets.UTF_8);
    private static final JsonCodec CODEC = new JsonCodec(
            List.of(new JsonCodec.Value(
                    new Shown(new Channel("w", "t", Quantity.TEMPERATURE), new BigDecimal("0.01"), Optional.empty()),
                    "",
                    JsonPointer.compile("/t"),
                    new Meaning.Scaled(BigDecimal.ONE, BigDecimal.ZERO, Unit.CELSIUS))),
            Map.of(JsonPointer.compile("/unit"), "11"));
    private static final Pattern NUMBER = Pattern.compile("\"t\"\\s*:\\s*\"?\\s*([-+0-9.eE]+)");
    private static final Pattern UNIT = Pattern.compile("\"unit\"\\s*:\\s*(\"11\"|11)\\s*[,}]");

    @Test
    void no_document_makes_the_codec_throw_and_no_reading_is_invented() {
        spoil(100_000);
    }

    @Test
    @Tag("slow")
    void nor_is_one_in_ten_million() {
        spoil(10_000_000);
    }

    private static void spoil(int documents) {
        Spoiler spoiler = Spoiler.of(SpoiltDocumentsTest.class);
        int believed = 0;
        for (int i = 0; i < documents; i++) {
            byte[] bytes = spoiler.spoilt(GOOD, 200);
            Reading reading = CODEC.readings("", bytes, Instant.EPOCH).getFirst();
            if (reading instanceof Reading.Value value) {
                believed++;
                assertSays(new String(bytes, StandardCharsets.UTF_8), value);
            }
        }
        assertTrue(believed > documents / 1000, "too few whole documents to prove anything: " + believed);
    }

    private static void assertSays(String text, Reading.Value value) {
        Matcher number = NUMBER.matcher(text);
        assertTrue(number.find(), text);
        assertEquals(
                0,
                new BigDecimal(number.group(1))
                        .compareTo(new BigDecimal(value.raw().strip())),
                text);
        BigDecimal off = new BigDecimal(number.group(1)).subtract(value.shown()).abs();
        assertTrue(off.compareTo(new BigDecimal("0.005")) <= 0, text);
        assertTrue(UNIT.matcher(text).find(), text);
    }
}
