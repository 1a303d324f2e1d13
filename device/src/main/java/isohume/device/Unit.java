// SPDX-License-Identifier: Apache-2.0
package isohume.device;

import isohume.quantity.Quantity;
import isohume.quantity.Temperature;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;

/**
 * A unit that instruments and files give values in, and its exact conversion to the one unit of the quantity
 * ({@link Quantity#unit}): value in the quantity's unit = (value + shift) × factor. The factors are the definitions of
 * the units (kelvin and degree Celsius: SI brochure, 9th edition, 2.3.1; degree Fahrenheit: NIST SP 811, B.8).
 */
public enum Unit {
    CELSIUS("°C", 0, 1, 1),
    KELVIN("K", -Temperature.ofCelsius(0).kelvin(), 1, 1),
    FAHRENHEIT("°F", -32, 5, 9),
    PERCENT_RH("% RH", 0, 1, 1),
    /** Relative humidity as a fraction of saturation, 0 to 1. */
    FRACTION("1", 0, 100, 1),
    PASCAL("Pa", 0, 1, 1),
    HECTOPASCAL("hPa", 0, 100, 1),
    KILOPASCAL("kPa", 0, 1000, 1),
    PERCENT("%", 0, 1, 1),
    /** For a state, which has no unit. */
    NONE("", 0, 1, 1);

    private final String symbol;
    private final BigDecimal shift;
    private final BigDecimal times;
    private final BigDecimal over;

    Unit(String symbol, double shift, int times, int over) {
        this.symbol = symbol;
        this.shift = BigDecimal.valueOf(shift).stripTrailingZeros(); // adds no digits
        this.times = BigDecimal.valueOf(times);
        this.over = BigDecimal.valueOf(over);
    }

    /** As written in files: {@code °C}; empty for a state. */
    public String symbol() {
        return symbol;
    }

    /** The unit with this symbol, if values of the quantity may be given in it; {@code %RH} is read as {@code % RH}. */
    public static Optional<Unit> of(String symbol, Quantity quantity) {
        String spaced = symbol.equals("%RH") ? PERCENT_RH.symbol : symbol;
        return of(quantity).stream().filter(unit -> unit.symbol.equals(spaced)).findFirst();
    }

    /** The units that values of the quantity may be given in, the quantity's own first. */
    public static List<Unit> of(Quantity quantity) {
        return switch (quantity) {
            case TEMPERATURE, DEW_POINT -> List.of(CELSIUS, KELVIN, FAHRENHEIT);
            case RELATIVE_HUMIDITY -> List.of(PERCENT_RH, FRACTION);
            case PRESSURE -> List.of(PASCAL, HECTOPASCAL, KILOPASCAL);
            case WATER_LEVEL -> List.of(PERCENT);
            case DEPOSIT -> List.of(NONE);
        };
    }

    /** A value in this unit, in the quantity's unit; exact, or to 34 digits from °F. */
    public BigDecimal toQuantity(BigDecimal value) {
        return value.add(shift).multiply(times).divide(over, MathContext.DECIMAL128);
    }

    /** A value in the quantity's unit, in this unit; to 34 digits. */
    public BigDecimal fromQuantity(BigDecimal value) {
        return value.multiply(over).divide(times, MathContext.DECIMAL128).subtract(shift);
    }

    /**
     * Whether anything can have this value, in the quantity's unit: no temperature is at or below absolute zero, and no
     * pressure below vacuum. A humidity a little below zero is an instrument's error, not an impossibility.
     */
    public static boolean possible(Quantity quantity, BigDecimal value) {
        return switch (quantity) {
            case TEMPERATURE, DEW_POINT -> KELVIN.fromQuantity(value).signum() > 0;
            case PRESSURE -> value.signum() >= 0;
            case RELATIVE_HUMIDITY, DEPOSIT, WATER_LEVEL -> true;
        };
    }
}
