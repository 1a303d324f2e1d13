// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.device.sheet.Sheet;
import isohume.quantity.Quantity;
import isohume.result.Item;
import isohume.result.Specification;
import isohume.run.reach.Range;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** An instrument under test as a person writes it. */
final class ItemSheet {
    private static final List<String> QUANTITIES =
            List.of(Quantity.RELATIVE_HUMIDITY.key(), Quantity.TEMPERATURE.key());

    private ItemSheet() {}

    /** Leaves {@code device}, {@code display} and unknown keys to the caller. */
    static Item read(Sheet sheet) {
        String id = sheet.text("id");
        if (!id.matches("[A-Za-z0-9._-]{1,40}")) {
            throw sheet.wrong(
                    "id", "\"" + id + "\" cannot name a file", "use letters, digits, dot, dash or underscore");
        }
        return new Item(
                id,
                sheet.text("kind"),
                sheet.text("maker"),
                sheet.text("model"),
                sheet.text("serial"),
                sheet.text("position"),
                sheet.date("received"),
                sheet.text("condition"),
                channels(sheet.section("channels")));
    }

    /** From where to where the item measures, where its sheet says so. */
    static List<Range> ranges(Sheet sheet) {
        List<Range> ranges = new ArrayList<>();
        Sheet channels = sheet.section("channels");
        for (String key : channels.keys()) {
            Sheet channel = channels.section(key);
            if (channel.has("range")) {
                Quantity quantity = Quantity.ofKey(key);
                List<BigDecimal> ends = CapacitySheet.range(channel, "range", quantity.unit());
                ranges.add(new Range(
                        sheet.text("id"),
                        quantity,
                        ends.get(0).doubleValue(),
                        ends.get(1).doubleValue()));
            }
        }
        return ranges;
    }

    private static List<Specification> channels(Sheet sheet) {
        List<Specification> channels = new ArrayList<>();
        if (sheet.keys().isEmpty()) {
            throw sheet.wrongHere("there is no channel in it", "name at least one of " + String.join(", ", QUANTITIES));
        }
        for (String key : sheet.keys()) {
            if (!QUANTITIES.contains(key)) {
                throw sheet.wrongKey(key, "a channel is one of " + String.join(", ", QUANTITIES));
            }
            channels.add(channel(Quantity.ofKey(key), sheet.section(key)));
        }
        return channels;
    }

    private static Specification channel(Quantity quantity, Sheet sheet) {
        String unit = quantity.differenceUnit();
        double resolution = sheet.number("resolution", unit).doubleValue();
        double tolerance = sheet.number("tolerance", unit).doubleValue();
        double share = sheet.numberOr("tolerance-percent-of-reading", "%", BigDecimal.ZERO)
                        .doubleValue()
                / 100;
        if (!(resolution > 0)) {
            throw sheet.wrong(
                    "resolution", "no display has a last digit of " + resolution, "it must be above 0 " + unit);
        }
        if (!(tolerance >= 0 && share >= 0)) {
            throw sheet.wrong(
                    "tolerance", "a tolerance cannot be negative", "give the half-width, as in ± 1.5 " + unit);
        }
        Specification channel = new Specification(quantity, resolution, tolerance, share, sheet.text("tolerance-from"));
        boolean ignored = sheet.has("range"); // read in ranges()
        sheet.refuseOthers();
        return channel;
    }
}
