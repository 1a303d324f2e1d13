// SPDX-License-Identifier: Apache-2.0
package isohume.run;

/** How a run, or a stretch of it, ended. */
public enum Ending {
    /** Every point was recorded or skipped. */
    COMPLETED,
    /** A person or a rule stopped it safely. */
    STOPPED,
    /** A person gave it up. */
    ABANDONED,
    /** The program ended in the middle; written by the next start. */
    INTERRUPTED
}
