// SPDX-License-Identifier: Apache-2.0
package isohume.station.imported;

import isohume.run.entry.Photo;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/** Pictures of displays, kept untouched in the data folder's {@code photos}. What they are is told by their bytes. */
public final class Photos {
    private static final long MOST = 8_000_000; // bytes
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    private final Untouched untouched;

    /** @param data the data folder */
    public Photos(Path data) {
        this.untouched = new Untouched(data.resolve("photos"));
    }

    /** What became of a picture. */
    public sealed interface Outcome {
        /** It is on disk. */
        record Kept(Photo photo) implements Outcome {}

        /** It was not kept; {@code why} says what to do instead. */
        record Refused(String why) implements Outcome {}
    }

    /** Keeps a picture. */
    public Outcome keep(Path file, String name) throws IOException {
        long bytes = Files.size(file);
        Optional<String> kind = kind(file);
        if (bytes > MOST) {
            return new Outcome.Refused("The photo has " + bytes / 1_000_000 + " MB, and at most " + MOST / 1_000_000
                    + " MB are kept. Take it with fewer pixels, or type the reading without it.");
        }
        return kind.isEmpty()
                ? new Outcome.Refused("The photo is neither JPEG nor PNG. Save it as one of these, or type the reading"
                        + " without it.")
                : new Outcome.Kept(new Photo(untouched.keep(file), name, kind.get(), bytes));
    }

    /** A kept picture; nothing for a name that is none. */
    public Optional<Photo> find(String sha256, String name) throws IOException {
        Optional<Path> file = untouched.file(sha256);
        return file.isEmpty()
                ? Optional.empty()
                : Optional.of(new Photo(sha256, name, kind(file.get()).orElseThrow(), Files.size(file.get())));
    }

    /** Where a kept picture lies. */
    public Optional<Path> file(String sha256) {
        return untouched.file(sha256);
    }

    private static Optional<String> kind(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] head = in.readNBytes(PNG.length);
            if (begins(head, JPEG)) {
                return Optional.of("image/jpeg");
            }
            return begins(head, PNG) ? Optional.of("image/png") : Optional.empty();
        }
    }

    private static boolean begins(byte[] head, byte[] signature) {
        return head.length >= signature.length
                && Arrays.equals(head, 0, signature.length, signature, 0, signature.length);
    }
}
