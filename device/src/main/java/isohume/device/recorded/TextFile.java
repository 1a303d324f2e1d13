// SPDX-License-Identifier: Apache-2.0
package isohume.device.recorded;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Whether a file is a text in UTF-8 of a bearable size, found out in one pass that keeps nothing. */
final class TextFile {
    private static final int CHUNK = 1 << 16;

    private final Faults faults;
    private long line = 1;

    private TextFile(Faults faults) {
        this.faults = faults;
    }

    /** @throws RecordingRefused if it is not */
    static void check(Path file, long limitBytes, Faults faults) {
        try {
            long size = Files.size(file);
            if (size == 0) {
                throw faults.last(
                        0, "the file is empty", "a line of headings and at least one line of readings are needed");
            }
            if (size > limitBytes) {
                throw faults.last(
                        0,
                        "the file has " + size / 1_000_000 + " MB",
                        "at most " + limitBytes / 1_000_000 + " MB are read; split it between two points");
            }
            try (InputStream in = new BufferedInputStream(Files.newInputStream(file), CHUNK)) {
                new TextFile(faults).check(in);
            }
        } catch (IOException e) {
            throw unreadable(e, faults);
        }
    }

    static RecordingRefused unreadable(IOException e, Faults faults) {
        return e instanceof NoSuchFileException
                ? faults.last(0, "there is no such file", "check the name and the folder")
                : faults.last(0, "the file cannot be read (" + e.getMessage() + ")", "check that it may be read");
    }

    private void check(InputStream in) throws IOException {
        in.mark(8);
        refuseOtherFormats(in.readNBytes(4));
        in.reset();
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer bytes = ByteBuffer.allocate(CHUNK);
        CharBuffer text = CharBuffer.allocate(CHUNK);
        boolean ended = false;
        while (!ended) {
            int count = in.read(bytes.array(), bytes.position(), bytes.remaining());
            ended = count < 0;
            bytes.position(bytes.position() + Math.max(0, count)).flip();
            CoderResult result = decoder.decode(bytes, text, ended);
            count(text.flip());
            if (result.isError()) {
                throw faults.last(line, "the text is not UTF-8 here", "save the file as CSV in UTF-8");
            }
            text.clear();
            bytes.compact();
        }
    }

    private void refuseOtherFormats(byte[] start) {
        String first = new String(start, StandardCharsets.ISO_8859_1);
        if (first.startsWith("PK") || first.startsWith("\u00D0\u00CF\u0011\u00E0")) {
            throw faults.last(0, "the file is a workbook or an archive", "save the sheet as CSV in UTF-8");
        }
        if (first.startsWith("\u00FF\u00FE") || first.startsWith("\u00FE\u00FF")) {
            throw faults.last(0, "the text is UTF-16", "save the file as CSV in UTF-8");
        }
    }

    private void count(CharBuffer text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                line++;
            } else if (c < ' ' && c != '\r' && c != '\t') {
                throw faults.last(line, "the file is not a text", "save the readings as CSV in UTF-8");
            }
        }
    }
}
