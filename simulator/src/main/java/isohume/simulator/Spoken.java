// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** What the bench can be asked in. */
public enum Spoken {
    /** Modbus, as on the port that every bench has. */
    MODBUS_TCP,
    /** Modbus frames with checksums, as on a serial line; the units are those of Modbus TCP. */
    MODBUS_RTU,
    /** Lines of text, when asked. */
    TEXT,
    /** Lines of text from the first instrument under test, by itself. */
    TALKING,
    /** Queries to a scanning multimeter that the instruments under test are wired to. */
    SCPI,
    /** A broker's messages. */
    MQTT,
    /** Documents over HTTP. */
    HTTP_JSON
}
