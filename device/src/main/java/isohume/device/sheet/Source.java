// SPDX-License-Identifier: Apache-2.0
package isohume.device.sheet;

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

/** The text of a document, from a file in UTF-8. */
final class Source {
    /** The largest document that is read. A person's plan or description has a few kilobytes. */
    static final int LIMIT_BYTES = 1 << 20;

    private Source() {}

    static String of(Path file, String name) {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(LIMIT_BYTES + 1);
        } catch (NoSuchFileException e) {
            throw whole(name, "there is no such file", "check the name and the folder");
        } catch (IOException e) {
            throw whole(name, "the file cannot be read (" + e.getMessage() + ")", "check that it may be read");
        }
        if (bytes.length > LIMIT_BYTES) {
            throw tooLarge(name);
        }
        return decoded(bytes, name);
    }

    static SheetError tooLarge(String name) {
        return whole(name, "the document is larger than 1 MB", "a document of this kind has a few kilobytes");
    }

    static SheetError whole(String name, String what, String remedy) {
        return new SheetError(name, 0, 0, what, remedy);
    }

    private static String decoded(byte[] bytes, String name) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        CharBuffer text = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), text, true);
        text.flip();
        if (result.isError()) {
            int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
            int column = text.length() - text.toString().lastIndexOf('\n');
            throw new SheetError(name, line, column, "the text is not UTF-8 here", "save the document as UTF-8");
        }
        return text.toString();
    }
}
