// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

/** What a logger's clock did when the clocks around it were put forward or back. */
public enum ClockHabit {
    /** It was put forward and back with them. */
    FOLLOWS,
    /** It stayed on standard (winter) time. */
    STANDARD,
    /** It stayed on daylight-saving (summer) time. */
    DAYLIGHT
}
