// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.concurrent.locks.LockSupport;

/** Takes requests one after the other and answers each, as well as the faults allow. */
final class Answers implements WirePort.Talk {
    private static final long TRICKLE_NANOS = 200_000_000;

    private final Speech speech;
    private final Faults faults;

    Answers(Speech speech, Faults faults) {
        this.speech = speech;
        this.faults = faults;
    }

    @Override
    public void serve(InputStream in, OutputStream out) throws IOException {
        byte[] late = {};
        boolean more = true;
        while (more) {
            Speech.Request request = speech.next(in);
            Fault fault = faults.of(request.unit());
            if (fault == Fault.LATE) {
                late = request.answer();
            } else {
                out.write(late);
                late = new byte[0];
                more = answer(request, fault, in, out);
            }
        }
    }

    /** Whether the connection stays. */
    private static boolean answer(Speech.Request request, Fault fault, InputStream in, OutputStream out)
            throws IOException {
        byte[] bytes = switch (fault) {
            case NONE, FROZEN, TRICKLING -> request.answer();
            case NOISE -> request.noise();
            case GARBLED -> request.garbled(request.answer());
            case REFUSING -> request.refusal();
            case BROKEN_OFF -> request.broken(request.answer());
            case FOREIGN -> request.foreign(request.answer());
            case SILENT, LATE, UNPLUGGED -> new byte[0];
        };
        if (fault == Fault.TRICKLING) {
            trickle(bytes, in, out);
        } else {
            out.write(bytes);
        }
        return fault != Fault.UNPLUGGED;
    }

    /** Byte by byte, until the caller asks again; whether it hung up is met by the next byte. */
    private static void trickle(byte[] answer, InputStream in, OutputStream out) throws IOException {
        for (byte one : answer) {
            LockSupport.parkNanos(TRICKLE_NANOS);
            if (in.available() > 0) {
                return;
            }
            out.write(one);
        }
    }
}
