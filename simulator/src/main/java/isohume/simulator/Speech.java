// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** How the bench takes requests in one protocol. */
interface Speech {
    /** How many bytes get lost when an answer breaks off. */
    int LOST_BYTES = 3;

    /** A request that has arrived whole, and all that can come back. */
    interface Request {
        /** Whose answer is wanted. */
        int unit();

        /** Does what is asked; what to send, nothing if nobody has that unit. */
        byte[] answer();

        /** The protocol's way to say no. */
        byte[] refusal();

        /** A right answer, spoilt so that its own check tells. */
        byte[] garbled(byte[] answer);

        /** A right answer, changed into one to another question. */
        byte[] foreign(byte[] answer);

        /** An answer that lost some bytes. */
        default byte[] broken(byte[] answer) {
            return Arrays.copyOf(answer, Math.max(0, answer.length - LOST_BYTES));
        }

        /** What the protocol cannot make anything of. */
        default byte[] noise() {
            return "HELLO, WORLD\r\n".getBytes(StandardCharsets.US_ASCII);
        }
    }

    /**
     * The next request on a connection.
     *
     * @throws java.io.EOFException when the caller has hung up
     */
    Request next(InputStream in) throws IOException;
}
