// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

/** Which of several rows with one time and different values is used. */
public enum Doubled {
    /** The file is not read while there are such rows. */
    ASK,
    FIRST,
    LAST,
    NEITHER,
    /** All of them, spread evenly over the minute, where the times have no seconds. */
    SPREAD
}
