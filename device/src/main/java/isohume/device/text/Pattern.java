// SPDX-License-Identifier: Apache-2.0
package isohume.device.text;

import com.google.re2j.Matcher;
import java.nio.charset.Charset;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** How a device's lines look. Pure. */
final class Pattern {
    static final String CHECKED = "checked";
    static final String CHECKSUM = "checksum";

    private final com.google.re2j.Pattern reply;
    private final Optional<com.google.re2j.Pattern> refusal;
    private final Checksum checksum;
    private final Charset charset;

    Pattern(
            com.google.re2j.Pattern reply,
            Optional<com.google.re2j.Pattern> refusal,
            Checksum checksum,
            Charset charset) {
        this.reply = reply;
        this.refusal = refusal;
        this.checksum = checksum;
        this.charset = charset;
    }

    /** The names of the groups. */
    Set<String> groups() {
        return new TreeSet<>(reply.namedGroups().keySet());
    }

    /** What a line says; empty if it is not as described or its checksum does not fit. */
    Optional<Spoken> says(String line) {
        Matcher matcher = reply.matcher(line);
        if (matcher.matches()) {
            Map<String, String> found = new HashMap<>();
            for (String name : reply.namedGroups().keySet()) {
                String text = matcher.group(name);
                if (text != null) {
                    found.put(name, text.strip());
                }
            }
            return fits(matcher) ? Optional.of(new Spoken.Values(Map.copyOf(found), line)) : Optional.empty();
        }
        return refusal.filter(no -> no.matcher(line).matches()).map(no -> new Spoken.Refused(line));
    }

    private boolean fits(Matcher matcher) {
        if (checksum == Checksum.NONE) {
            return true;
        }
        String checked = matcher.group(CHECKED);
        String digits = matcher.group(CHECKSUM);
        return checked != null && digits != null && checksum.fits(checked, digits, charset);
    }
}
