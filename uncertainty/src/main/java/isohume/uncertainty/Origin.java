// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

/** Where an input's uncertainty comes from. What is only assumed is shown to the reviewer. */
public enum Origin {
    /** Evaluated from readings of this work. */
    MEASURED,
    /** Taken from a certificate or a report that can be produced. */
    CERTIFICATE,
    /** A limit from a data sheet, a habit of the trade or a guess. */
    ASSUMED
}
