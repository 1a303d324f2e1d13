// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

/**
 * Something that a person should see before using the readings.
 *
 * @param line in the file, from 1; 0 if the file as a whole is meant
 */
public record Finding(Kind kind, long line, String text) {
    /** What it is about. */
    public enum Kind {
        /** How the file is written: encoding, separators, headings. */
        LAYOUT,
        /** How its times were understood. */
        TIME,
        /** The clocks were put forward or back, or were not. */
        DAYLIGHT_SAVING,
        /** Rows that are not there. */
        MISSING_ROWS,
        /** Rows that are there more than once. */
        DOUBLED_ROWS,
        /** Cells without a value. */
        GAPS,
        /** Columns and lines that are not used. */
        LEFT_OUT
    }

    /** As one line: {@code line 12: 3 rows are missing …}. */
    public String message() {
        return (line > 0 ? "line " + line + ": " : "") + text;
    }
}
