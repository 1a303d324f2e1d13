// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.Unit;
import isohume.quantity.Quantity;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the words above a column say: which quantity, in which unit. The words are those of the trade in the languages
 * that exports come in (common practice, no source); a heading that is none of them says nothing.
 */
record Heading(String text, Optional<Quantity> quantity, Optional<Unit> unit, boolean mirror) {
    private static final Map<Pattern, Quantity> WORDS = new LinkedHashMap<>();
    private static final Map<String, Unit> UNITS = new LinkedHashMap<>();
    private static final Pattern BRACKETS = Pattern.compile("[\\[({]([^\\[\\](){}]*)[])}]");
    private static final Pattern PERCENT_HUMIDITY =
            Pattern.compile("%\\s*(r\\.?\\s?[hf]\\.?|h\\.?r\\.?|u\\.?r\\.?|rel\\.?.*)|r\\.?h\\.?\\s*%|rel\\.? ?%");
    private static final Pattern MIRROR = Pattern.compile("mirror|spiegel|miroir|espejo|specchio");

    /** Humidity of other kinds; and least, greatest or mean values over some time, which no display showed. */
    private static final Pattern OTHER = Pattern.compile("\\b(min|max|avg|mean|mittel\\w*|moyenne|media|std|stddev|minim\\w*"
            + "|maxim\\w*|average|absolute? (?!p|d)\\w*|specific|spez\\w*|mixing|misch\\w*|alarm|limit|battery|batterie|set ?point)\\b");

    static {
        word(
                "dew ?-?_?(point|pt)|frost ?-?_?(point|pt)|taupunkt|frostpunkt|reifpunkt|point de (rosee|givre)"
                        + "|punto de (rocio|escarcha)|punto di (rugiada|brina)|dauwpunt|\\bt?d\\.?p\\.?\\b|\\bt_?d\\b",
                Quantity.DEW_POINT);
        word(
                "humid|\\bhum\\b|feucht|humed|umidit|vocht|umidade|\\br\\.?_?h\\.?(_?\\d+)?\\b|\\br\\.? ?f\\.?\\b|\\bh\\.?r\\.?\\b|\\bu\\.?r\\.?\\b",
                Quantity.RELATIVE_HUMIDITY);
        word("press(ure|ion)|druck|presion|druk|pressao|\\bbaro|\\bp_?(abs|air)\\b", Quantity.PRESSURE);
        word("temp|\\bt\\b|\\bt_?\\d\\b|thermo", Quantity.TEMPERATURE);
        unit(Unit.CELSIUS, "°c", "ºc", "℃", "c", "degc", "deg c", "deg. c", "celsius", "grad c", "° c", "oc");
        unit(Unit.FAHRENHEIT, "°f", "ºf", "℉", "f", "degf", "deg f", "deg. f", "fahrenheit", "° f");
        unit(Unit.KELVIN, "k", "kelvin");
        unit(Unit.PASCAL, "pa");
        unit(Unit.HECTOPASCAL, "hpa", "mbar", "mb");
        unit(Unit.KILOPASCAL, "kpa");
        unit(Unit.PERCENT, "%", "percent", "prozent", "pct");
    }

    private static void word(String pattern, Quantity quantity) {
        WORDS.put(Pattern.compile(pattern), quantity);
    }

    private static void unit(Unit unit, String... ways) {
        for (String way : ways) {
            UNITS.put(way, unit);
        }
    }

    /** The heading, with what the row of units below it, or the cells themselves, say if there is such. */
    static Heading of(String text, String unitElsewhere) {
        String plain = plain(text);
        if (OTHER.matcher(plain.replace('_', ' ')).find()) {
            return new Heading(text.strip(), Optional.empty(), Optional.empty(), false);
        }
        Optional<Unit> unit = unit(unitElsewhere).or(() -> unitIn(plain));
        Optional<Quantity> quantity = quantity(plain, unit).or(() -> unit.flatMap(Heading::onlyQuantity));
        Optional<Unit> fitting = unit.map(u ->
                u == Unit.PERCENT && quantity.equals(Optional.of(Quantity.RELATIVE_HUMIDITY)) ? Unit.PERCENT_RH : u);
        return new Heading(
                text.strip(), quantity, fitting, MIRROR.matcher(plain).find());
    }

    /** Whether quantity and unit are both said and belong together. */
    boolean clear() {
        return quantity.isPresent()
                && unit.isPresent()
                && Unit.of(quantity.get()).contains(unit.get());
    }

    /** The quantities that the unit leaves open, the likeliest first. */
    List<Quantity> possible() {
        List<Quantity> possible = new ArrayList<>();
        for (Quantity one :
                List.of(Quantity.TEMPERATURE, Quantity.RELATIVE_HUMIDITY, Quantity.DEW_POINT, Quantity.PRESSURE)) {
            if ((unit.isEmpty() || fits(unit.get(), one)) && (quantity.isEmpty() || quantity.get() == one)) {
                possible.add(one);
            }
        }
        return possible;
    }

    /** The unit that a text is, and nothing else. */
    static Optional<Unit> unit(String text) {
        String plain = plain(text).replaceAll("^[\\[({]|[])}]$", "").strip();
        if (PERCENT_HUMIDITY.matcher(plain).matches()) {
            return Optional.of(Unit.PERCENT_RH);
        }
        return Optional.ofNullable(UNITS.get(plain));
    }

    private static Optional<Unit> unitIn(String plain) {
        Matcher brackets = BRACKETS.matcher(plain);
        while (brackets.find()) {
            Optional<Unit> unit = unit(brackets.group(1));
            if (unit.isPresent()) {
                return unit;
            }
        }
        Matcher percent = PERCENT_HUMIDITY.matcher(plain);
        if (percent.find()) {
            return Optional.of(Unit.PERCENT_RH);
        }
        for (String part : plain.split("[\\s,;:/_|\\[\\](){}-]+")) {
            boolean bare = part.length() > 1 || part.equals("%") || part.equals("℃");
            if (bare && UNITS.containsKey(part)) {
                return unit(part);
            }
        }
        return plain.matches(".*[\\s,/_-][cfk]") ? unit(plain.substring(plain.length() - 1)) : Optional.empty();
    }

    /** The one quantity whose word is there; of several, the one that fits the unit. A dew point is called a temperature too. */
    private static Optional<Quantity> quantity(String plain, Optional<Unit> unit) {
        List<Quantity> said = new ArrayList<>();
        WORDS.forEach((word, quantity) -> {
            if (word.matcher(plain.replace('_', ' ')).find()) {
                said.add(quantity);
            }
        });
        if (said.contains(Quantity.DEW_POINT)) {
            said.remove(Quantity.TEMPERATURE);
        }
        if (said.size() > 1) {
            said.removeIf(quantity -> unit.filter(u -> fits(u, quantity)).isEmpty());
        }
        return said.size() == 1 ? Optional.of(said.getFirst()) : Optional.empty();
    }

    private static boolean fits(Unit unit, Quantity quantity) {
        return Unit.of(quantity).contains(unit) || (unit == Unit.PERCENT && quantity == Quantity.RELATIVE_HUMIDITY);
    }

    /** What only one quantity is given in. Degrees may be a temperature or a dew point, a percentage anything. */
    private static Optional<Quantity> onlyQuantity(Unit unit) {
        return switch (unit) {
            case PERCENT_RH -> Optional.of(Quantity.RELATIVE_HUMIDITY);
            case PASCAL, HECTOPASCAL, KILOPASCAL -> Optional.of(Quantity.PRESSURE);
            case CELSIUS, KELVIN, FAHRENHEIT, FRACTION, PERCENT, NONE -> Optional.empty();
        };
    }

    private static String plain(String text) {
        String lower =
                text.strip().toLowerCase(Locale.ROOT).replace('\u00A0', ' ').replace('º', '°');
        return Normalizer.normalize(lower, Normalizer.Form.NFD).replaceAll("\\p{Mn}", "");
    }
}
