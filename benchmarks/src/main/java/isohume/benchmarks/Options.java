// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What every program here can be told.
 *
 * @param json where to write the figures for programs
 * @param quick whether a run only shows that everything works; its figures mean nothing
 */
public record Options(Optional<Path> json, boolean quick) {
    /** {@code [--json FILE] [--quick]}; {@link IllegalArgumentException} says what else was found. */
    public static Options of(String[] arguments) {
        Optional<Path> json = Optional.empty();
        boolean quick = false;
        for (int i = 0; i < arguments.length; i++) {
            if (arguments[i].equals("--quick")) {
                quick = true;
            } else if (arguments[i].equals("--json") && i + 1 < arguments.length) {
                i++;
                json = Optional.of(Path.of(arguments[i]));
            } else {
                throw new IllegalArgumentException(
                        "use: [--json FILE] [--quick]; \"" + arguments[i] + "\" is not understood");
            }
        }
        return new Options(json, quick);
    }
}
