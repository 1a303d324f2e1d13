// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import java.util.Locale;

/** What is done about a fault that lasts longer than its policy waits; a later one outweighs an earlier one. */
public enum Measure {
    /** The run waits however long it lasts, and settles anew after it. */
    GO_ON,
    /** The point at work is finished, then the chamber is brought to rest. */
    STOP_AFTER_POINT,
    /** The point is left out. */
    SKIP,
    /** The chamber keeps its target until a person decides. */
    HOLD,
    /** The chamber is brought to rest at once. */
    STOP;

    /** As it is written in files: {@code stop-after-point}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
