// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.result.PointResult;
import isohume.result.PointResult.Judgement;

/** The words and marks of verdicts; the only place of this module that knows which verdicts there are. */
final class Verdicts {
    private Verdicts() {}

    static boolean given(PointResult point) {
        return point.verdict() != Judgement.NONE;
    }

    /** The name in files. */
    static String key(Judgement verdict) {
        return switch (verdict) {
            case CONFORMS -> "conforms";
            case CONFORMS_ON_GUARD_BAND -> "conforms_on_guard_band";
            case NOT_DECIDED -> "not_decided";
            case DOES_NOT_CONFORM -> "does_not_conform";
            case NONE -> "none";
        };
    }

    static String words(Judgement verdict) {
        return switch (verdict) {
            case CONFORMS -> "conforms";
            case CONFORMS_ON_GUARD_BAND -> "conforms on the guard band\u2019s edge";
            case NOT_DECIDED -> "not decided";
            case DOES_NOT_CONFORM -> "does not conform";
            case NONE -> "none asked for";
        };
    }

    /**
     * A square of four fillings beside the words. Drawn as boxes: the typeface lacks two of the four, and a drawn box
     * says nothing to a reader that speaks, which has the words.
     */
    @CanIgnoreReturnValue
    static Markup write(Markup to, Judgement verdict) {
        switch (verdict) {
            case CONFORMS -> to.open("span", "class", "mark full").close();
            case CONFORMS_ON_GUARD_BAND -> to.open("span", "class", "mark half").close();
            case NOT_DECIDED ->
                to.open("span", "class", "mark left")
                        .close()
                        .open("span", "class", "mark right")
                        .close();
            case DOES_NOT_CONFORM -> to.open("span", "class", "mark").close();
            case NONE -> {}
        }
        return to.text(words(verdict));
    }
}
