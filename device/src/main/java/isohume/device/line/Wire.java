// SPDX-License-Identifier: Apache-2.0
package isohume.device.line;

import java.io.IOException;

/** Bytes to one place and back while it is connected. One thread at a time, except {@link #close}. */
interface Wire {
    void send(byte[] bytes) throws IOException;

    /**
     * Waits for a byte and takes those that came with it.
     *
     * @param from where in {@code into} the first one goes; there is room for at least one
     * @return how many, at least 1
     * @throws java.net.SocketTimeoutException if none came in time
     * @throws java.io.EOFException if the other end has hung up
     */
    int receive(byte[] into, int from, Deadline deadline) throws IOException;

    /** How many bytes can be received without waiting. */
    int waiting() throws IOException;

    /** From any thread; idempotent. Ends a wait under way. */
    void close();
}
