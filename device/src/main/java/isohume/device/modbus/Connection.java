// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** A live socket that moves whole frames, never longer than a deadline. */
final class Connection {
    private static final int LATE = 1000; // how many questions back a reply still counts as late, not as nonsense

    private final Socket socket;
    private int transaction;
    private int asked;

    private Connection(Socket socket) {
        this.socket = socket;
    }

    static Connection to(String host, int port, Deadline deadline) throws IOException {
        InetAddress address = address(host, deadline);
        Socket socket = new Socket();
        try {
            socket.connect(new InetSocketAddress(address, port), left(deadline));
            socket.setTcpNoDelay(true);
            return new Connection(socket);
        } catch (IOException e) {
            socket.close();
            throw e;
        }
    }

    /** The name service has time limits of its own, far above ours, so it is asked on a thread that may be left behind. */
    private static InetAddress address(String host, Deadline deadline) throws IOException {
        FutureTask<InetAddress> lookup = new FutureTask<>(() -> InetAddress.getByName(host));
        Thread.ofPlatform().daemon().name("look up " + host).start(lookup);
        return deadline.<InetAddress, IOException>get(left -> resolved(lookup, host, left));
    }

    private static InetAddress resolved(FutureTask<InetAddress> lookup, String host, int millis)
            throws IOException, InterruptedException {
        try {
            return lookup.get(millis, TimeUnit.MILLISECONDS);
        } catch (ExecutionException e) {
            throw new UnknownHostException(host);
        } catch (TimeoutException e) {
            throw new SocketTimeoutException("the name service did not answer");
        }
    }

    /** The number for the next question, 1 to 65535 and round again. */
    int nextTransaction() {
        transaction = transaction % 0xFFFF + 1;
        asked++;
        return transaction;
    }

    /** Whether a frame replies to an earlier question on this connection. */
    boolean isLate(byte[] frame, int current) {
        int back = Math.floorMod(current - Frames.transaction(frame), 0xFFFF);
        return back > 0 && back < Math.min(asked, LATE) && Frames.transaction(frame) != 0;
    }

    void send(byte[] frame) throws IOException {
        socket.getOutputStream().write(frame);
    }

    /**
     * The next whole frame.
     *
     * @throws SocketTimeoutException if nothing came in time
     * @throws Broken if what came is not a whole frame
     */
    byte[] receive(Deadline deadline) throws IOException {
        byte[] frame = new byte[Frames.HEAD];
        fill(frame, 0, deadline);
        int length = Frames.length(frame);
        if (length == 0) {
            throw new Broken("something that is no Modbus reply came", frame);
        }
        frame = Arrays.copyOf(frame, length);
        fill(frame, Frames.HEAD, deadline);
        return frame;
    }

    private void fill(byte[] frame, int from, Deadline deadline) throws IOException {
        InputStream in = socket.getInputStream();
        int have = from;
        while (have < frame.length) {
            try {
                socket.setSoTimeout(left(deadline));
                int count = in.read(frame, have, frame.length - have);
                if (count < 0) {
                    throw new EOFException();
                }
                have += count;
            } catch (SocketTimeoutException | EOFException e) {
                if (have == 0) {
                    throw e;
                }
                throw new Broken("the reply broke off after " + have + " bytes", Arrays.copyOf(frame, have));
            }
        }
    }

    void close() {
        try {
            socket.close();
        } catch (IOException e) {
            return; // it is of no use any more, whatever it says
        }
    }

    /** In plain words. */
    static String reason(IOException e) {
        return switch (e) {
            case UnknownHostException unknown -> "no machine of that name is known";
            case SocketTimeoutException timeout -> "nobody answered in time";
            case ConnectException refused -> "it refused the connection; is the device on, and the port right?";
            case EOFException ended -> "the device closed it";
            default -> String.valueOf(e.getMessage());
        };
    }

    private static int left(Deadline deadline) throws SocketTimeoutException {
        int millis = deadline.millisLeft();
        if (millis == 0) { // to a socket, 0 would mean for ever
            throw new SocketTimeoutException("the time limit has passed");
        }
        return millis;
    }

    /** Bytes came that are not a reply. */
    static final class Broken extends IOException {
        private static final long serialVersionUID = 1;

        private final transient byte[] seen;

        Broken(String what, byte[] seen) {
            super(what);
            this.seen = seen;
        }

        String what() {
            return String.valueOf(getMessage());
        }

        byte[] seen() {
            return seen.clone();
        }
    }
}
