// SPDX-License-Identifier: Apache-2.0
package isohume.device.sheet;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Which known word a misspelt one was probably meant to be. */
final class Nearest {
    private Nearest() {}

    /** The known word with the fewest letters to change, if about two thirds of it agree or it goes on where the other ends. */
    static Optional<String> to(String word, Collection<String> known) {
        String plain = plain(word);
        return known.stream()
                .filter(k -> near(plain, plain(k)))
                .min(Comparator.comparingInt(k -> distance(plain, plain(k))));
    }

    private static boolean near(String word, String known) {
        if (known.length() < 3 || word.length() < 3) {
            return false;
        }
        return known.startsWith(word)
                || word.startsWith(known)
                || distance(word, known) <= Math.max(1, known.length() / 3);
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    /** Letters to insert, drop or replace (Levenshtein). */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replace = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replace, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
