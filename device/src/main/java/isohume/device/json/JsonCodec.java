// SPDX-License-Identifier: Apache-2.0
package isohume.device.json;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.driver.Meaning;
import isohume.device.driver.Meaning.Sense;
import isohume.device.driver.Shown;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Documents to readings. Pure; nothing that arrives makes it throw. A document is believed only if all of it is JSON in
 * UTF-8, no key stands twice, and it says what the description expects of it.
 *
 * @param expected what the document has to say, by the pointer to it
 */
public record JsonCodec(List<Value> values, Map<JsonPointer, String> expected) {
    /** The longest document that is read, in bytes. */
    public static final int LONGEST = 1 << 16;

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS, DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    /**
     * A channel and where its number stands (RFC 6901).
     *
     * @param topic whose documents it stands in, where there are several kinds
     */
    public record Value(Shown shown, String topic, JsonPointer pointer, Meaning meaning) {}

    /** Keeps lists of its own. */
    public JsonCodec {
        values = List.copyOf(values);
        expected = Map.copyOf(expected);
    }

    /** One reading for each channel of this topic, in the description's order. */
    public List<Reading> readings(String topic, byte[] document, Instant at) {
        List<Value> wanted =
                values.stream().filter(value -> value.topic().equals(topic)).toList();
        JsonNode root;
        try {
            if (document.length > LONGEST) {
                return absent(wanted, at, "a document of more than " + LONGEST + " bytes came");
            }
            root = MAPPER.readTree(utf8(document));
        } catch (CharacterCodingException e) {
            return absent(wanted, at, "a document that is not in UTF-8 came");
        } catch (JsonProcessingException e) {
            return absent(wanted, at, "a document that is no JSON came: " + e.getOriginalMessage());
        }
        Optional<String> other = otherThanExpected(root);
        return other.isPresent()
                ? absent(wanted, at, other.get())
                : wanted.stream().map(value -> reading(value, root, at)).toList();
    }

    private static String utf8(byte[] document) throws CharacterCodingException {
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(document))
                .toString();
    }

    private Optional<String> otherThanExpected(JsonNode root) {
        for (Map.Entry<JsonPointer, String> one : expected.entrySet()) {
            String found = root.at(one.getKey()).asText("");
            if (!found.equals(one.getValue())) {
                return Optional.of("the document says \"" + shortened(found) + "\" at " + one.getKey() + " where \""
                        + one.getValue() + "\" is expected");
            }
        }
        return Optional.empty();
    }

    private static Reading reading(Value value, JsonNode root, Instant at) {
        JsonNode node = root.at(value.pointer());
        String raw = node.isNumber() ? node.decimalValue().toString() : node.isTextual() ? node.textValue() : "";
        Optional<BigDecimal> number = Meaning.number(raw.strip());
        if (number.isEmpty()) {
            return value.shown()
                    .absent(
                            at,
                            Trouble.GARBLED,
                            "no number stands at " + value.pointer() + " (" + shortened(node.toString()) + ")");
        }
        return switch (value.meaning().of(number.get())) {
            case Sense.Value(BigDecimal found, List<String> doubts) ->
                value.shown().reading(found, raw, doubts, at, "the document says");
            case Sense.None(String why) -> value.shown().absent(at, Trouble.GARBLED, why);
        };
    }

    private static List<Reading> absent(List<Value> wanted, Instant at, String detail) {
        return wanted.stream()
                .map(value -> value.shown().absent(at, Trouble.GARBLED, detail))
                .toList();
    }

    private static String shortened(String text) {
        return isohume.device.text.LineQuestion.shown(text);
    }
}
