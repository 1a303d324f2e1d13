// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import java.util.Locale;

/** Where a run stands; one word, always shown as text. */
public enum Phase {
    /** On the way to a point, not settled yet. */
    APPROACH,
    /** Settled, and kept so for the plan's time. */
    SOAK,
    /** Paired readings are being taken. */
    RECORD,
    /** Waiting for a person; the chamber keeps its target. */
    HELD,
    /** Stopped with the chamber at rest; a person may resume it. */
    SAFE_STOP,
    /** All points done. */
    FINISHED,
    /** Given up by a person. */
    ABANDONED;

    /** The word on pages and in files: {@code safe stop}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Whether an engine is at work on it. */
    public boolean underWay() {
        return switch (this) {
            case APPROACH, SOAK, RECORD, HELD -> true;
            case SAFE_STOP, FINISHED, ABANDONED -> false;
        };
    }
}
