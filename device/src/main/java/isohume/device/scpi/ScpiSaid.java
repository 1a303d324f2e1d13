// SPDX-License-Identifier: Apache-2.0
package isohume.device.scpi;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a line of a meter says.
 *
 * <p>Source: IEEE 488.2-1992, 8.7.2 to 8.7.4 (NR1, NR2, NR3); SCPI-99 volume 1, 7.2.1.4 and 7.2.1.5 (9.9E37 is infinity, 9.91E37 is
 * not a number) and volume 2, 21.8.8 (the error queue: a number, a comma, a text in quotation marks). From memory.
 */
sealed interface ScpiSaid {
    /** A number. */
    record Measured(BigDecimal number, String line) implements ScpiSaid {}

    /** The next entry of the error queue; code 0 if there is none. */
    record Queued(int code, String line) implements ScpiSaid {}

    /** The line is a number, an entry of the error queue, or neither. */
    static Optional<ScpiSaid> of(String line) {
        String bare = line.strip();
        Matcher error = Notation.ERROR.matcher(bare);
        return error.matches()
                ? Optional.of(new Queued(Integer.parseInt(error.group(1)), bare))
                : isohume.device.driver.Meaning.number(bare).map(number -> new Measured(number, bare));
    }

    /** How the error queue is written. */
    final class Notation {
        private static final Pattern ERROR = Pattern.compile("([+-]?[0-9]{1,5}),\"[^\"]{0,255}\"");

        private Notation() {}
    }
}
