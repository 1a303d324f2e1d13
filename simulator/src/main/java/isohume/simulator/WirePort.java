// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** A TCP port on the loopback that answers in one protocol, with threads of its own that don't keep the program alive. */
final class WirePort implements AutoCloseable {
    static final String LOOPBACK = "127.0.0.1";
    private static final int TRICKLE_MS = 100;

    private final Speech speech;
    private final Faults faults;
    private final ServerSocket listener;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();

    /**
     * @param port 0 for any free one
     * @throws UncheckedIOException when the port cannot be had
     */
    WirePort(Speech speech, Faults faults, int port) {
        this.speech = speech;
        this.faults = faults;
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
            InputStream in = new BufferedInputStream(socket.getInputStream());
            byte[] late = {};
            boolean more = true;
            while (more) {
                Speech.Request request = speech.next(in);
                Fault fault = faults.of(request.unit());
                if (fault == Fault.LATE) {
                    late = request.answer();
                } else {
                    socket.getOutputStream().write(late);
                    late = new byte[0];
                    more = answer(request, fault, socket, in);
                }
            }
        } catch (IOException gone) {
            return; // the caller hung up, or the port was closed
        } finally {
            open.remove(socket);
        }
    }

    /** Whether the connection stays. */
    private static boolean answer(Speech.Request request, Fault fault, Socket socket, InputStream in)
            throws IOException {
        if (fault == Fault.TRICKLING) {
            trickle(request.answer(), socket, in);
            return true;
        }
        byte[] bytes = switch (fault) {
            case NONE -> request.answer();
            case NOISE -> request.noise();
            case GARBLED -> request.garbled(request.answer());
            case REFUSING -> request.refusal();
            case BROKEN_OFF -> request.broken(request.answer());
            case FOREIGN -> request.foreign(request.answer());
            case SILENT, LATE, TRICKLING, UNPLUGGED -> new byte[0];
        };
        socket.getOutputStream().write(bytes);
        return fault != Fault.UNPLUGGED;
    }

    private static void trickle(byte[] answer, Socket socket, InputStream in) throws IOException {
        for (byte one : answer) {
            if (spokenTo(socket, in)) {
                return;
            }
            socket.getOutputStream().write(one);
        }
    }

    /** Waits a little; whether the caller hung up or asks again meanwhile. */
    private static boolean spokenTo(Socket socket, InputStream in) throws IOException {
        socket.setSoTimeout(TRICKLE_MS);
        in.mark(1);
        try {
            boolean asks = in.read() >= 0;
            if (asks) {
                in.reset();
            }
            return true;
        } catch (SocketTimeoutException quiet) {
            return false;
        } finally {
            socket.setSoTimeout(0);
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
