// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import isohume.device.Unit;
import isohume.device.sheet.Sheet;
import isohume.quantity.Quantity;
import isohume.quantity.resistance.ResistanceThermometer;
import java.math.BigDecimal;
import java.math.MathContext;
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

    /**
     * An analogue signal on a straight line between two points.
     *
     * @param factor what makes the signal's unit of a number on the line
     * @param from the signal at the two ends, in its unit
     * @param to the values there, in {@code unit}
     * @param valid a signal beyond it is doubtful
     */
    record Linear(String signal, BigDecimal factor, Limits from, List<BigDecimal> to, Unit unit, Optional<Limits> valid)
            implements Meaning {
        @Override
        public Sense of(BigDecimal number) {
            BigDecimal at = number.multiply(factor);
            BigDecimal share = at.subtract(from.low()).divide(from.high().subtract(from.low()), MathContext.DECIMAL128);
            BigDecimal value = to.getFirst().add(share.multiply(to.getLast().subtract(to.getFirst())));
            List<String> doubts = valid.filter(limits -> !limits.hold(at))
                    .map(limits ->
                            List.of("the signal is " + at.stripTrailingZeros().toPlainString() + " " + signal
                                    + ", outside " + limits.in(signal)))
                    .orElse(List.of());
            return new Sense.Value(unit.toQuantity(value), doubts);
        }
    }

    /** A platinum thermometer's resistance in ohms. */
    record Resistance(ResistanceThermometer thermometer) implements Meaning {
        @Override
        public Sense of(BigDecimal number) {
            try {
                double celsius = thermometer.at(number.doubleValue()).celsius();
                return new Sense.Value(BigDecimal.valueOf(celsius), List.of());
            } catch (IllegalArgumentException e) {
                return new Sense.None(number.toPlainString() + " Ω means no temperature: " + e.getMessage());
            }
        }
    }

    /** What a channel says under {@code linear}, {@code thermometer} or {@code scale}, {@code offset} and {@code unit}. */
    static Meaning read(Sheet one, Quantity quantity) {
        if (one.has("thermometer")) {
            return new Resistance(ThermometerSheet.read(one, quantity));
        }
        return one.has("linear") ? linear(one.section("linear"), Common.unit(one, quantity)) : scaled(one, quantity);
    }

    private static Meaning linear(Sheet sheet, Unit unit) {
        String signal = sheet.oneOf("signal", List.of("mA", "A", "mV", "V"));
        BigDecimal factor = signal.startsWith("m") ? BigDecimal.valueOf(1000) : BigDecimal.ONE;
        Limits from = Common.limits(sheet, "from", signal);
        List<BigDecimal> to = sheet.numbers("to", unit.symbol());
        if (to.size() != 2 || to.getFirst().compareTo(to.getLast()) == 0) {
            throw sheet.wrong("to", "to is " + to, "two different numbers are needed here");
        }
        Optional<Limits> valid =
                sheet.has("valid") ? Optional.of(Common.limits(sheet, "valid", signal)) : Optional.empty();
        sheet.refuseOthers();
        return new Linear(signal, factor, from, to, unit, valid);
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
