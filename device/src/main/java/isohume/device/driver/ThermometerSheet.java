// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import isohume.device.sheet.Sheet;
import isohume.quantity.Quantity;
import isohume.quantity.resistance.CallendarVanDusen;
import isohume.quantity.resistance.Its90;
import isohume.quantity.resistance.ResistanceThermometer;
import java.math.BigDecimal;
import java.util.List;

/** The part of a channel that says which resistance thermometer it has. */
final class ThermometerSheet {
    private static final List<String> KINDS = List.of("iec60751", "callendar-van-dusen", "its90");

    private ThermometerSheet() {}

    /** The thermometer under {@code thermometer}. */
    static ResistanceThermometer read(Sheet one, Quantity quantity) {
        if (quantity != Quantity.TEMPERATURE) {
            throw one.wrongKey("thermometer", "the channel's quantity has to be temperature for it");
        }
        Sheet sheet = one.section("thermometer");
        List<String> there = KINDS.stream().filter(sheet::has).toList();
        if (there.size() != 1) {
            throw sheet.wrongHere(
                    "there are " + there.size() + " kinds", "one of " + String.join(", ", KINDS) + " is needed here");
        }
        Sheet kind = sheet.section(there.getFirst());
        sheet.refuseOthers();
        try {
            ResistanceThermometer thermometer = switch (there.getFirst()) {
                case "iec60751" -> CallendarVanDusen.iec60751(number(kind, "r0", "Ω"));
                case "its90" -> new Its90(number(kind, "r-tpw", "Ω"), numbers(kind, "above"), numbers(kind, "below"));
                default ->
                    new CallendarVanDusen(
                            number(kind, "r0", "Ω"),
                            number(kind, "a", ""),
                            number(kind, "b", ""),
                            number(kind, "c", ""));
            };
            kind.refuseOthers();
            return thermometer;
        } catch (IllegalArgumentException e) {
            throw kind.wrongHere("it is no thermometer", String.valueOf(e.getMessage()));
        }
    }

    private static double number(Sheet sheet, String key, String unit) {
        return sheet.number(key, unit).doubleValue();
    }

    private static List<Double> numbers(Sheet sheet, String key) {
        return sheet.has(key)
                ? sheet.numbers(key, "").stream().map(BigDecimal::doubleValue).toList()
                : List.of();
    }
}
