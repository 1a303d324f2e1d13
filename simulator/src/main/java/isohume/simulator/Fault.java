// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** What can be wrong with the connection to one unit of the bench. */
public enum Fault {
    /** Nothing is wrong. */
    NONE,
    /** Requests arrive, and nothing comes back. */
    SILENT,
    /** What comes back has the frame of an answer and nonsense in it. */
    GARBLED,
    /** Every request is answered with a Modbus exception: device failure. */
    REFUSING,
    /** The connection is dropped by the first request, again and again. */
    UNPLUGGED,
    /** Everything is answered with what the registers held when the fault began. */
    FROZEN
}
