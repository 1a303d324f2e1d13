// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.export.Question.Choice;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How the letters of a file are written. A byte order mark says it; zero bytes at every other place give UTF-16 away;
 * text that is well-formed UTF-8 beyond ASCII is UTF-8, since other text hardly ever is (RFC 3629, section 1). What is
 * left has one byte for each letter, and is recognised only by a degree sign in front of a C or F.
 */
final class Encoding {
    private static final int CHUNK = 1 << 16;
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final List<String> OTHERS = List.of("windows-1252", "IBM850", "GB18030", "Shift_JIS");

    private final Doubts doubts;

    Encoding(Doubts doubts) {
        this.doubts = doubts;
    }

    /** The encoding, unless it is in doubt or the file is no text; then the doubts have it. */
    Optional<Charset> of(Path file) throws IOException {
        byte[] head;
        try (InputStream in = Files.newInputStream(file)) {
            head = in.readNBytes(CHUNK);
        }
        Optional<Charset> marked = marked(head);
        if (marked.isPresent() || doubts.broken()) {
            return marked;
        }
        Odd odd = Odd.in(file);
        if (odd.bytes.length == 0) {
            return Optional.of(StandardCharsets.UTF_8);
        }
        if (odd.utf8) {
            doubts.find(Finding.Kind.LAYOUT, 0, "the text is UTF-8");
            return Optional.of(StandardCharsets.UTF_8);
        }
        return asked().or(() -> oneByte(odd));
    }

    private Optional<Charset> marked(byte[] head) {
        if (starts(head, 'P', 'K', 3, 4) || starts(head, 0xD0, 0xCF, 0x11, 0xE0)) {
            doubts.wrong(0, 0, "the file is a workbook or an archive", "export it as CSV or text");
            return Optional.empty();
        }
        if (starts(head, 0xEF, 0xBB, 0xBF)) {
            return found(StandardCharsets.UTF_8, "UTF-8, by its byte order mark");
        }
        if (starts(head, 0xFF, 0xFE)) {
            return found(StandardCharsets.UTF_16LE, "UTF-16 (little endian), by its byte order mark");
        }
        if (starts(head, 0xFE, 0xFF)) {
            return found(StandardCharsets.UTF_16BE, "UTF-16 (big endian), by its byte order mark");
        }
        return byZeros(head);
    }

    private Optional<Charset> byZeros(byte[] head) {
        int[] zeros = new int[2];
        for (int i = 0; i < head.length; i++) {
            zeros[i % 2] += head[i] == 0 ? 1 : 0;
        }
        int half = head.length / 2;
        if (half > 0 && zeros[1] > 0.7 * half && zeros[0] == 0) {
            return found(StandardCharsets.UTF_16LE, "UTF-16 (little endian), by its zero bytes");
        }
        if (half > 0 && zeros[0] > 0.7 * half && zeros[1] == 0) {
            return found(StandardCharsets.UTF_16BE, "UTF-16 (big endian), by its zero bytes");
        }
        if (zeros[0] + zeros[1] > 0) {
            doubts.wrong(0, 0, "the file is not a text", "export the readings as CSV or text");
        }
        return Optional.empty();
    }

    private Optional<Charset> found(Charset charset, String said) {
        doubts.find(Finding.Kind.LAYOUT, 0, "the text is " + said);
        return Optional.of(charset);
    }

    private Optional<Charset> asked() {
        return doubts.answer("encoding").flatMap(name -> {
            try {
                return Optional.of(Charset.forName(name));
            } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
                return Optional.empty();
            }
        });
    }

    private Optional<Charset> oneByte(Odd odd) {
        String text = new String(odd.bytes, WINDOWS);
        if (decodes(odd.bytes, WINDOWS) && text.matches("(?s).*[°º] ?[CF](?![a-z]).*")) {
            return found(WINDOWS, "Windows-1252 or a relative of it, by its degree sign; other letters may look wrong");
        }
        List<Choice> choices = new ArrayList<>();
        for (String name : OTHERS) {
            if (Charset.isSupported(name) && decodes(odd.bytes, Charset.forName(name))) {
                choices.add(new Choice(name, "it reads: " + shown(new String(odd.bytes, Charset.forName(name)))));
            }
        }
        doubts.askFreely(
                "encoding",
                "How are the letters of this file written?",
                choices,
                List.of("line " + odd.line + " has letters beyond ASCII and is not UTF-8"));
        return Optional.empty();
    }

    private static String shown(String text) {
        return text.length() > 80 ? text.substring(0, 80) + "…" : text;
    }

    private static boolean decodes(byte[] bytes, Charset charset) {
        try {
            return charset.newDecoder().decode(ByteBuffer.wrap(bytes)).length() > 0;
        } catch (CharacterCodingException notThis) {
            return false;
        }
    }

    private static boolean starts(byte[] head, int... with) {
        for (int i = 0; i < with.length; i++) {
            if (head.length <= i || (head[i] & 0xFF) != with[i]) {
                return false;
            }
        }
        return true;
    }

    /** The first line that is not ASCII, and whether the whole file is UTF-8; found in one pass. */
    private static final class Odd {
        private byte[] bytes = new byte[0];
        private long line;
        private boolean utf8 = true;

        static Odd in(Path file) throws IOException {
            Odd odd = new Odd();
            try (InputStream in = new BufferedInputStream(Files.newInputStream(file), CHUNK)) {
                odd.look(in);
            }
            try (InputStream in = Files.newInputStream(file)) {
                odd.utf8 = odd.bytes.length == 0 || isUtf8(in);
            }
            return odd;
        }

        private void look(InputStream in) throws IOException {
            byte[] current = new byte[400];
            int length = 0;
            boolean beyond = false;
            long count = 1;
            for (int b = in.read(); ; b = in.read()) {
                if (b == '\n' || b < 0) {
                    if (beyond) {
                        bytes = Arrays.copyOf(current, length);
                        line = count;
                        return;
                    }
                    if (b < 0) {
                        return;
                    }
                    length = 0;
                    count++;
                } else if (length < current.length && b != '\r') {
                    current[length++] = (byte) b;
                    beyond |= b > 0x7F;
                }
            }
        }

        private static boolean isUtf8(InputStream in) throws IOException {
            CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
            ByteBuffer bytes = ByteBuffer.allocate(CHUNK);
            CharBuffer text = CharBuffer.allocate(CHUNK);
            boolean ended = false;
            while (!ended) {
                int count = in.read(bytes.array(), bytes.position(), bytes.remaining());
                ended = count < 0;
                bytes.position(bytes.position() + Math.max(0, count)).flip();
                if (decoder.decode(bytes, text, ended).isError()) {
                    return false;
                }
                text.clear();
                bytes.compact();
            }
            return true;
        }
    }
}
