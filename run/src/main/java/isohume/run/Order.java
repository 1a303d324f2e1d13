// SPDX-License-Identifier: Apache-2.0
package isohume.run;

/** What a person can tell a run to do. */
public enum Order {
    /** Keep the target, take no further step. */
    HOLD,
    /** Go on from a hold, at the same point, from its approach. */
    RESUME,
    /** Leave this point out and go to the next. */
    SKIP,
    /** Bring the chamber to rest and end; the run can be taken up again later. */
    STOP,
    /** Bring the chamber to rest and end for good. */
    ABANDON
}
