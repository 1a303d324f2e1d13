// SPDX-License-Identifier: Apache-2.0
package isohume.device.line;

import java.io.IOException;
import java.util.Locale;

/** Where a line leads. */
public sealed interface Place {
    /** How many bits are there to check the others. */
    enum Parity {
        NONE,
        EVEN,
        ODD
    }

    /** A TCP port of a machine. */
    record Tcp(String host, int port) implements Place {
        @Override
        public Wire connect(Deadline deadline) throws IOException {
            return TcpWire.to(host, port, deadline);
        }

        @Override
        public String toString() {
            return host.toLowerCase(Locale.ROOT) + ":" + port;
        }
    }

    /**
     * A serial port of this machine.
     *
     * @param path its name, such as {@code /dev/ttyUSB0} or {@code COM3}
     * @param baud bits per second
     * @param dataBits 7 or 8
     * @param stopBits 1 or 2
     */
    record Serial(String path, int baud, int dataBits, Parity parity, int stopBits) implements Place {
        @Override
        public Wire connect(Deadline deadline) throws IOException {
            return SerialWire.to(this);
        }

        @Override
        public String toString() {
            return path;
        }
    }

    /** Bytes that were recorded before. */
    record Replay(String name, Transcript transcript) implements Place {
        @Override
        public Wire connect(Deadline deadline) {
            return new ReplayWire(transcript);
        }

        @Override
        public String toString() {
            return "the recording " + name;
        }
    }

    /**
     * Opens it.
     *
     * @throws IOException if it cannot be had, with the reason in plain words
     */
    Wire connect(Deadline deadline) throws IOException;
}
