// SPDX-License-Identifier: Apache-2.0
package isohume.device.text;

import java.nio.charset.Charset;
import java.util.Locale;

/** How a line's own check is made; it is written as two hexadecimal digits. */
enum Checksum {
    /** None. */
    NONE,
    /** All bytes combined by exclusive or. */
    XOR,
    /** The sum of all bytes, without what exceeds a byte. */
    SUM;

    /** Whether {@code digits} check {@code text}. */
    boolean fits(String text, String digits, Charset charset) {
        int made = 0;
        for (byte one : text.getBytes(charset)) {
            made = this == XOR ? made ^ (one & 0xFF) : (made + (one & 0xFF)) & 0xFF;
        }
        return this == NONE || String.format(Locale.ROOT, "%02X", made).equals(digits.toUpperCase(Locale.ROOT));
    }
}
