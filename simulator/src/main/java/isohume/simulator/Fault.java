// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** What can be wrong with the connection to one unit of the bench. */
public enum Fault {
    /** Nothing is wrong. */
    NONE,
    /** Requests arrive, and nothing comes back. */
    SILENT,
    /** What comes back has nothing to do with the protocol. */
    NOISE,
    /** What comes back has the frame of an answer, and its own check says that it is spoilt. */
    GARBLED,
    /** Every request is answered with the protocol's way to say no. */
    REFUSING,
    /** The last bytes of an answer are missing. */
    BROKEN_OFF,
    /** An answer comes only when the next request has arrived, before its answer. */
    LATE,
    /** What comes back answers another question. */
    FOREIGN,
    /** An answer comes byte by byte, 200 ms apart, until the next request. */
    TRICKLING,
    /** The connection is dropped by the first request, again and again. */
    UNPLUGGED,
    /** Over Modbus: everything is answered with what the registers held when the fault began. */
    FROZEN
}
