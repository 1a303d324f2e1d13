// SPDX-License-Identifier: Apache-2.0
package isohume.device.scpi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Spoiler;
import isohume.device.line.Question.Hearing;
import isohume.device.text.LineQuestion;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A number is invented if the first line is not all of it, written as IEEE 488.2 writes numbers. There is no checksum, so
 * another digit in its place is another number.
 */
class SpoiltAnswersTest {
    private static final byte[] GOOD = "+1.234567890E-02\n".getBytes(StandardCharsets.US_ASCII);
    private static final String BLANK = "[ \\t\\r\\f\\x0B\\x1C-\\x1F]*";
    private static final Pattern LINE = Pattern.compile(
            "\\n*" + BLANK + "([-+]?[0-9]*\\.?[0-9]*(?:[eE][-+]?[0-9]+)?)" + BLANK + "\\n.*", Pattern.DOTALL);

    @Test
    void no_answer_makes_the_codec_throw_and_no_number_is_invented() {
        spoil(100_000);
    }

    @Test
    @Tag("slow")
    void nor_is_one_in_ten_million() {
        spoil(10_000_000);
    }

    private static void spoil(int answers) {
        Spoiler spoiler = Spoiler.of(SpoiltAnswersTest.class);
        ScpiQuestion question =
                new ScpiQuestion(new LineQuestion.Manner(StandardCharsets.US_ASCII, "\n", "\n", false), "READ?");
        int believed = 0;
        for (int i = 0; i < answers; i++) {
            byte[] bytes = spoiler.spoilt(GOOD, 100);
            Hearing<ScpiSaid> hearing = bytes.length == 0 ? new Hearing.More<>() : question.hear(bytes, 1);
            if (hearing instanceof Hearing.Whole<ScpiSaid>(ScpiSaid.Measured said, int count)) {
                believed++;
                String text = new String(bytes, 0, count, StandardCharsets.ISO_8859_1);
                Matcher matcher = LINE.matcher(text);
                assertTrue(matcher.matches(), text);
                assertEquals(new BigDecimal(matcher.group(1)), said.number());
            }
        }
        assertTrue(believed > answers / 100, "too few whole answers to prove anything: " + believed);
    }
}
