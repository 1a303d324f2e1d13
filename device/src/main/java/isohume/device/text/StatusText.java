// SPDX-License-Identifier: Apache-2.0
package isohume.device.text;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A group whose words cast doubt on every channel.
 *
 * @param good the words that do not
 * @param words what others mean
 */
record StatusText(String group, Set<String> good, Map<String, String> words) {
    /** What a word says against the values that came with it. */
    List<String> flags(String word) {
        if (good.contains(word)) {
            return List.of();
        }
        return List.of(words.getOrDefault(
                word, "its status is \"" + LineQuestion.shown(word) + "\", which the description does not know"));
    }
}
