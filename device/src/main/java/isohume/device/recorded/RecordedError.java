// SPDX-License-Identifier: Apache-2.0
package isohume.device.recorded;

/**
 * Something in a file of readings that a person has to put right.
 *
 * @param source the file's name
 * @param line from 1; 0 if the file as a whole is meant
 * @param column the cell's number in its line, from 1; 0 if the line as a whole is meant
 * @param what what was found
 * @param remedy what is needed instead, or what to do
 */
public record RecordedError(String source, long line, int column, String what, String remedy) {
    /** As one line: {@code readings.csv:12:5: temperature is "warm"; a number in °C is needed here}. */
    public String message() {
        String place = line == 0 ? "" : ":" + line + (column == 0 ? "" : ":" + column);
        return source + place + ": " + what + "; " + remedy;
    }
}
