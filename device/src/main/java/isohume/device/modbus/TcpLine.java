// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Trouble;
import java.io.IOException;
import java.net.SocketTimeoutException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/**
 * One TCP connection, shared by all devices behind it. It connects when first asked and again after it was lost. A
 * thread takes the line, asks, and releases it. A late reply to an earlier question is passed over; after anything
 * that leaves the byte stream in doubt the connection is dropped, so that the next question starts on a clean one.
 */
final class TcpLine implements AutoCloseable {
    private static final int SILENCES = 2; // then the far end may have forgotten the connection: make a new one

    private final String host;
    private final int port;
    private final ReentrantLock taken = new ReentrantLock(true);
    private volatile @Nullable Connection connection;
    private volatile boolean closed;
    private int silences;

    TcpLine(String host, int port) {
        this.host = host;
        this.port = port;
    }

    /** Takes the line for this thread; false if others held it until the deadline. */
    boolean take(Deadline deadline) {
        return deadline.get(left -> taken.tryLock(left, TimeUnit.MILLISECONDS));
    }

    void release() {
        taken.unlock();
    }

    /** Asks one question; by the thread that holds the line. */
    Reply ask(Ask ask, int unit, Deadline deadline) {
        if (closed) {
            return new Reply.No(Trouble.UNPLUGGED, "the line to " + this + " is closed");
        }
        Connection open;
        try {
            open = connected(deadline);
        } catch (IOException e) {
            return new Reply.No(Trouble.UNPLUGGED, "no connection to " + this + ": " + Connection.reason(e));
        }
        Reply reply = exchange(open, ask, unit, deadline);
        silences = reply instanceof Reply.No no && no.trouble() == Trouble.SILENCE ? silences + 1 : 0;
        if (silences >= SILENCES) {
            drop();
        }
        return reply;
    }

    private Reply exchange(Connection open, Ask ask, int unit, Deadline deadline) {
        int transaction = open.nextTransaction();
        try {
            open.send(Frames.question(ask, transaction, unit));
            byte[] frame = open.receive(deadline);
            while (open.isLate(frame, transaction)) {
                frame = open.receive(deadline);
            }
            Reply reply = Frames.reply(ask, transaction, unit, frame);
            if (reply instanceof Reply.No) {
                drop();
            }
            return reply;
        } catch (Connection.Broken e) {
            drop();
            return Frames.garbled(e.what(), e.seen());
        } catch (SocketTimeoutException e) {
            return new Reply.No(Trouble.SILENCE, "no reply from " + this + " within " + deadline.limitText());
        } catch (IOException e) {
            drop();
            return new Reply.No(Trouble.UNPLUGGED, "the connection to " + this + " was lost: " + Connection.reason(e));
        }
    }

    private Connection connected(Deadline deadline) throws IOException {
        Connection open = connection;
        if (open == null) {
            open = Connection.to(host, port, deadline);
            connection = open;
            if (closed) { // by another thread, meanwhile
                drop();
            }
        }
        return open;
    }

    private void drop() {
        Connection open = connection;
        connection = null;
        silences = 0;
        if (open != null) {
            open.close();
        }
    }

    /** Ends the connection for good, from any thread; a question under way ends as lost. */
    @Override
    public void close() {
        closed = true;
        Connection open = connection;
        if (open != null) {
            open.close();
        }
    }

    @Override
    public String toString() {
        return host + ":" + port;
    }
}
