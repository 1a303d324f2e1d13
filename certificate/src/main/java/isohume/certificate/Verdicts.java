// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.result.PointResult;
import isohume.uncertainty.conformity.Verdict;
import java.util.Locale;
import java.util.Optional;

/** The words and marks of verdicts. */
final class Verdicts {
    private Verdicts() {}

    static boolean given(PointResult point) {
        return point.verdict().isPresent();
    }

    /** The name in files. */
    static String key(Optional<Verdict> verdict) {
        return verdict.map(v -> v.name().toLowerCase(Locale.ROOT)).orElse("none");
    }

    static String words(Optional<Verdict> verdict) {
        return verdict.map(Verdict::words).orElse("none asked for").replace("'", "\u2019");
    }

    /**
     * A square of four fillings beside the words. Drawn as boxes: the typeface lacks two of the four, and a drawn box
     * says nothing to a reader that speaks, which has the words.
     */
    @CanIgnoreReturnValue
    static Markup write(Markup to, Optional<Verdict> verdict) {
        verdict.ifPresent(v -> mark(to, v));
        return to.text(words(verdict));
    }

    private static void mark(Markup to, Verdict verdict) {
        switch (verdict) {
            case CONFORMS -> to.open("span", "class", "mark full").close();
            case CONFORMS_IN_GUARD_BAND -> to.open("span", "class", "mark half").close();
            case NOT_DECIDED ->
                to.open("span", "class", "mark left")
                        .close()
                        .open("span", "class", "mark right")
                        .close();
            case DOES_NOT_CONFORM -> to.open("span", "class", "mark").close();
        }
    }
}
