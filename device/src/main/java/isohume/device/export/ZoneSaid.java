// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time zone that stands somewhere above the readings.
 *
 * @param sure whether it is said of the times of the readings: in their heading, or in a line that is called time zone
 */
record ZoneSaid(ZoneId zone, long line, String text, boolean sure) {
    private static final String NAMED = "(?:UTC|GMT|CET|CEST|MEZ|MESZ)";
    private static final Pattern ANYWHERE =
            Pattern.compile("\\b(?:(?:UTC|GMT)\\s?[+-]\\s?\\d{1,2}(?::?\\d\\d)?|" + NAMED + "\\b)");
    private static final Pattern CALLED = Pattern.compile(
            "(?i)(?:time ?zone|zeitzone|fuseau(?: horaire)?|zona horaria|fuso(?: orario)?|tijdzone|utc[- ]?offset)"
                    + "[^\\p{L}\\d+-]*((?:(?:UTC|GMT)\\s?)?[+-]\\s?\\d{1,2}(?::?\\d\\d)?|(?:UTC|GMT|CET|CEST|MEZ|MESZ)|\\p{L}+/[\\p{L}_/]+)"
                    + "[\\s;,\")\\]h]*$");

    static Optional<ZoneSaid> in(Layout layout, TimeColumns times) {
        long headings = layout.before().size() + 1L;
        Optional<ZoneSaid> heading = anywhere(layout.name(times.clock()), headings, true)
                .or(() -> anywhere(layout.name(times.date()), headings, true));
        if (heading.isPresent()) {
            return heading;
        }
        Optional<ZoneSaid> unsure = Optional.empty();
        for (int i = 0; i < layout.before().size(); i++) {
            String line = layout.before().get(i);
            Optional<ZoneSaid> said = called(line, i + 1L);
            if (said.isPresent()) {
                return said;
            }
            unsure = unsure.isPresent() ? unsure : anywhere(line, i + 1L, false);
        }
        return unsure;
    }

    private static Optional<ZoneSaid> called(String line, long number) {
        Matcher matcher = CALLED.matcher(line);
        return matcher.find()
                ? zone(matcher.group(1)).map(zone -> new ZoneSaid(zone, number, line.strip(), true))
                : Optional.empty();
    }

    private static Optional<ZoneSaid> anywhere(String text, long line, boolean sure) {
        Matcher matcher = ANYWHERE.matcher(text);
        boolean found = matcher.find() && (sure || !matcher.group().matches("UTC|GMT")); // "UTC offset;120" is not UTC
        return found
                ? zone(matcher.group()).map(zone -> new ZoneSaid(zone, line, text.strip(), sure))
                : Optional.empty();
    }

    private static Optional<ZoneId> zone(String said) {
        if (said.contains("/")) {
            try {
                return Optional.of(ZoneId.of(said));
            } catch (DateTimeException unknown) {
                return Optional.empty();
            }
        }
        return Stamp.offset(said.replace(" ", "")).map(ZoneId.class::cast);
    }
}
