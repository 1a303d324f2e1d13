// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Saturated salts against a printed table and an independent evaluation of the printed polynomials. */
class SaturatedSaltTest {
    private static final String FILE = "salt_fixed_points.csv";

    @TestFactory
    Stream<DynamicTest> polynomials_match_an_independent_evaluation() {
        return Figures.of(FILE, row -> row.is("provenance", "computed") && isInside(row)).stream()
                .map(row -> dynamicTest(
                        name(row), () -> assertEquals(row.number("rh_percent"), found(row), 5.1e-4, row::toString)));
    }

    /** The page prints one decimal; its 75.7 for NaCl at 20 °C is a slip, its neighbours are 75.6 and 75.3. */
    @TestFactory
    Stream<DynamicTest> values_are_those_of_a_printed_table() {
        Predicate<Figures.Row> slip = row -> row.is("salt", "NaCl") && row.is("t_C", "20");
        return Figures.of(FILE, row -> row.is("provenance", "read") && !slip.test(row)).stream()
                .map(row -> dynamicTest(
                        name(row), () -> assertEquals(row.number("rh_percent"), found(row), 0.08, row::toString)));
    }

    /** The coefficients a second time, from the table of what was read, so that every digit counts. */
    @TestFactory
    Stream<DynamicTest> coefficients_are_those_of_the_source() {
        return polynomials(false).map(salt -> dynamicTest(salt, () -> assertCoefficients(salt)));
    }

    /** Salts of whose polynomial every coefficient was read, or the others. */
    static Stream<String> polynomials(boolean remembered) {
        List<Figures.Row> rows = Figures.all("salt_polynomials.csv");
        Set<String> fromMemory = rows.stream()
                .filter(row -> row.is("provenance", "memory"))
                .map(row -> row.text("salt"))
                .collect(Collectors.toSet());
        return rows.stream()
                .map(row -> row.text("salt"))
                .distinct()
                .filter(salt -> fromMemory.contains(salt) == remembered);
    }

    static void assertCoefficients(String salt) {
        List<Double> a = Figures.all("salt_polynomials.csv").stream()
                .filter(row -> row.is("salt", salt))
                .map(row -> row.number("value"))
                .toList();
        SaturatedSalt ours = byFormula(salt);
        for (double t = ours.coldest().celsius(); t <= ours.warmest().celsius(); t += 2.5) {
            double expected = a.get(0) + a.get(1) * t + a.get(2) * t * t + a.get(3) * t * t * t;
            assertEquals(expected, ours.relativeHumidity(Air.celsius(t)).percent(), 1e-11, salt);
        }
    }

    @Test
    void what_is_from_memory_says_so() {
        assertEquals(Basis.READ, SaturatedSalt.SODIUM_CHLORIDE.basis());
        assertEquals(Basis.MEMORY, SaturatedSalt.POTASSIUM_ACETATE.basis());
        assertEquals(Basis.MEMORY, SaturatedSalt.MAGNESIUM_NITRATE.basis());
        assertEquals(Basis.MEMORY, SaturatedSalt.SODIUM_BROMIDE.basis());
        assertEquals(Basis.MEMORY, SaturatedSalt.AMMONIUM_SULFATE.basis());
    }

    @Test
    void beyond_its_temperatures_a_salt_has_no_value() {
        for (SaturatedSalt salt : SaturatedSalt.values()) {
            double below = salt.coldest().celsius() - 0.1;
            double above = salt.warmest().celsius() + 0.1;
            assertThrows(OutsideRange.class, () -> salt.relativeHumidity(Air.celsius(below)), salt.title());
            assertThrows(OutsideRange.class, () -> salt.uncertaintyPercent(Air.celsius(above)), salt.title());
            assertTrue(salt.uncertaintyPercent(salt.warmest()) > 0.1, salt.title());
            assertTrue(salt.relativeHumidity(salt.coldest()).percent() > 5, salt.title());
        }
    }

    static double found(Figures.Row row) {
        return salt(row).relativeHumidity(Air.celsius(row.number("t_C"))).percent();
    }

    static SaturatedSalt salt(Figures.Row row) {
        return byFormula(row.text("salt"));
    }

    private static SaturatedSalt byFormula(String formula) {
        return Arrays.stream(SaturatedSalt.values())
                .filter(salt -> plain(salt.formula()).equals(formula))
                .findFirst()
                .orElseThrow();
    }

    static boolean isInside(Figures.Row row) {
        double t = row.number("t_C");
        return t >= salt(row).coldest().celsius() - 1e-9
                && t <= salt(row).warmest().celsius() + 1e-9;
    }

    private static String plain(String formula) {
        return formula.replace('₂', '2').replace('₃', '3').replace('₄', '4');
    }

    private static String name(Figures.Row row) {
        return row.text("salt") + " " + row.text("t_C") + " °C, " + row.text("source");
    }
}
