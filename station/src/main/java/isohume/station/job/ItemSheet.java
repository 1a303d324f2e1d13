// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.device.sheet.Sheet;
import isohume.quantity.Quantity;
import isohume.result.Item;
import isohume.result.Specification;
import isohume.result.Specification.BelowZero;
import isohume.run.reach.Range;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** An instrument under test as a person writes it. */
final class ItemSheet {
    private static final List<String> QUANTITIES =
            List.of(Quantity.RELATIVE_HUMIDITY.key(), Quantity.TEMPERATURE.key(), Quantity.DEW_POINT.key());

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
            if (channel.has("range") && QUANTITIES.contains(key)) {
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
        refuseOrphans(sheet, channels);
        return channels;
    }

    private static Specification channel(Quantity quantity, Sheet sheet) {
        String unit = quantity.differenceUnit();
        boolean derived = sheet.has("derived-from");
        double resolution = derived ? 0 : resolution(sheet, unit);
        double tolerance = sheet.number("tolerance", unit).doubleValue();
        double share = sheet.numberOr("tolerance-percent-of-reading", "%", BigDecimal.ZERO)
                        .doubleValue()
                / 100;
        if (!(tolerance >= 0 && share >= 0)) {
            throw sheet.wrong(
                    "tolerance", "a tolerance cannot be negative", "give the half-width, as in ± 1.5 " + unit);
        }
        Optional<BelowZero> belowZero = quantity == Quantity.DEW_POINT
                ? Optional.of(sheet.oneOf("below-zero", BelowZero.class))
                : Optional.empty();
        Specification channel = new Specification(
                quantity, resolution, tolerance, share, sheet.text("tolerance-from"), belowZero, derived);
        if (derived) {
            checkParents(sheet, channel);
        }
        boolean ignored = !derived && sheet.has("range"); // read in ranges()
        sheet.refuseOthers();
        return channel;
    }

    private static double resolution(Sheet sheet, String unit) {
        double resolution = sheet.number("resolution", unit).doubleValue();
        if (!(resolution > 0)) {
            throw sheet.wrong(
                    "resolution", "no display has a last digit of " + resolution, "it must be above 0 " + unit);
        }
        return resolution;
    }

    private static void checkParents(Sheet sheet, Specification channel) {
        Set<String> possible = Set.of(channel.parent().key(), Quantity.TEMPERATURE.key());
        List<String> named = sheet.texts("derived-from");
        boolean derivable = channel.quantity() != Quantity.TEMPERATURE;
        if (!derivable || named.size() != 2 || !Set.copyOf(named).equals(possible)) {
            throw sheet.wrong(
                    "derived-from",
                    channel.quantity().key() + " does not follow from " + String.join(" and ", named),
                    derivable
                            ? "write it as [" + channel.parent().key() + ", " + Quantity.TEMPERATURE.key() + "]"
                            : "a dew_point or a relative_humidity can be derived");
        }
    }

    /** The channels that others are derived from have to be there, and to be read. */
    private static void refuseOrphans(Sheet sheet, List<Specification> channels) {
        List<Quantity> read = channels.stream()
                .filter(c -> !c.derived())
                .map(Specification::quantity)
                .toList();
        for (Specification channel : channels) {
            if (channel.derived() && !read.containsAll(List.of(channel.parent(), Quantity.TEMPERATURE))) {
                throw sheet.wrongHere(
                        channel.quantity().key() + " is derived from channels that are not all read",
                        "name " + channel.parent().key() + " and " + Quantity.TEMPERATURE.key()
                                + " beside it, each with its resolution");
            }
        }
    }
}
