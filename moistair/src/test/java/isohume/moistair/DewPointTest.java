// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Between dew or frost point and relative humidity, with and without air, against an independent evaluation.
 *
 * <p>The tolerance is 1.5e-9: of Hardy's A0 for supercooled water two readings are about, -5.5898101e-2 and
 * -5.5898100e-2. The first is what Greenspan's set expands to and what stands here; the rows used the second.
 */
class DewPointTest {
    private static final double TOLERANCE = 1.5e-9;
    private static final String FILE = "humidity_conversion_checks.csv";
    private final MoistAir hardy = MoistAir.by(Formulation.HARDY_1998);
    private final MoistAir sonntag = MoistAir.by(Formulation.SONNTAG_1990);

    @TestFactory
    Stream<DynamicTest> humidity_from_dew_or_frost_point_with_both_enhancement_factors() {
        return Figures.of(FILE, row -> row.text("case").startsWith("dew-rh-f-")).stream()
                .map(row -> dynamicTest(row.text("input"), () -> {
                    Pressure p = Air.pascals(row.given("p"));
                    double found = hardy.relativeHumidity(point(row), p, Air.celsius(row.given("t")), p)
                            .percent();
                    assertEquals(row.number("value"), found, TOLERANCE * row.number("value"), row::toString);
                }));
    }

    @TestFactory
    Stream<DynamicTest> vapour_pressure_from_dew_or_frost_point_and_back() {
        return Figures.of(FILE, row -> row.text("case").startsWith("dew-pw-f-")).stream()
                .map(row -> dynamicTest(row.text("input"), () -> {
                    Pressure p = Air.pascals(row.given("p"));
                    double value = row.number("value");
                    assertEquals(
                            value, hardy.vapourPressure(point(row), p).pascals(), TOLERANCE * value, row::toString);
                    DewPoint found =
                            hardy.dewPoint(Air.pascals(value), p, point(row).deposit());
                    assertEquals(point(row).celsius(), found.celsius(), 1e-7, row::toString);
                }));
    }

    @TestFactory
    Stream<DynamicTest> the_ratio_of_pure_saturation_pressures_is_the_humidity_without_air() {
        return Figures.of(FILE, row -> row.is("formulation", "sonntag-1990") && row.is("unit", "%")).stream()
                .map(row -> dynamicTest(row.text("case"), () -> {
                    Phase over = row.is("quantity", "rh (over ice)") ? Phase.ICE : Phase.WATER;
                    double found = 100
                            * sonntag.saturation(
                                            point(row).temperature(), point(row).deposit())
                                    .pascals()
                            / sonntag.saturation(Air.celsius(row.given("t")), over)
                                    .pascals();
                    assertEquals(row.number("value"), found, TOLERANCE * row.number("value"), row::toString);
                }));
    }

    @TestFactory
    Stream<DynamicTest> the_printed_dew_or_frost_point_has_the_vapour_pressure_of_the_humid_air() {
        return Figures.of(
                        FILE,
                        row -> row.is("formulation", "sonntag-1990")
                                && row.text("case").startsWith("rh-"))
                .stream()
                .map(row -> dynamicTest(row.text("case"), () -> {
                    DewPoint printed =
                            row.is("quantity", "t_f") ? Air.frost(row.number("value")) : Air.dew(row.number("value"));
                    double air = sonntag.saturation(Air.celsius(row.given("t")), Phase.WATER)
                            .pascals();
                    double point = sonntag.saturation(printed.temperature(), printed.deposit())
                            .pascals();
                    double slope = sonntag.saturationSlope(printed.temperature(), printed.deposit());
                    double difference = Math.log(row.given("rh") / 100 * air / point) / slope;
                    assertEquals(0, difference, 1e-7, row::toString);
                }));
    }

    @TestFactory
    Stream<DynamicTest> frost_point_of_supercooled_dew_without_air() {
        return Figures.of(
                        FILE,
                        row -> row.is("formulation", "sonntag-1990")
                                && row.text("case").startsWith("dew-frost"))
                .stream()
                .map(row -> dynamicTest(row.text("case"), () -> {
                    double dew = sonntag.saturation(Air.celsius(row.given("t_d")), Phase.WATER)
                            .pascals();
                    double frost = sonntag.saturation(Air.celsius(row.number("value")), Phase.ICE)
                            .pascals();
                    double slope = sonntag.saturationSlope(Air.celsius(row.number("value")), Phase.ICE);
                    assertEquals(0, Math.log(dew / frost) / slope, 1e-7, row::toString);
                }));
    }

    /** By Dalton's law: halving the total pressure halves the vapour pressure; only the factors' ratio remains. */
    @Test
    void pressure_lost_on_the_way_to_the_mirror_is_given_back() {
        DewPoint point = Air.dew(10);
        Pressure chamber = Air.pascals(101_325);
        Pressure mirror = Air.pascals(81_060);
        double corrected = sonntag.relativeHumidity(point, mirror, Air.celsius(23), chamber)
                .fraction();
        double atMirror =
                sonntag.relativeHumidity(point, mirror, Air.celsius(23), mirror).fraction();
        double factors = sonntag.enhancement(Air.celsius(23), chamber, Phase.WATER)
                / sonntag.enhancement(Air.celsius(23), mirror, Phase.WATER);
        assertEquals(1.25, corrected / atMirror * factors, 1e-12);
    }

    private static DewPoint point(Figures.Row row) {
        return row.gives("t_f") ? Air.frost(row.given("t_f")) : Air.dew(row.given("t_d"));
    }
}
