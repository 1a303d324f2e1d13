// SPDX-License-Identifier: Apache-2.0
package isohume.device.line;

import java.io.EOFException;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** A TCP connection. */
final class TcpWire implements Wire {
    private final Socket socket;

    private TcpWire(Socket socket) {
        this.socket = socket;
    }

    static TcpWire to(String host, int port, Deadline deadline) throws IOException {
        InetAddress address = address(host, deadline);
        Socket socket = new Socket();
        try {
            socket.connect(new InetSocketAddress(address, port), deadline.millisToWait());
            socket.setTcpNoDelay(true);
            return new TcpWire(socket);
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

    @Override
    public void send(byte[] bytes) throws IOException {
        socket.getOutputStream().write(bytes);
    }

    @Override
    public int receive(byte[] into, int from, Deadline deadline) throws IOException {
        socket.setSoTimeout(deadline.millisToWait());
        int count = socket.getInputStream().read(into, from, into.length - from);
        if (count < 0) {
            throw new EOFException();
        }
        return count;
    }

    @Override
    public int waiting() throws IOException {
        return socket.getInputStream().available();
    }

    @Override
    public void close() {
        try {
            socket.close();
        } catch (IOException e) {
            return; // it is of no use any more, whatever it says
        }
    }
}
