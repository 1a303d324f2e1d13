// SPDX-License-Identifier: Apache-2.0
package isohume.station;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.Properties;

/** What this program is called in records and on certificates. */
public final class Program {
    private Program() {}

    /** {@code Isohume} and its version. */
    public static String title() {
        Properties built = new Properties();
        try (InputStream in = Objects.requireNonNull(Program.class.getResourceAsStream("built.properties"))) {
            built.load(in);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return "Isohume " + built.getProperty("version");
    }
}
