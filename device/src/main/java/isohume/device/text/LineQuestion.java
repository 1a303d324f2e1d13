// SPDX-License-Identifier: Apache-2.0
package isohume.device.text;

import isohume.device.line.Question;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.util.Optional;
import java.util.function.Function;

/**
 * A line of text that is sent, and the line that answers it.
 *
 * @param <R> what a line says
 */
public final class LineQuestion<R> implements Question<R> {
    /** No line of an instrument is longer. */
    private static final int LONGEST = 4096;

    private final Manner manner;
    private final String ask;
    private final Function<String, Optional<R>> meaning;

    /**
     * How lines are written.
     *
     * @param askEnd what ends a line that is sent
     * @param replyEnd what ends a line that comes, not empty
     * @param echo whether the device sends back what it is asked before it answers
     */
    public record Manner(Charset charset, String askEnd, String replyEnd, boolean echo) {}

    /**
     * A question.
     *
     * @param ask what is sent, without its end; nothing to listen only
     * @param meaning what a line without its end says; empty if it is not what is expected
     */
    public LineQuestion(Manner manner, String ask, Function<String, Optional<R>> meaning) {
        this.manner = manner;
        this.ask = ask;
        this.meaning = meaning;
    }

    @Override
    public boolean numbered() {
        return false;
    }

    @Override
    public byte[] bytes(int number) {
        return ask.isEmpty() ? new byte[0] : (ask + manner.askEnd()).getBytes(manner.charset());
    }

    @Override
    public Hearing<R> hear(byte[] seen, int number) {
        byte[] end = manner.replyEnd().getBytes(manner.charset());
        int from = 0;
        int to = find(end, seen, from);
        while (to == from || (to > 0 && isEcho(seen, from, to))) { // an empty line says nothing
            from = to + end.length;
            to = find(end, seen, from);
        }
        if (to < 0) {
            return seen.length - from > LONGEST
                    ? new Hearing.Nonsense<>("more than " + LONGEST + " bytes came without an end of line")
                    : new Hearing.More<>();
        }
        Optional<String> line = text(seen, from, to);
        if (line.isEmpty()) {
            return strange("a line with bytes that are no " + manner.charset() + " came", to + end.length, number);
        }
        int bytes = to + end.length;
        return meaning.apply(line.get())
                .<Hearing<R>>map(reply -> new Hearing.Whole<>(reply, bytes))
                .orElseGet(() ->
                        strange("a line that is not as described came: \"" + shown(line.get()) + "\"", bytes, number));
    }

    /** The first line that is overheard on a new connection may be the end of one. */
    private Hearing<R> strange(String what, int bytes, int number) {
        return ask.isEmpty() && number == 1 ? new Hearing.Late<>(bytes) : new Hearing.Nonsense<>(what);
    }

    private boolean isEcho(byte[] seen, int from, int to) {
        return manner.echo()
                && text(seen, from, to)
                        .filter(line -> line.strip().equals(ask.strip()))
                        .isPresent();
    }

    private Optional<String> text(byte[] seen, int from, int to) {
        try {
            return Optional.of(manner.charset()
                    .newDecoder()
                    .decode(ByteBuffer.wrap(seen, from, to - from))
                    .toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    /** Where the end begins, at or after {@code from}; below zero if it is not there. */
    private static int find(byte[] end, byte[] seen, int from) {
        for (int at = from; at + end.length <= seen.length; at++) {
            int same = 0;
            while (same < end.length && seen[at + same] == end[same]) {
                same++;
            }
            if (same == end.length) {
                return at;
            }
        }
        return -1;
    }

    /** A line as it may stand in a message: at most 80 characters, none of them a control character. */
    public static String shown(String line) {
        String plain = line.codePoints()
                .limit(80)
                .collect(
                        StringBuilder::new,
                        (text, c) -> text.appendCodePoint(Character.isISOControl(c) ? 0xFFFD : c),
                        StringBuilder::append)
                .toString();
        return plain.length() < line.length() ? plain + " …" : plain;
    }
}
