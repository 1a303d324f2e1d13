// SPDX-License-Identifier: Apache-2.0
package isohume.station.notice;

/** On what a hook is called. */
public enum Occasion {
    /** A fault was noticed. */
    NOTICED,
    /** A fault is over. */
    OVER,
    /** The run was held, by a person or a fault. */
    HELD,
    /** A point was skipped for a fault, or withdrawn. */
    POINT,
    /** A person is asked to read a display. */
    READING,
    /** The run ended, however it did. */
    ENDED
}
