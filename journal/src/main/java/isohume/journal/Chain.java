// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * The hash that ties an entry to the one before it.
 *
 * <p>SHA-256 (FIPS 180-4) over seven fields, each written as its length in bytes (decimal digits), a colon, its bytes
 * and a comma. The layout never changes; another one would get another first field. Written out with an example in
 * {@code docs/formats/journal.md}.
 *
 * <pre>{@code
 * 15:isohume entry 1,0:,11:run/R-0001x,1:1,16:1767225600000000,1:1,2:{},
 *    layout           |  stream        |   |                   |   text
 *                     previous hash    number   at, µs         form
 * }</pre>
 */
final class Chain {
    /** What stands for the previous hash in a stream's first entry. */
    static final String BEGINNING = "";

    private static final byte[] LAYOUT = "isohume entry 1".getBytes(UTF_8);

    private Chain() {}

    static String hash(String previous, String stream, long number, long micros, long form, byte[] text) {
        MessageDigest digest = sha256();
        field(digest, LAYOUT);
        field(digest, previous.getBytes(UTF_8));
        field(digest, stream.getBytes(UTF_8));
        field(digest, decimal(number));
        field(digest, decimal(micros));
        field(digest, decimal(form));
        field(digest, text);
        return HexFormat.of().formatHex(digest.digest());
    }

    /** The entry that follows one with the hash {@code previous}; {@code micros} is its instant. */
    static Entry entry(String previous, StreamName stream, long number, long micros, Fact fact) {
        String hash = hash(
                previous,
                stream.toString(),
                number,
                micros,
                fact.form(),
                fact.text().getBytes(UTF_8));
        return new Entry(stream, number, Microseconds.instant(micros), fact, hash);
    }

    private static void field(MessageDigest digest, byte[] bytes) {
        digest.update(decimal(bytes.length));
        digest.update((byte) ':');
        digest.update(bytes);
        digest.update((byte) ',');
    }

    private static byte[] decimal(long number) {
        return Long.toString(number).getBytes(UTF_8);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new AssertionError("every Java platform has SHA-256", impossible);
        }
    }
}
