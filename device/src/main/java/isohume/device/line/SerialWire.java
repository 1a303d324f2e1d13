// SPDX-License-Identifier: Apache-2.0
package isohume.device.line;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.io.EOFException;
import java.io.IOException;
import java.net.SocketTimeoutException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.locks.LockSupport;

/**
 * A serial port. The system lets a read wait in steps of a tenth of a second only, so the last tenth before a deadline
 * is waited out in glances.
 *
 * <p>Before it sends, a port is left quiet for three and a half characters (at least 1.75 ms) after what was last heard,
 * which Modbus asks for (MODBUS over Serial Line V1.02, 2.5.1.1) and nothing else minds.
 */
final class SerialWire implements Wire {
    private static final int STEP_MS = 100;
    private static final long GLANCE_NANOS = 2_000_000;

    private final SerialPort port;
    private final long gapNanos;
    private long heardAt;

    private SerialWire(SerialPort port, long gapNanos) {
        this.port = port;
        this.gapNanos = gapNanos;
        this.heardAt = System.nanoTime();
    }

    static SerialWire to(Place.Serial place) throws IOException {
        if (place.path().startsWith("/") && !Files.exists(Path.of(place.path()))) {
            throw new IOException("there is no such port; is the cable in, and the name right?");
        }
        SerialPort port;
        try {
            port = SerialPort.getCommPort(place.path());
        } catch (SerialPortInvalidPortException e) {
            throw new IOException("there is no such port; is the cable in, and the name right?", e);
        }
        boolean taken =
                port.setComPortParameters(place.baud(), place.dataBits(), stopBits(place), parity(place.parity()))
                        && port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED)
                        && port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, STEP_MS, 0);
        if (!taken || !port.openPort()) {
            throw new IOException("it cannot be opened (system error " + port.getLastErrorCode()
                    + "); does another program hold it, and may you use it?");
        }
        long bits = 1L + place.dataBits() + place.stopBits() + (place.parity() == Place.Parity.NONE ? 0 : 1);
        return new SerialWire(port, Math.max(1_750_000L, 3_500_000_000L * bits / place.baud()));
    }

    /** The library's numbers for them are not how many they are: its 2 is one and a half. */
    private static int stopBits(Place.Serial place) {
        return place.stopBits() == 2 ? SerialPort.TWO_STOP_BITS : SerialPort.ONE_STOP_BIT;
    }

    private static int parity(Place.Parity parity) {
        return switch (parity) {
            case NONE -> SerialPort.NO_PARITY;
            case EVEN -> SerialPort.EVEN_PARITY;
            case ODD -> SerialPort.ODD_PARITY;
        };
    }

    @Override
    public void send(byte[] bytes) throws IOException {
        long wait;
        while ((wait = heardAt + gapNanos - System.nanoTime()) > 0) {
            LockSupport.parkNanos(wait);
        }
        if (port.writeBytes(bytes, bytes.length) != bytes.length) {
            throw new IOException("it took no bytes");
        }
    }

    @Override
    public int receive(byte[] into, int from, Deadline deadline) throws IOException {
        int count = 0;
        while (count == 0) {
            int left = deadline.millisLeft();
            boolean lastStep = left < STEP_MS;
            if (lastStep && port.bytesAvailable() == 0) {
                if (left == 0) {
                    throw new SocketTimeoutException("the time limit has passed");
                }
                LockSupport.parkNanos(GLANCE_NANOS);
            } else {
                count = port.readBytes(into, into.length - from, from);
            }
            if (count < 0 || !port.isOpen()) {
                throw new EOFException();
            }
        }
        heardAt = System.nanoTime();
        return count;
    }

    @Override
    public int waiting() {
        return Math.max(0, port.bytesAvailable());
    }

    @Override
    public void close() {
        port.closePort();
    }
}
