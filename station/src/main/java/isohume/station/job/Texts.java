// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.device.sheet.Sheet;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Objects;

/** Where documents come from, by the names that they call each other. */
@FunctionalInterface
public interface Texts {
    /** The document of that name. */
    String text(String name);

    /** Documents in a folder. */
    static Texts in(Path folder) {
        return name -> Sheet.document(folder.resolve(name));
    }

    /** Documents that come with the program, beside a class. */
    static Texts packagedWith(Class<?> neighbour) {
        return name -> {
            try (InputStream in = Objects.requireNonNull(neighbour.getResourceAsStream(name), name)) {
                return new String(in.readAllBytes(), StandardCharsets.UTF_8);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        };
    }
}
