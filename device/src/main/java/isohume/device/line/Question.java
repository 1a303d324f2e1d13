// SPDX-License-Identifier: Apache-2.0
package isohume.device.line;

/**
 * What is sent and how its reply is known. Pure: it holds bytes against rules and moves none.
 *
 * @param <R> what a whole reply says
 */
public interface Question<R> {
    /** What bytes say that came so far. */
    sealed interface Hearing<R> {
        /** A reply may still become of them. */
        record More<R>() implements Hearing<R> {}

        /** The first {@code bytes} of them reply to an earlier question. */
        record Late<R>(int bytes) implements Hearing<R> {}

        /** The first {@code bytes} of them are the reply. */
        record Whole<R>(R reply, int bytes) implements Hearing<R> {}

        /** They are no reply to this, and no more bytes will make one of them; {@code what} says why. */
        record Nonsense<R>(String what) implements Hearing<R> {}
    }

    /**
     * The bytes to send; none to listen only.
     *
     * @param number of this question on its connection, from 1
     */
    byte[] bytes(int number);

    /**
     * Judges what came.
     *
     * @param seen the bytes since the question, or since the last late reply; at least one
     * @param number as for {@link #bytes}
     */
    Hearing<R> hear(byte[] seen, int number);

    /**
     * Whether a reply tells which question it belongs to. Where it does not, the line throws away what lies there before
     * a question, and after a silence it waits for the reply that may still come, and whether a second reply follows the
     * first, which then was late.
     */
    boolean numbered();
}
