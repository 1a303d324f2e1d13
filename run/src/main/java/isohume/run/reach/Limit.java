// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import java.util.Locale;

/** What can keep a bench from a condition. */
public enum Limit {
    TEMPERATURE("beyond the chamber"),
    HUMIDITY("beyond the chamber"),
    DRY_STREAM("dry air too wet"),
    WET_STREAM("wet air too dry"),
    SURFACE("coldest surface would be wet"),
    LINE("sample line would be wet"),
    MEASURED("outside certified ranges"),
    FORMULA("no formula");

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
