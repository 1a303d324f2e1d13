// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.quantity.Phase;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The whole way from relative humidity to the other measures beside three general-purpose libraries. */
class OtherLibrariesTest {
    private static final String FILE = "reference_grid.csv";
    private final MoistAir iapws = MoistAir.by(Formulation.IAPWS);
    private final MoistAir ashrae = MoistAir.by(Formulation.HYLAND_WEXLER_1983);

    @TestFactory
    Stream<DynamicTest> saturation_after_hyland_and_wexler_is_that_of_psychrolib() {
        return rows(row -> row.text("library").startsWith("psychrolib"), row -> {
            double e = ashrae.saturation(Air.celsius(row.number("t_C")), Air.phase(row.text("rh_basis")))
                    .pascals();
            assertEquals(row.number("e_s_Pa"), e, 1e-9 * e, row::toString);
        });
    }

    /** An ideal mixture needs only the vapour pressure, so PsychroLib's ratios follow from it exactly. */
    @TestFactory
    Stream<DynamicTest> ratios_of_the_ideal_mixture_are_those_of_psychrolib() {
        return rows(row -> row.text("library").startsWith("psychrolib"), row -> {
            HumidAir air = ashrae.at(Air.celsius(row.number("t_C")), Air.pascals(row.number("p_Pa")))
                    .withVapourPressure(Air.pascals(row.number("p_w_Pa")));
            assertEquals(row.number("W_kg_kg"), air.mixingRatio(), 2e-9 * air.mixingRatio(), row::toString);
            assertEquals(row.number("x_w_mol_mol"), air.volumeFraction(), 2e-9 * air.volumeFraction(), row::toString);
            double h = row.number("h_J_kg_da");
            assertEquals(h, air.enthalpy(), 6e-4, row::toString);
            double absolute = air.absoluteHumidity() * 1e3;
            assertEquals(row.number("abs_humidity_g_m3"), absolute, 3e-6 * absolute, row::toString); // their constants
        });
    }

    /** Greenspan's factors beside those of two real-gas models, by what is stated for the former. */
    @TestFactory
    Stream<DynamicTest> enhancement_is_near_the_real_gas_models() {
        return rows(row -> !row.text("library").startsWith("psychrolib"), row -> {
            Phase phase = Air.phase(row.text("rh_basis"));
            double f = iapws.enhancement(Air.celsius(row.number("t_C")), Air.pascals(row.number("p_Pa")), phase);
            double stated = iapws.enhancementUncertainty(
                            Air.celsius(row.number("t_C")), Air.pascals(row.number("p_Pa")), phase)
                    .relative();
            assertEquals(row.number("f"), f, stated * f, row::toString);
        });
    }

    /** Real-gas models: their enhancement factor is up to 0.035 % higher, their molar masses differ by 30 ppm. */
    @TestFactory
    Stream<DynamicTest> mixing_ratio_and_dew_point_are_near_the_real_gas_models() {
        return rows(row -> !row.text("library").startsWith("psychrolib") && row.is("rh_basis", "water"), row -> {
            HumidAir air = iapws.at(Air.celsius(row.number("t_C")), Air.pascals(row.number("p_Pa")))
                    .withRelativeHumidity(Air.percent(row.number("rh_percent")));
            assertEquals(row.number("W_kg_kg"), air.mixingRatio(), 9e-4 * air.mixingRatio(), row::toString);
            if (!row.text("condensate").isEmpty()) {
                double point = row.is("condensate", "ice")
                        ? air.frostPoint().celsius()
                        : air.dewPoint().celsius();
                assertEquals(row.number("t_dew_or_frost_C"), point, 0.006, row::toString);
            }
        });
    }

    @TestFactory
    Stream<DynamicTest> density_is_near_the_real_gas_models_where_cipm_2007_holds() {
        return rows(
                row -> !row.text("library").startsWith("psychrolib")
                        && row.text("t_C").matches("20|23"),
                row -> {
                    double rho = ashrae.at(Air.celsius(row.number("t_C")), Air.pascals(row.number("p_Pa")))
                            .withVolumeFraction(row.number("x_w_mol_mol"))
                            .density();
                    assertEquals(row.number("rho_kg_m3"), rho, 45e-6 * rho, row::toString);
                });
    }

    /** Below 0 °C the libraries speak of ice; so do we when asked. */
    @TestFactory
    Stream<DynamicTest> humidity_over_ice_at_minus_ten_is_near_the_real_gas_models() {
        return rows(row -> !row.text("library").startsWith("psychrolib") && row.is("rh_basis", "ice"), row -> {
            HumidAir air = iapws.at(Air.celsius(row.number("t_C")), Air.pascals(row.number("p_Pa")))
                    .withRelativeHumidityOverIce(Air.percent(row.number("rh_percent")));
            assertEquals(row.number("W_kg_kg"), air.mixingRatio(), 6e-4 * air.mixingRatio(), row::toString);
            assertEquals(Phase.ICE, air.frostPoint().deposit());
        });
    }

    private static Stream<DynamicTest> rows(
            Predicate<Figures.Row> wanted, java.util.function.Consumer<Figures.Row> check) {
        return Figures.of(FILE, wanted).stream()
                .map(row -> dynamicTest(
                        row.text("library") + " " + row.text("t_C") + " °C " + row.text("rh_percent") + " % "
                                + row.text("p_Pa") + " Pa",
                        () -> check.accept(row)));
    }
}
