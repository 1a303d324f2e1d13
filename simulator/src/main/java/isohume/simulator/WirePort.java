// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** A TCP port on the loopback that speaks one protocol, with threads of its own that don't keep the program alive. */
final class WirePort implements AutoCloseable {
    static final String LOOPBACK = "127.0.0.1";

    private final Talk talk;
    private final ServerSocket listener;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();

    /** What goes on over one connection; it ends when this returns or throws. */
    interface Talk {
        void serve(InputStream in, OutputStream out) throws IOException;
    }

    /**
     * @param port 0 for any free one
     * @throws UncheckedIOException when the port cannot be had
     */
    WirePort(Talk talk, int port) {
        this.talk = talk;
        try {
            listener = new ServerSocket();
            listener.setReuseAddress(true);
            listener.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
        } catch (IOException taken) {
            String message = "cannot listen on " + LOOPBACK + " port " + port
                    + "; stop what uses it, or choose another port, or 0 for any free one";
            throw new UncheckedIOException(new IOException(message, taken));
        }
        Thread.ofPlatform().daemon().name("simulator-wire").start(this::accept);
    }

    int port() {
        return listener.getLocalPort();
    }

    private void accept() {
        while (!listener.isClosed()) {
            try {
                Socket socket = listener.accept();
                open.add(socket);
                if (listener.isClosed()) { // a waiting accept may still take a caller after the close
                    socket.close();
                    return;
                }
                Thread.ofPlatform().daemon().name("simulator-answers").start(() -> serve(socket));
            } catch (IOException closed) {
                return;
            }
        }
    }

    private void serve(Socket socket) {
        try (socket) {
            socket.setTcpNoDelay(true);
            talk.serve(new BufferedInputStream(socket.getInputStream()), socket.getOutputStream());
        } catch (IOException gone) {
            return; // the caller hung up, or the port was closed
        } finally {
            open.remove(socket);
        }
    }

    /** Closes the port and drops every connection. Idempotent. */
    @Override
    public void close() {
        try {
            listener.close();
            for (Socket socket : open) {
                socket.close();
            }
        } catch (IOException alreadyGone) {
            return; // the port is closed either way
        }
    }
}
