// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import java.util.Locale;

/** What can keep a bench from a condition. */
public enum Limit {
    TEMPERATURE("the chamber's temperature range"),
    HUMIDITY("the chamber's humidity range"),
    DRY_STREAM("the dry air is too wet for it"),
    WET_STREAM("the wet air is too dry for it"),
    SURFACE("the coldest surface would be wet"),
    LINE("the sample line would be wet"),
    MEASURED("nothing measures there"),
    FORMULA("no formula vouches for it");

    private final String words;

    Limit(String words) {
        this.words = words;
    }

    /** As it stands in a table or on a map. */
    public String words() {
        return words;
    }

    /** The name in files: {@code dry_stream}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
