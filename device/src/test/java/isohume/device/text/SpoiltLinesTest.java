// SPDX-License-Identifier: Apache-2.0
package isohume.device.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Reading;
import isohume.device.Spoiler;
import isohume.device.Unit;
import isohume.device.line.Heard;
import isohume.device.line.Question.Hearing;
import isohume.device.protocol.Protocol;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A reading is invented if its line is not as described, if the checksum over it is another, or if its digits are not
 * those in the line. All three are judged here by other means than the codec's.
 */
class SpoiltLinesTest {
    private static final TextDescription PROBE =
            (TextDescription) Protocol.parse(Protocol.TEXT.scaffold(), "text.yaml");
    private static final byte[] GOOD = good("11 RH= 45.31 %RH T= 23.12 C S=00");
    private static final Pattern LINE = Pattern.compile(
            "(?:\r\n)*(11 RH= *([-0-9.]+) %RH T= *([-0-9.]+) ([CF]) S=(..))\\*(..)\r\n.*", Pattern.DOTALL);

    private static byte[] good(String text) {
        int check = 0;
        for (byte one : text.getBytes(StandardCharsets.US_ASCII)) {
            check ^= one;
        }
        return String.format("%s*%02X\r\n", text, check).getBytes(StandardCharsets.US_ASCII);
    }

    @Test
    void no_line_makes_the_codec_throw_and_no_reading_is_invented() {
        spoil(100_000);
    }

    @Test
    @Tag("slow")
    void nor_is_one_in_ten_million() {
        spoil(10_000_000);
    }

    private static void spoil(int lines) {
        Spoiler spoiler = Spoiler.of(SpoiltLinesTest.class);
        Exchange exchange = PROBE.exchanges().getFirst();
        int believed = 0;
        for (int i = 0; i < lines; i++) {
            byte[] bytes = spoiler.spoilt(GOOD, 300);
            Hearing<Spoken> hearing = bytes.length == 0
                    ? new Hearing.More<>()
                    : exchange.question(PROBE.manner()).hear(bytes, 1);
            if (hearing instanceof Hearing.Whole<Spoken>(Spoken.Values said, int count)) {
                believed++;
                assertSaid(new String(bytes, 0, count, StandardCharsets.ISO_8859_1), said);
            }
        }
        assertTrue(believed > lines / 1000, "too few whole lines to prove anything: " + believed);
    }

    private static void assertSaid(String line, Spoken.Values said) {
        Matcher matcher = LINE.matcher(line);
        assertTrue(matcher.matches(), line);
        int check = 0;
        for (byte one : matcher.group(1).getBytes(StandardCharsets.ISO_8859_1)) {
            check ^= one;
        }
        assertEquals(String.format("%02X", check), matcher.group(6).toUpperCase(java.util.Locale.ROOT));
        Heard<Spoken> heard = new Heard.Said<>(said);
        Map<String, Heard<Spoken>> everywhere = PROBE.everywhere(heard);
        List<Reading> readings = PROBE.codec().readings(everywhere, Instant.EPOCH);
        assertShown(matcher.group(2), readings.get(0), Unit.PERCENT_RH);
        assertShown(matcher.group(3), readings.get(1), matcher.group(4).equals("C") ? Unit.CELSIUS : Unit.FAHRENHEIT);
    }

    private static void assertShown(String digits, Reading reading, Unit unit) {
        BigDecimal shown = switch (reading) {
            case Reading.Value value -> value.shown();
            case Reading.Doubtful doubtful -> doubtful.shown();
            case Reading.Absent absent -> null;
        };
        if (shown != null) {
            BigDecimal expected = unit.toQuantity(new BigDecimal(digits));
            assertTrue(expected.subtract(shown).abs().compareTo(new BigDecimal("0.005")) <= 0, digits + " as " + shown);
        }
    }
}
