// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.device.sheet.Sheet;
import isohume.quantity.Quantity;
import isohume.run.entry.DisplayedChannel;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** The section {@code display} of an instrument under test that has nothing else, so that a person reads it. */
final class DisplaySheet {
    private static final int MOST_ENTRIES = 100;
    private static final double LONGEST_UPDATE = 3600; // s
    private static final BigDecimal PERCENT = new BigDecimal(100);

    private DisplaySheet() {}

    /** Its channels; none where the instrument has no such section. */
    static List<DisplayedChannel> read(Sheet item) {
        Optional<Sheet> section = item.optional("display");
        if (section.isEmpty()) {
            return List.of();
        }
        if (item.has("device")) {
            throw item.wrong(
                    "display",
                    "the program reads this instrument by its device already",
                    "take out device if a person is to read it, else display");
        }
        Sheet sheet = section.get();
        Duration update = update(sheet);
        int entries =
                sheet.wholeOr("entries", DisplayedChannel.FEWEST_ENTRIES, MOST_ENTRIES, DisplayedChannel.USUAL_ENTRIES);
        sheet.refuseOthers();
        Sheet channels = item.section("channels");
        return channels.keys().stream()
                .map(key -> channel(item.text("id") + "/" + key, channels.section(key), update, entries))
                .toList();
    }

    private static Duration update(Sheet sheet) {
        double seconds = sheet.numberOr(
                        "update-seconds", "s", BigDecimal.valueOf(DisplayedChannel.USUAL_UPDATE.toMillis(), 3))
                .doubleValue();
        if (!(seconds >= 0 && seconds <= LONGEST_UPDATE)) {
            throw sheet.wrong(
                    "update-seconds", "no display is renewed every " + seconds + " s", "give 0 to 3600 s, usually 2");
        }
        return Duration.ofMillis(Math.round(seconds * 1000));
    }

    private static DisplayedChannel channel(String id, Sheet sheet, Duration update, int entries) {
        String unit = Quantity.ofKey(id.substring(id.indexOf('/') + 1)).differenceUnit();
        return new DisplayedChannel(
                id,
                sheet.number("resolution", unit),
                update,
                entries,
                sheet.number("tolerance", unit).doubleValue(),
                sheet.numberOr("tolerance-percent-of-reading", "%", BigDecimal.ZERO)
                        .divide(PERCENT)
                        .doubleValue());
    }
}
