// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A Modbus TCP device on a loopback socket that can be told to misbehave. It is written from the specification and
 * shares no code with the driver.
 */
final class FakeServer implements AutoCloseable {
    /** What is done with the right reply to one request. */
    interface Manner {
        void send(byte[] good, Socket socket) throws IOException;
    }

    static final Manner GOOD = (good, socket) -> socket.getOutputStream().write(good);
    static final Manner SILENT = (good, socket) -> {};
    static final Manner NOISE =
            (good, socket) -> socket.getOutputStream().write("HELLO, WORLD\r\n".getBytes(StandardCharsets.US_ASCII));
    static final Manner HALF = (good, socket) -> socket.getOutputStream().write(Arrays.copyOf(good, good.length - 3));
    static final Manner HANG_UP = (good, socket) -> socket.close();
    static final Manner TRICKLE = FakeServer::trickle;

    private static final int ANY_PORT = 0;

    final Map<Integer, Integer> input = new ConcurrentHashMap<>();
    final Map<Integer, Integer> holding = new ConcurrentHashMap<>();
    final List<String> requests = new CopyOnWriteArrayList<>();
    final AtomicInteger connections = new AtomicInteger();
    private final Queue<Manner> manners = new ConcurrentLinkedQueue<>();
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private final int unit;
    private volatile ServerSocket listener;
    private volatile byte[] kept = {};

    FakeServer(int unit) {
        this.unit = unit;
        this.listener = listen(ANY_PORT);
    }

    int port() {
        return listener.getLocalPort();
    }

    /** How the next requests are answered; after these, as they should be. */
    void next(Manner... some) {
        manners.addAll(List.of(some));
    }

    /** The reply is kept and sent in front of the next one. */
    Manner late() {
        return (good, socket) -> kept = good;
    }

    static Manner refusing(int code) {
        return (good, socket) -> socket.getOutputStream()
                .write(new byte[] {good[0], good[1], 0, 0, 0, 3, good[6], (byte) (good[7] | 0x80), (byte) code});
    }

    /** One byte of the right reply is another one. */
    static Manner with(int index, int value) {
        return (good, socket) -> {
            byte[] other = good.clone();
            other[index] = (byte) value;
            socket.getOutputStream().write(other);
        };
    }

    void unplug() {
        try {
            listener.close();
            for (Socket socket : open) {
                socket.close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void plugIn() {
        listener = listen(port());
    }

    @Override
    public void close() {
        unplug();
    }

    private ServerSocket listen(int port) {
        try {
            ServerSocket socket = new ServerSocket();
            socket.setReuseAddress(true);
            socket.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
            Thread.ofPlatform().daemon().name("fake device").start(() -> accept(socket));
            return socket;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void accept(ServerSocket from) {
        while (!from.isClosed()) {
            try {
                Socket socket = from.accept();
                open.add(socket);
                if (from.isClosed()) { // a waiting accept may still take a caller after the close
                    socket.close();
                    return;
                }
                connections.incrementAndGet();
                Thread.ofPlatform().daemon().name("fake connection").start(() -> serve(socket));
            } catch (IOException e) {
                return; // unplugged
            }
        }
    }

    private void serve(Socket socket) {
        try (socket) {
            DataInputStream in = new DataInputStream(socket.getInputStream());
            while (true) {
                byte[] head = in.readNBytes(6);
                if (head.length < 6) {
                    return;
                }
                byte[] rest = in.readNBytes(ByteBuffer.wrap(head).getShort(4));
                byte[] good = reply(head, ByteBuffer.wrap(rest));
                Manner manner = manners.poll();
                OutputStream out = socket.getOutputStream();
                if (manner == null && kept.length > 0) {
                    out.write(kept);
                    kept = new byte[0];
                }
                (manner == null ? GOOD : manner).send(good, socket);
            }
        } catch (IOException e) {
            return; // the driver dropped the connection, or the device was unplugged
        } finally {
            open.remove(socket);
        }
    }

    private byte[] reply(byte[] head, ByteBuffer request) {
        int asked = request.get(0) & 0xFF;
        int function = request.get(1);
        int address = request.getShort(2) & 0xFFFF;
        int argument = request.getShort(4) & 0xFFFF;
        requests.add(function + " " + address + " " + argument);
        ByteBuffer body = ByteBuffer.allocate(260).put((byte) asked).put((byte) function);
        switch (function) {
            case 3, 4 -> {
                body.put((byte) (2 * argument));
                for (int i = 0; i < argument; i++) {
                    body.putShort((short) (int) (function == 3 ? holding : input).getOrDefault(address + i, 0));
                }
            }
            case 6 -> {
                holding.put(address, argument);
                body.putShort((short) address).putShort((short) argument);
            }
            case 16 -> {
                for (int i = 0; i < argument; i++) {
                    holding.put(address + i, request.getShort(7 + 2 * i) & 0xFFFF);
                }
                body.putShort((short) address).putShort((short) argument);
            }
            default -> throw new AssertionError("the driver sent function " + function);
        }
        if (asked != unit) {
            throw new AssertionError("the driver asked unit " + asked);
        }
        ByteBuffer frame = ByteBuffer.allocate(6 + body.position());
        frame.put(head, 0, 4).putShort((short) body.position());
        return frame.put(body.flip()).array();
    }

    private static void trickle(byte[] good, Socket socket) throws IOException {
        for (byte one : good) {
            if (hungUpWithin(80, socket)) {
                return;
            }
            socket.getOutputStream().write(one);
        }
    }

    /** A pause that ends early when the driver drops the connection. */
    private static boolean hungUpWithin(int millis, Socket socket) throws IOException {
        socket.setSoTimeout(millis);
        try {
            return socket.getInputStream().read() < 0;
        } catch (SocketTimeoutException e) {
            return false;
        } finally {
            socket.setSoTimeout(0);
        }
    }
}
