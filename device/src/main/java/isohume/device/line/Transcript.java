// SPDX-License-Identifier: Apache-2.0
package isohume.device.line;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/**
 * What went over a line, as text: a line for each piece, {@code >} with the bytes that were sent or {@code <} with those
 * that came, as pairs of hexadecimal digits; what follows a {@code #} is for people. {@code isohume device try} writes it.
 */
public final class Transcript {
    /** Bytes that went one way. */
    record Piece(boolean sent, List<Byte> bytes) {
        byte[] array() {
            byte[] array = new byte[bytes.size()];
            for (int i = 0; i < array.length; i++) {
                array[i] = bytes.get(i);
            }
            return array;
        }
    }

    private final List<Piece> pieces;

    private Transcript(List<Piece> pieces) {
        this.pieces = List.copyOf(pieces);
    }

    /**
     * Reads a transcript.
     *
     * @throws IllegalArgumentException with the number of the line that is none
     */
    public static Transcript parse(String text) {
        List<Piece> pieces = new ArrayList<>();
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            String bare = line.replaceFirst("#.*", "").replace(" ", "").strip();
            if (!bare.isEmpty()) {
                pieces.add(piece(bare, number));
            }
        }
        return new Transcript(pieces);
    }

    private static Piece piece(String bare, int number) {
        if (!bare.matches("[<>]([0-9A-Fa-f]{2})+")) {
            throw new IllegalArgumentException("line " + number
                    + " is neither > nor < with pairs of hexadecimal digits behind it, such as < 01 03 02 00 FA");
        }
        List<Byte> bytes = new ArrayList<>();
        for (byte one : HexFormat.of().parseHex(bare, 1, bare.length())) {
            bytes.add(one);
        }
        return new Piece(bare.charAt(0) == '>', List.copyOf(bytes));
    }

    List<Piece> pieces() {
        return pieces;
    }

    /** A piece as a line of a transcript, without its end. */
    public static String line(boolean sent, byte[] bytes) {
        StringBuilder text = new StringBuilder(sent ? ">" : "<");
        for (byte one : bytes) {
            text.append(String.format(Locale.ROOT, " %02X", one));
        }
        return text.toString();
    }
}
