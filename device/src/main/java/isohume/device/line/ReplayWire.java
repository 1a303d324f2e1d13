// SPDX-License-Identifier: Apache-2.0
package isohume.device.line;

import java.io.EOFException;
import java.io.IOException;
import java.net.SocketTimeoutException;
import java.util.Arrays;

/**
 * Answers as a transcript did: to the question that comes next there, what followed it; to any other question, with
 * silence. When it ends, it begins again if it holds questions, and hangs up if it holds none.
 */
final class ReplayWire implements Wire {
    private final Transcript transcript;
    private int next;
    private boolean strange; // nothing answers what was asked last
    private byte[] pending = {};
    private boolean closed;

    ReplayWire(Transcript transcript) {
        this.transcript = transcript;
    }

    @Override
    public void send(byte[] bytes) throws IOException {
        requireOpen();
        for (int tried = 0; tried < transcript.pieces().size(); tried++) {
            Transcript.Piece piece =
                    transcript.pieces().get((next + tried) % transcript.pieces().size());
            if (piece.sent() && Arrays.equals(piece.array(), bytes)) {
                next = (next + tried + 1) % transcript.pieces().size();
                strange = false;
                return;
            }
        }
        strange = true;
    }

    @Override
    public int receive(byte[] into, int from, Deadline deadline) throws IOException {
        requireOpen();
        if (pending.length == 0) {
            pending = following();
        }
        int count = Math.min(pending.length, into.length - from);
        System.arraycopy(pending, 0, into, from, count);
        pending = Arrays.copyOfRange(pending, count, pending.length);
        return count;
    }

    private byte[] following() throws IOException {
        int size = transcript.pieces().size();
        boolean asked = transcript.pieces().stream().anyMatch(Transcript.Piece::sent);
        if (!asked && next >= size) {
            throw new EOFException();
        }
        if (strange || transcript.pieces().get(next % size).sent()) {
            throw new SocketTimeoutException("the recording has nothing more to this");
        }
        byte[] bytes = transcript.pieces().get(next % size).array();
        next = asked ? (next + 1) % size : next + 1;
        return bytes;
    }

    private void requireOpen() throws IOException {
        if (closed) {
            throw new EOFException("closed");
        }
    }

    @Override
    public int waiting() {
        return pending.length;
    }

    @Override
    public void close() {
        closed = true;
    }
}
