// SPDX-License-Identifier: Apache-2.0
package isohume.quantity;

import java.util.Locale;

/** From which side a humidity was approached. An instrument with hysteresis answers the two differently. */
public enum Direction {
    ASCENDING,
    DESCENDING;

    /** The name in files: {@code ascending}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
