// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/** How far a figure that somebody else published has been checked. */
public enum Basis {
    /** Read in a public text. */
    READ,
    /** Remembered and not yet read again: to be checked before it is quoted. */
    MEMORY,
    /** Not stated by the source; found here by comparison with a better formula. */
    COMPUTED
}
