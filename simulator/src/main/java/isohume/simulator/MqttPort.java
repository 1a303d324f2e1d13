// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.concurrent.locks.LockSupport;

/**
 * As much of an MQTT broker as a subscriber needs (MQTT 3.1.1, OASIS 2014: CONNECT, SUBSCRIBE, PINGREQ, PUBLISH at most
 * once): whoever subscribes to {@code bench/11} gets the document of the instrument with unit 11 ten times a second.
 */
final class MqttPort implements WirePort.Talk {
    private static final long PERIOD_NANOS = 100_000_000;
    private static final int NOT_AUTHORISED = 5;

    private final JsonDocument documents;
    private final Faults faults;

    MqttPort(JsonDocument documents, Faults faults) {
        this.documents = documents;
        this.faults = faults;
    }

    @Override
    public void serve(InputStream in, OutputStream out) throws IOException {
        byte[] connect = packet(new DataInputStream(in)); // whoever it is
        boolean refused = connect.length == 0 || faults.of(Units.FIRST_TRANSMITTER) == Fault.REFUSING;
        out.write(new byte[] {0x20, 2, 0, (byte) (refused ? NOT_AUTHORISED : 0)});
        if (!refused) {
            follow(new DataInputStream(in), out);
        }
    }

    /** Takes packets until the subscriber goes. */
    private void follow(DataInputStream packets, OutputStream out) throws IOException {
        while (true) {
            int type = packets.readUnsignedByte() >> 4;
            byte[] body = body(packets);
            switch (type) {
                case 8 -> subscribe(body, out);
                case 12 -> send(out, new byte[] {(byte) 0xD0, 0});
                case 14 -> throw new EOFException("it said good-bye");
                default -> {} // nothing else matters to a subscriber
            }
        }
    }

    private void subscribe(byte[] body, OutputStream out) throws IOException {
        int length = ByteBuffer.wrap(body).getShort(2);
        String topic = new String(body, 4, length, StandardCharsets.UTF_8);
        send(out, new byte[] {(byte) 0x90, 3, body[0], body[1], 0});
        if (topic.matches("bench/[0-9]{1,3}")) {
            int unit = Integer.parseInt(topic.substring(6));
            Thread.ofPlatform().daemon().name("simulator-publishes").start(() -> publish(topic, unit, out));
        }
    }

    private void publish(String topic, int unit, OutputStream out) {
        byte[] late = {};
        try {
            while (documents.isThere(unit)) {
                LockSupport.parkNanos(PERIOD_NANOS);
                Fault fault = faults.of(unit);
                if (fault == Fault.UNPLUGGED || fault == Fault.REFUSING) {
                    out.close();
                    return;
                }
                byte[] document = documents.of(unit, unit);
                if (late.length > 0 && fault != Fault.LATE) {
                    send(out, message(topic, late));
                }
                late = fault == Fault.LATE ? document : new byte[0];
                byte[] payload = spoilt(document, unit, fault);
                if (payload.length > 0) {
                    send(out, message(topic, payload));
                }
            }
        } catch (IOException gone) {
            return; // the subscriber hung up
        }
    }

    private byte[] spoilt(byte[] document, int unit, Fault fault) {
        return switch (fault) {
            case NONE, FROZEN, TRICKLING -> document;
            case NOISE -> "HELLO, WORLD".getBytes(StandardCharsets.US_ASCII);
            case GARBLED ->
                new String(document, StandardCharsets.UTF_8).replace(':', ';').getBytes(StandardCharsets.UTF_8);
            case BROKEN_OFF -> Arrays.copyOf(document, document.length - 3);
            case FOREIGN -> documents.of(unit, unit + 1);
            case SILENT, LATE, REFUSING, UNPLUGGED -> new byte[0];
        };
    }

    private static byte[] message(String topic, byte[] payload) {
        byte[] name = topic.getBytes(StandardCharsets.UTF_8);
        int length = 2 + name.length + payload.length; // below 128, so one byte tells it
        return ByteBuffer.allocate(2 + length)
                .put((byte) 0x30)
                .put((byte) length)
                .putShort((short) name.length)
                .put(name)
                .put(payload)
                .array();
    }

    private static void send(OutputStream out, byte[] packet) throws IOException {
        synchronized (out) {
            out.write(packet);
        }
    }

    private static byte[] packet(DataInputStream in) throws IOException {
        int type = in.readUnsignedByte();
        byte[] body = body(in);
        return type >> 4 == 1 ? body : new byte[0];
    }

    private static byte[] body(DataInputStream in) throws IOException {
        int length = 0;
        int shift = 0;
        int next;
        do {
            next = in.readUnsignedByte();
            length |= (next & 0x7F) << shift;
            shift += 7;
        } while (next >= 0x80 && shift < 28);
        byte[] body = new byte[length];
        in.readFully(body);
        return body;
    }
}
