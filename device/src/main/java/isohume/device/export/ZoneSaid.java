// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A distance from UTC that stands somewhere above the readings.
 *
 * @param sure whether it is said of the times of the readings: in their heading, or in a line that is called time zone
 */
record ZoneSaid(ZoneOffset offset, long line, String text, boolean sure) {
    private static final Pattern ANYWHERE = Pattern.compile(
            "(?:(?:UTC|GMT)\\s?(?:[+-]\\s?\\d{1,2}(?::?\\d\\d)?)?|\\b(?:CET|CEST|MEZ|MESZ)\\b|[+-]\\d\\d:\\d\\d)");
    private static final Pattern CALLED =
            Pattern.compile("(?i)time ?zone|zeitzone|fuseau|zona horaria|fuso|tijdzone|utc[- ]?offset");

    static Optional<ZoneSaid> in(Layout layout, TimeColumns times) {
        long headings = layout.before().size() + 1L;
        Optional<ZoneSaid> heading =
                in(layout.name(times.clock()), headings, true).or(() -> in(layout.name(times.date()), headings, true));
        if (heading.isPresent()) {
            return heading;
        }
        Optional<ZoneSaid> unsure = Optional.empty();
        for (int i = 0; i < layout.before().size(); i++) {
            String line = layout.before().get(i);
            Optional<ZoneSaid> said = in(line, i + 1L, CALLED.matcher(line).find());
            if (said.isPresent() && said.get().sure) {
                return said;
            }
            unsure = unsure.isPresent() ? unsure : said;
        }
        return unsure;
    }

    private static Optional<ZoneSaid> in(String text, long line, boolean sure) {
        Matcher matcher = ANYWHERE.matcher(text);
        return matcher.find()
                ? Stamp.offset(matcher.group().replace(" ", "")).map(o -> new ZoneSaid(o, line, text.strip(), sure))
                : Optional.empty();
    }
}
