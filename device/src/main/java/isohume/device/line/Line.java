// SPDX-License-Identifier: Apache-2.0
package isohume.device.line;

import isohume.device.Trouble;
import isohume.device.line.Question.Hearing;
import java.io.EOFException;
import java.io.IOException;
import java.net.ConnectException;
import java.net.SocketTimeoutException;
import java.net.UnknownHostException;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/**
 * A line of bytes to one place, shared by all devices there. It connects when first asked and again after it was lost. A
 * thread takes the line, asks, and releases it; no call outlasts its deadline. What was heard is a reply only if the
 * question says so; after anything else the line makes sure that the next question does not get it for an answer.
 *
 * <p>A question that went unanswered may be answered yet. Where replies carry no numbers, such a reply is waited for until
 * another time limit has passed, by the next question with half of the time it has, and then is thrown away as late.
 */
public final class Line implements AutoCloseable {
    private static final int SILENCES = 2; // then the far end may have forgotten the connection: make a new one
    private static final int LONGEST = 1 << 16; // no reply of an instrument is longer
    private static final Duration QUIET = Duration.ofMillis(60); // so long nothing comes once a device is done

    private final Place place;
    private final Tap tap;
    private final ReentrantLock taken = new ReentrantLock(true);
    private volatile @Nullable Wire wire;
    private volatile boolean closed;
    private byte[] kept = {}; // what came behind the last reply
    private int number;
    private int silences;
    private boolean doubt;
    private Deadline owed =
            Deadline.in(Duration.ZERO); // a reply to a question that went unanswered may come until then
    private boolean late; // such a reply came during this question

    Line(Place place, Tap tap) {
        this.place = place;
        this.tap = tap;
    }

    Place place() {
        return place;
    }

    /** What is said of a device whose line was not to be had until the deadline. */
    public static String held(Deadline deadline) {
        return "another device held the line for " + deadline.limitText();
    }

    /** Takes the line for this thread; false if others held it until the deadline. */
    public boolean take(Deadline deadline) {
        return deadline.get(left -> taken.tryLock(left, TimeUnit.MILLISECONDS));
    }

    /** Lets others have it. */
    public void release() {
        taken.unlock();
    }

    /** Asks one question; by the thread that holds the line. */
    public <R> Heard<R> ask(Question<R> question, Deadline deadline) {
        if (closed) {
            return new Heard.Nothing<>(Trouble.UNPLUGGED, "the line to " + place + " is closed");
        }
        Wire open;
        try {
            open = connected(deadline);
        } catch (IOException e) {
            return new Heard.Nothing<>(Trouble.UNPLUGGED, "no connection to " + place + ": " + reason(e));
        }
        late = false;
        Heard<R> heard = exchange(open, question, deadline);
        boolean silent = heard instanceof Heard.Nothing<R> nothing && nothing.trouble() == Trouble.SILENCE;
        if (silent && !question.numbered()) {
            owed = Deadline.in(deadline.limit());
        }
        silences = silent ? silences + 1 : 0;
        if (silences >= SILENCES) {
            drop();
        }
        doubt = heard instanceof Heard.Nothing;
        return heard;
    }

    private <R> Heard<R> exchange(Wire open, Question<R> question, Deadline deadline) {
        number++;
        try {
            byte[] bytes = question.bytes(number);
            if (bytes.length > 0) {
                if (!question.numbered()) {
                    hush(open, deadline);
                }
                tap.moved(place.toString(), true, bytes);
                open.send(bytes);
            }
            return new Heard.Said<>(listen(open, question, deadline));
        } catch (Broken e) {
            if (question.numbered() || e.getCause() instanceof EOFException) {
                drop();
            }
            kept = new byte[0];
            return new Heard.Nothing<>(Trouble.GARBLED, e.what());
        } catch (SocketTimeoutException e) {
            return new Heard.Nothing<>(
                    Trouble.SILENCE,
                    "no reply from " + place + " within " + deadline.limitText()
                            + (late ? "; the reply to an earlier question came late and was not used" : ""));
        } catch (IOException e) {
            drop();
            return new Heard.Nothing<>(Trouble.UNPLUGGED, "the connection to " + place + " was lost: " + reason(e));
        }
    }

    private <R> R listen(Wire open, Question<R> question, Deadline deadline) throws IOException {
        byte[] seen = kept;
        byte[] before = kept;
        kept = new byte[0];
        boolean unasked = question.bytes(number).length == 0;
        while (true) {
            Hearing<R> hearing = seen.length == 0 ? new Hearing.More<>() : question.hear(seen, number);
            switch (hearing) {
                case Hearing.More<R> more -> {
                    if (unasked && seen.length > before.length) {
                        kept = seen; // a piece of a line that is on its way waits for the rest
                    }
                    seen = joined(open, seen, deadline);
                }
                case Hearing.Late<R>(int bytes) -> seen = Arrays.copyOfRange(seen, bytes, seen.length);
                case Hearing.Nonsense<R>(String what) -> throw new Broken(what, seen, null);
                case Hearing.Whole<R>(R reply, int bytes) -> {
                    kept = Arrays.copyOfRange(seen, bytes, seen.length);
                    if (question.numbered() || !doubt || unasked || quiet(open, deadline)) {
                        return reply;
                    }
                    seen = kept; // the reply was late, and this is what follows it
                }
            }
        }
    }

    private byte[] joined(Wire open, byte[] seen, Deadline deadline) throws IOException {
        if (seen.length >= LONGEST) {
            throw new Broken("more than " + LONGEST + " bytes came without an end", seen, null);
        }
        byte[] room = Arrays.copyOf(seen, Math.max(256, 2 * seen.length));
        try {
            int count = open.receive(room, seen.length, deadline);
            byte[] more = Arrays.copyOf(room, seen.length + count);
            tap.moved(place.toString(), false, Arrays.copyOfRange(more, seen.length, more.length));
            return more;
        } catch (SocketTimeoutException | EOFException e) {
            if (seen.length == 0 || (kept.length == seen.length && e instanceof SocketTimeoutException)) {
                throw e;
            }
            throw new Broken("the reply broke off after " + seen.length + " bytes", seen, e);
        }
    }

    /** Throws away what came unasked; in doubt, until nothing more comes. */
    private void hush(Wire open, Deadline deadline) throws IOException {
        kept = new byte[0];
        while (doubt ? !quiet(open, deadline) : open.waiting() > 0) {
            kept = new byte[0];
            byte[] unwanted = doubt ? kept : joined(open, kept, deadline);
            if (deadline.millisLeft() == 0) {
                throw new Broken("it talks without being asked, and does not stop", unwanted, null);
            }
        }
    }

    /** Whether nothing comes for a while, a longer one while a late reply may come; what comes is kept. */
    private boolean quiet(Wire open, Deadline deadline) throws IOException {
        long awaited = Math.min(owed.millisLeft(), deadline.millisLeft() / 2);
        Duration quiet = Duration.ofMillis(Math.max(QUIET.toMillis(), awaited));
        try {
            kept = joined(open, kept, deadline.orIn(quiet));
            owed = Deadline.in(Duration.ZERO);
            late = true;
            return false;
        } catch (Broken | SocketTimeoutException e) {
            return true;
        }
    }

    private Wire connected(Deadline deadline) throws IOException {
        Wire open = wire;
        if (open == null) {
            open = place.connect(deadline);
            number = 0;
            kept = new byte[0];
            wire = open;
            if (closed) { // by another thread, meanwhile
                drop();
            }
        }
        return open;
    }

    private void drop() {
        Wire open = wire;
        wire = null;
        silences = 0;
        if (open != null) {
            open.close();
        }
    }

    /** Ends the connection for good, from any thread; a question under way ends as lost. */
    @Override
    public void close() {
        closed = true;
        Wire open = wire;
        if (open != null) {
            open.close();
        }
    }

    @Override
    public String toString() {
        return place.toString();
    }

    /** In plain words. */
    private static String reason(IOException e) {
        return switch (e) {
            case UnknownHostException unknown -> "no machine of that name is known";
            case SocketTimeoutException timeout -> "nobody answered in time";
            case ConnectException refused -> "it refused the connection; is the device on, and the port right?";
            case EOFException ended -> "the device closed it";
            default -> String.valueOf(e.getMessage());
        };
    }

    /** The first bytes as pairs of hexadecimal digits, for messages. */
    public static String hex(byte[] bytes) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Math.min(bytes.length, 16); i++) {
            text.append(i == 0 ? "" : " ").append(String.format(Locale.ROOT, "%02X", bytes[i]));
        }
        return text.append(bytes.length > 16 ? " …" : "").toString();
    }

    /** Bytes came that are not a reply. */
    private static final class Broken extends IOException {
        private static final long serialVersionUID = 1;

        Broken(String what, byte[] seen, @Nullable IOException cause) {
            super(what + " (" + hex(seen) + ")", cause);
        }

        String what() {
            return String.valueOf(getMessage());
        }
    }
}
