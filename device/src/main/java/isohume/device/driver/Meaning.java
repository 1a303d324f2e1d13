// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import isohume.device.Unit;
import isohume.device.sheet.Sheet;
import isohume.quantity.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a number that came over a line means. Pure. */
public interface Meaning {
    /** The value of a number. */
    sealed interface Sense {
        /** A value in the quantity's unit, unrounded, and what casts doubt on it. */
        record Value(BigDecimal value, List<String> doubts) implements Sense {}

        /** The number means no value; {@code why} says in plain words why not. */
        record None(String why) implements Sense {}
    }

    /** What this number means. */
    Sense of(BigDecimal number);

    /** (number × scale + offset) in {@code unit}. */
    record Scaled(BigDecimal scale, BigDecimal offset, Unit unit) implements Meaning {
        @Override
        public Sense of(BigDecimal number) {
            return new Sense.Value(unit.toQuantity(number.multiply(scale).add(offset)), List.of());
        }
    }

    /** The keys {@code scale}, {@code offset} and {@code unit} of a channel. */
    static Meaning scaled(Sheet one, Quantity quantity) {
        return new Scaled(Common.scale(one), one.numberOr("offset", "", BigDecimal.ZERO), Common.unit(one, quantity));
    }

    /**
     * A number as instruments write them, with a decimal point; empty if it is none, or one beyond 10⁹⁹.
     *
     * @param text without blanks around it
     */
    static Optional<BigDecimal> number(String text) {
        return Notation.NUMBER.matcher(text).matches() ? Optional.of(new BigDecimal(text)) : Optional.empty();
    }

    /** How numbers are written. */
    final class Notation {
        private static final Pattern NUMBER =
                Pattern.compile("[+-]?([0-9]{1,32}(\\.[0-9]{0,32})?|\\.[0-9]{1,32})([eE][+-]?[0-9]{1,2})?");

        private Notation() {}
    }
}
