// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.PublishedCheck;
import isohume.quantity.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * A compact selection of published figures against which this program can be checked where it runs.
 *
 * <p>It uses the public methods only. The limit is half the last printed digit or what is said in the source, and a whole digit for
 * Hyland and Wexler, whose table does not follow their equation to the half; where a figure belongs to another model, the limit is the known distance between the two.
 */
public final class PublishedChecks {
    private static final String THIRTY_DIGITS =
            "computed with mpmath 1.2.1 and thirty digits from the printed coefficients";
    private static final String HARDY = "Hardy 1998, " + THIRTY_DIGITS;
    private static final String CIPM = "Picard et al. 2008 (CIPM-2007), " + THIRTY_DIGITS;
    private static final String HYLAND_WEXLER = "Hyland and Wexler 1983, table 2";
    private static final String TRIPLE_POINT = "Guildner, Johnson and Jones 1976, 611.657(10) Pa";

    private final List<PublishedCheck> checks = new ArrayList<>();

    private PublishedChecks() {}

    public static List<PublishedCheck> all() {
        PublishedChecks selection = new PublishedChecks();
        selection.addIapws();
        selection.addHylandWexler();
        selection.addTriplePoint();
        selection.addHardy();
        selection.addMeteorology();
        selection.addMixtures();
        selection.addSalts();
        return List.copyOf(selection.checks);
    }

    private void addIapws() {
        saturation(Formulation.IAPWS, Phase.WATER, kelvin(273.16), "IAPWS SR1-86(1992), table 1", 611.657, 0.0015);
        saturation(Formulation.IAPWS, Phase.WATER, kelvin(373.1243), "IAPWS SR1-86(1992), table 1", 101_325, 0.5);
        saturation(
                Formulation.IAPWS,
                Phase.WATER,
                kelvin(275),
                "IAPWS R6-95(2018), table 8, another equation",
                698.451167,
                0.03);
        saturation(Formulation.IAPWS, Phase.ICE, kelvin(230), "IAPWS R14-08(2011), table 3", 8.94735, 5e-6);
    }

    private void addHylandWexler() {
        Formulation by = Formulation.HYLAND_WEXLER_1983;
        saturation(by, Phase.ICE, kelvin(173.15), HYLAND_WEXLER, 1.40510e-3, 1e-8);
        saturation(by, Phase.ICE, celsius(0), HYLAND_WEXLER, 611.153, 1e-3);
        saturation(by, Phase.WATER, celsius(0), HYLAND_WEXLER, 611.213, 1e-3);
        saturation(by, Phase.WATER, kelvin(373.15), HYLAND_WEXLER, 101_419, 1);
        saturation(by, Phase.WATER, kelvin(473.15), HYLAND_WEXLER, 1.55507e6, 10);
        String ashrae = "ASHRAE Fundamentals 2017, chapter 1, table 3, an IAPWS table; 300 ppm";
        saturation(by, Phase.WATER, celsius(25), ashrae, 3169.7, 3169.7 * 3e-4);
        saturation(by, Phase.ICE, celsius(-20), ashrae, 103.24, 103.24 * 3e-4);
    }

    private void addTriplePoint() {
        for (Formulation by : List.of(Formulation.SONNTAG_1990, Formulation.HARDY_1998, Formulation.IAPWS)) {
            saturation(by, Phase.WATER, celsius(0.01), TRIPLE_POINT, 611.657, 0.010);
            saturation(by, Phase.ICE, celsius(0.01), TRIPLE_POINT, 611.657, 0.010);
        }
    }

    private void addHardy() {
        String other = "Hardy 1998, test of a public implementation in another language";
        saturation(Formulation.HARDY_1998, Phase.WATER, celsius(1), other, 657.0806266167413, 1e-9);
        saturation(Formulation.HARDY_1998, Phase.WATER, celsius(-50), other, 6.437948772985935, 1e-11);
        MoistAir hardy = MoistAir.by(Formulation.HARDY_1998);
        Pressure p = Pressure.STANDARD;
        add(
                "Hardy 1998: enhancement factor over water at 20 °C, 101 325 Pa",
                HARDY,
                1.003990959,
                "",
                1e-9,
                () -> hardy.enhancement(celsius(20), p, Phase.WATER));
        add(
                "Hardy 1998: enhancement factor over ice at -20 °C, 101 325 Pa",
                HARDY,
                1.00423003,
                "",
                1e-9,
                () -> hardy.enhancement(celsius(-20), p, Phase.ICE));
        add(
                "Hardy 1998: vapour pressure at dew point 10 °C, 101 325 Pa",
                HARDY,
                1232.883299,
                "Pa",
                2e-6,
                () -> hardy.vapourPressure(DewPoint.overWater(celsius(10)), p).pascals());
        humidity(hardy, DewPoint.overWater(celsius(12)), 23, 49.89367901);
        humidity(hardy, DewPoint.overIce(celsius(-10)), 23, 9.244345737);
        humidity(hardy, DewPoint.overIce(celsius(-15)), -10, 57.68890243);
        humidity(hardy, DewPoint.overWater(celsius(70)), 85, 53.96977364);
        add(
                "Hardy 1998: frost point of 260.9165121 Pa in air of 101 325 Pa",
                HARDY,
                -10,
                "°C",
                1e-7,
                () -> hardy.dewPoint(Pressure.ofPascals(260.9165121), p, Phase.ICE)
                        .celsius());
    }

    private void humidity(MoistAir hardy, DewPoint point, double air, double percent) {
        String name = (point.deposit() == Phase.ICE ? "frost point " : "dew point ") + Math.round(point.celsius());
        add(
                "Hardy 1998: relative humidity at " + Math.round(air) + " °C and " + name + " °C, 101 325 Pa",
                HARDY,
                percent,
                "% RH",
                percent * 1e-9,
                () -> hardy.relativeHumidity(point, Pressure.STANDARD, celsius(air), Pressure.STANDARD)
                        .percent());
    }

    private void addMeteorology() {
        MoistAir magnus = MoistAir.by(Formulation.WMO_MAGNUS);
        Pressure p = Pressure.ofHectopascals(1000);
        add(
                "WMO-No. 8: relative humidity at 10 °C, 1000 hPa and 1 g/kg (with 0.62198)",
                "worked value of a public implementation of WMO-No. 8",
                13.031628710406915,
                "% RH",
                1e-11,
                () -> magnus.at(celsius(10), p)
                        .withVapourPressure(Pressure.ofPascals(1e5 * 0.001 / (0.62198 + 0.001)))
                        .relativeHumidity()
                        .percent());
        add(
                "WMO-No. 8: vapour pressure at 20 °C, wet bulb 14 °C, 1000 hPa",
                "WMO-No. 8, Annex 4.B, " + THIRTY_DIGITS,
                1205.787273,
                "Pa",
                1.2e-6,
                () -> magnus.at(celsius(20), p)
                        .withWetBulb(celsius(14), Psychrometer.assmannWater())
                        .vapourPressure()
                        .pascals());
    }

    private void addMixtures() {
        MoistAir air = MoistAir.by(Formulation.DEFAULT);
        add(
                "mixing ratio of 3169.7 Pa in air of 95 461 Pa",
                "PsychroLib 2.5.0 test, ASHRAE 2017",
                0.0213603998047487,
                "kg/kg",
                2.2e-8,
                () -> air.at(celsius(30), Pressure.ofPascals(95_461))
                        .withVapourPressure(Pressure.ofPascals(3169.7))
                        .mixingRatio());
        add(
                "enthalpy at 30 °C and 0.02 kg/kg",
                "PsychroLib 2.5.0 test, ASHRAE 2017; 300 ppm",
                81_316,
                "J/kg",
                25,
                () -> air.at(celsius(30), Pressure.STANDARD)
                        .withMixingRatio(0.02)
                        .enthalpy());
        add(
                "CIPM-2007: density at 20 °C, 101 325 Pa, mole fraction 0.01158934013",
                CIPM,
                1.19931389547,
                "kg/m³",
                1e-9,
                () -> air.at(celsius(20), Pressure.STANDARD)
                        .withVolumeFraction(0.0115893401302)
                        .density());
        add(
                "CIPM-2007: density of dry air at 15 °C, 600 hPa",
                CIPM,
                0.725576990558,
                "kg/m³",
                1e-9,
                () -> air.at(celsius(15), Pressure.ofHectopascals(600))
                        .withVolumeFraction(0)
                        .density());
    }

    private void addSalts() {
        String table = "conservation-physics table of saturated salts after Greenspan 1977";
        salt(SaturatedSalt.LITHIUM_CHLORIDE, 20, table, 11.3);
        salt(SaturatedSalt.MAGNESIUM_CHLORIDE, 20, table, 33.1);
        salt(SaturatedSalt.SODIUM_CHLORIDE, 25, table, 75.3);
        salt(SaturatedSalt.POTASSIUM_SULFATE, 25, table, 97.3);
    }

    private void salt(SaturatedSalt salt, int celsius, String source, double percent) {
        add(
                "saturated " + salt.title() + " at " + celsius + " °C",
                source,
                percent,
                "% RH",
                0.05,
                () -> salt.relativeHumidity(celsius(celsius)).percent());
    }

    private void saturation(Formulation by, Phase phase, Temperature t, String source, double pascals, double limit) {
        String over = phase == Phase.ICE ? "ice" : "water";
        add(
                by.title() + ": saturation over " + over + " at " + t.kelvin() + " K",
                source,
                pascals,
                "Pa",
                limit,
                () -> MoistAir.by(by).saturation(t, phase).pascals());
    }

    private void add(String what, String source, double expected, String unit, double limit, DoubleSupplier found) {
        checks.add(new PublishedCheck(what, source, expected, unit, limit, found));
    }

    private static Temperature celsius(double celsius) {
        return Temperature.ofCelsius(celsius);
    }

    private static Temperature kelvin(double kelvin) {
        return Temperature.ofKelvin(kelvin);
    }
}
