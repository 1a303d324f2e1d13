// SPDX-License-Identifier: Apache-2.0
package isohume.station.imported;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/** A folder of files that are kept as they came, each under the SHA-256 of its bytes. */
public final class Untouched {
    private final Path folder;

    /** @param folder made when the first file comes */
    public Untouched(Path folder) {
        this.folder = folder;
    }

    /** SHA-256 of a file's bytes, in hexadecimal. */
    static String hash(Path file) throws IOException {
        MessageDigest digest = sha256();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(OutputStream.nullOutputStream());
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** Keeps a copy, on disk when this returns, and says under which name. */
    public String keep(Path file) throws IOException {
        String hash = hash(file);
        Files.createDirectories(folder);
        Path kept = folder.resolve(hash);
        if (!Files.exists(kept)) {
            Path part = Files.createTempFile(folder, "part", "");
            Files.copy(file, part, StandardCopyOption.REPLACE_EXISTING);
            try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            if (!hash(part).equals(hash)) {
                Files.delete(part);
                throw new IOException(file + " changed while it was read; import it again");
            }
            Files.move(part, kept, StandardCopyOption.ATOMIC_MOVE);
        }
        return hash;
    }

    /** A file that is kept; nothing for a name that is none. */
    public Optional<Path> file(String hash) {
        return hash.matches("[0-9a-f]{64}")
                ? Optional.of(folder.resolve(hash)).filter(Files::isRegularFile)
                : Optional.empty();
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new UncheckedIOException(new IOException("this Java has no SHA-256", never));
        }
    }
}
