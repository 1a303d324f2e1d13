// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.line.Question;

/** How questions and replies are packed. */
enum Framing {
    /** With a header that numbers them; over TCP. */
    TCP,
    /** With a checksum; over a serial line, or over TCP through a gateway that passes on what it gets. */
    RTU;

    Question<Reply> question(Ask ask, int unit) {
        return switch (this) {
            case TCP -> new TcpFrames(ask, unit);
            case RTU -> new RtuFrames(ask, unit);
        };
    }
}
