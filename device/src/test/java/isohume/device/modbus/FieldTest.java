// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import isohume.device.Unit;
import java.math.BigDecimal;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Numbers in registers, by hand: two's complement; IEEE 754-2019 binary32 (0x3E200000 = 0.15625 and 0x41A40000 = 20.5
 * are sums of powers of two, 0x40490FDB is the float next to pi); units by their definitions.
 */
class FieldTest {
    @ParameterizedTest
    @CsvSource({
        "INT16,   7FFF,      32767",
        "INT16,   8000,      -32768",
        "INT16,   FFFF,      -1",
        "UINT16,  FFFF,      65535",
        "INT32,   FFFF FFFE, -2",
        "INT32,   8000 0000, -2147483648",
        "INT32,   0001 0002, 65538",
        "UINT32,  FFFF FFFF, 4294967295",
        "FLOAT32, 3E20 0000, 0.15625",
        "FLOAT32, 41A4 0000, 20.5",
        "FLOAT32, 8000 0000, 0",
        "FLOAT32, 40490FDB,  3.1415927410125732421875",
    })
    void registers_hold_a_number_and_a_number_its_registers(NumberType type, String hex, BigDecimal number) {
        List<Integer> big = words(hex);
        List<Integer> little = big.reversed();
        assertEquals(0, type.number(big, WordOrder.BIG).orElseThrow().compareTo(number));
        assertEquals(0, type.number(little, WordOrder.LITTLE).orElseThrow().compareTo(number));
        if (number.signum() != 0) { // a float has two zeros
            assertEquals(Optional.of(big), type.registers(number, WordOrder.BIG));
            assertEquals(Optional.of(little), type.registers(number, WordOrder.LITTLE));
        }
    }

    @ParameterizedTest
    @CsvSource({"7FC0 0000", "FFFF FFFF", "7F80 0000", "FF80 0000"})
    void a_float_that_is_no_number_is_none(String hex) {
        assertEquals(Optional.empty(), NumberType.FLOAT32.number(words(hex), WordOrder.BIG));
    }

    @ParameterizedTest
    @CsvSource({
        "INT16, 32768",
        "INT16, -32769",
        "UINT16, -1",
        "UINT16, 65536",
        "UINT32, 4294967296",
        "INT32, -2147483649"
    })
    void a_number_beyond_the_register_has_no_registers(NumberType type, BigDecimal number) {
        assertEquals(Optional.empty(), type.registers(number, WordOrder.BIG));
    }

    @ParameterizedTest
    @CsvSource({
        "CELSIUS,     20,     20",
        "KELVIN,      273.15, 0",
        "KELVIN,      0.01,   -273.14",
        "FAHRENHEIT,  212,    100",
        "FAHRENHEIT,  -40,    -40",
        "FRACTION,    0.5,    50",
        "HECTOPASCAL, 1013.25, 101325",
        "KILOPASCAL,  101.325, 101325",
        "PERCENT,     80,     80",
    })
    void a_unit_is_converted_both_ways(Unit unit, BigDecimal value, BigDecimal converted) {
        assertEquals(0, unit.toQuantity(value).compareTo(converted));
        assertEquals(0, unit.fromQuantity(converted).compareTo(value));
    }

    @Test
    void scale_and_offset_come_before_the_unit() {
        Field field = new Field(
                Table.INPUT,
                0,
                NumberType.UINT16,
                WordOrder.BIG,
                new BigDecimal("0.1"),
                new BigDecimal("200"),
                Unit.KELVIN);
        assertEquals(0, field.value(List.of(932)).orElseThrow().compareTo(new BigDecimal("20.05"))); // 293.2 K
        assertEquals(Optional.of(List.of(932)), field.registers(new BigDecimal("20.05")));
    }

    private static List<Integer> words(String hex) {
        String plain = hex.replace(" ", "");
        return Stream.iterate(0, i -> i < plain.length(), i -> i + 4)
                .map(i -> HexFormat.fromHexDigits(plain.substring(i, i + 4)))
                .toList();
    }
}
