// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Months by their names in several languages, whole or cut to three letters or more. */
final class MonthName {
    private static final List<Locale> LANGUAGES = List.of(
            Locale.ENGLISH,
            Locale.GERMAN,
            Locale.FRENCH,
            Locale.of("es"),
            Locale.ITALIAN,
            Locale.of("nl"),
            Locale.of("pt"));
    private static final Map<String, Integer> NUMBERS = numbers();

    private MonthName() {}

    /** 1 to 12; nothing where no language has it, or two languages mean different months by it. */
    static Optional<Integer> number(String name) {
        return Optional.ofNullable(NUMBERS.get(plain(name))).filter(n -> n > 0);
    }

    private static Map<String, Integer> numbers() {
        Map<String, Integer> numbers = new HashMap<>();
        for (Locale language : LANGUAGES) {
            for (Month month : Month.values()) {
                String whole = plain(month.getDisplayName(TextStyle.FULL, language));
                for (int length = 3; length <= whole.length(); length++) {
                    numbers.merge(
                            whole.substring(0, length),
                            month.getValue(),
                            (a, b) -> a.intValue() == b.intValue() ? a : 0);
                }
            }
        }
        return numbers;
    }

    private static String plain(String name) {
        return name.replace(".", "").toLowerCase(Locale.ROOT);
    }
}
