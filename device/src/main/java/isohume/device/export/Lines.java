// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The lines of a text file, each of a bearable length. A byte order mark is passed over. */
final class Lines implements Closeable {
    /** So many lines are looked at to recognise a file; the readings begin before that. */
    static final int HEAD = 1000;

    private static final int LONGEST = 1 << 16;

    private final BufferedReader text;

    private Lines(BufferedReader text) {
        this.text = text;
    }

    static Lines open(Path file, Charset charset) throws IOException {
        BufferedReader text = new BufferedReader(
                new InputStreamReader(
                        Files.newInputStream(file),
                        charset.newDecoder()
                                .onMalformedInput(CodingErrorAction.REPORT)
                                .onUnmappableCharacter(CodingErrorAction.REPORT)),
                1 << 16);
        text.mark(1);
        if (text.read() != 0xFEFF) {
            text.reset();
        }
        return new Lines(text);
    }

    /** The first lines; the last one may be cut. */
    static List<String> head(Path file, Charset charset) throws IOException {
        try (Lines lines = open(file, charset)) {
            List<String> head = new ArrayList<>();
            for (String line = lines.next(); line != null && head.size() < HEAD; line = lines.next()) {
                head.add(line);
            }
            return head;
        }
    }

    /** What is left behind so many lines. */
    Reader after(long count) throws IOException {
        for (long i = 0; i < count; i++) {
            String unused = next();
        }
        return text;
    }

    private @Nullable String next() throws IOException {
        StringBuilder line = new StringBuilder();
        int c = text.read();
        if (c < 0) {
            return null;
        }
        for (; c >= 0 && c != '\n' && c != '\r'; c = text.read()) {
            if (line.length() < LONGEST) {
                line.append((char) c);
            }
        }
        if (c == '\r') {
            text.mark(1);
            if (text.read() != '\n') {
                text.reset();
            }
        }
        return line.toString();
    }

    @Override
    public void close() throws IOException {
        text.close();
    }
}
