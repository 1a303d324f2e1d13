// SPDX-License-Identifier: Apache-2.0
package isohume.device.json;

import com.fasterxml.jackson.core.JsonPointer;
import isohume.device.driver.Common;
import isohume.device.driver.Meaning;
import isohume.device.driver.Shown;
import isohume.device.sheet.Sheet;
import java.util.HashMap;
import java.util.Map;

/** The parts of descriptions that speak of JSON. */
public final class JsonSheet {
    private JsonSheet() {}

    /** A channel with its {@code pointer}; the whole document if there is none. */
    public static JsonCodec.Value value(Common common, Sheet one, String topic) {
        Shown shown = common.shown(one);
        JsonPointer pointer = one.has("pointer") ? pointer(one, one.text("pointer"), "pointer") : JsonPointer.empty();
        return new JsonCodec.Value(
                shown, topic, pointer, Meaning.read(one, shown.channel().quantity()));
    }

    /** The section {@code expect}: what documents have to say, by pointer. */
    public static Map<JsonPointer, String> expected(Sheet sheet) {
        Map<JsonPointer, String> expected = new HashMap<>();
        sheet.optional("expect")
                .ifPresent(section ->
                        section.keys().forEach(key -> expected.put(pointer(section, key, key), section.text(key))));
        return expected;
    }

    private static JsonPointer pointer(Sheet sheet, String text, String key) {
        try {
            return JsonPointer.compile(text);
        } catch (IllegalArgumentException e) {
            throw sheet.wrong(key, "a pointer such as /humidity/value is needed here");
        }
    }
}
