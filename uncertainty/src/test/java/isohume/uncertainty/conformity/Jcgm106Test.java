// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.conformity;

import static isohume.uncertainty.Printed.assertDigits;
import static isohume.uncertainty.Printed.assertRelative;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.uncertainty.Coverage;
import isohume.uncertainty.Printed;
import isohume.uncertainty.RowByRow;
import org.junit.jupiter.api.Test;

/** Examples of JCGM 106:2012 and computed grids for its figures (jcgm106_conformity.csv, guard_band_rules.csv). */
class Jcgm106Test {
    private static Printed.Row row(String id) {
        return Printed.row("jcgm106_conformity.csv", id);
    }

    private static double check(String id) {
        return row(id).number("check_value");
    }

    @Test
    void clause_7_conformance_probabilities() {
        double zener = Conformity.probability(-5.47, 0.05, Tolerance.atMost(-5.40));
        double container = Conformity.probability(509.7, 8.6, Tolerance.atLeast(490));
        double oil = Conformity.probability(13.6, 1.8, new Tolerance(12.5, 16.3));
        assertRelative(check("E731-5"), zener, 1e-11, "Zener diode");
        assertRelative(check("E732-5"), container, 1e-11, "container");
        assertRelative(check("E74-7"), oil, 1e-11, "motor oil");
        assertDigits(row("E74-7").text("value"), oil, 0.5, "motor oil, printed");
    }

    @Test
    void clause_77_conformance_from_the_capability_index() {
        for (String index : new String[] {"1", "1.5", "2", "3", "4", "10"}) {
            double u = 1 / (4 * Double.parseDouble(index));
            Tolerance unit = new Tolerance(0, 1);
            double place = row("C77-" + index).number("value");
            assertEquals(Double.parseDouble(index), Risk.capabilityIndex(unit, u), 1e-12);
            assertEquals(0.95, Conformity.probability(place, u, unit), 1e-8, "C_m " + index);
        }
    }

    @Test
    void clause_953_precision_resistors() {
        Risk risk = Risk.global(
                new Prior.Normal(1500, 0.12), 0.04, new Tolerance(1499.8, 1500.2), new Tolerance(1499.82, 1500.18));
        assertRelative(check("E953-10"), risk.conforming(), 1e-8, "prior conformance");
        assertRelative(check("E953-11"), risk.consumer(), 1e-7, "consumer");
        assertRelative(check("E953-12"), risk.producer(), 1e-7, "producer");
        assertRelative(check("E953-13"), 100 * risk.accepted(), 1e-6, "accepted");
        assertRelative(check("E953-14"), risk.conformingAmongAccepted(), 1e-7, "conforming among accepted");
        assertRelative(check("E953-16"), risk.conformingAmongRejected(), 1e-7, "conforming among rejected");
    }

    @Test
    void clause_954_ball_bearings_with_a_gamma_prior() {
        for (String r : new String[] {"-1", "-0.5", "0", "0.25", "0.5", "0.65", "1"}) {
            double limit = 2 - Double.parseDouble(r) * 0.5;
            Risk risk = Risk.global(new Prior.Gamma(1, 0.5), 0.25, Tolerance.atMost(2), Tolerance.atMost(limit));
            double[] expected = row("C954-" + r).numbers("value");
            assertRelative(expected[0], risk.consumer(), 1e-6, "consumer, r " + r);
            assertRelative(expected[1], risk.producer(), 1e-6, "producer, r " + r);
            assertRelative(check("E954-7"), 1 - risk.conforming(), 1e-8, "prior");
        }
    }

    @Test
    void figure_17_grids() {
        int compared = 0;
        for (Printed.Row row : Printed.table("jcgm106_conformity.csv")) {
            if (row.text("id").startsWith("G17-")) {
                double u = Double.parseDouble(row.text("note").replaceAll(".*u_m=([0-9.]+);?,.*", "$1"));
                double limit = Double.parseDouble(row.text("note").replaceAll(".*A=\\+-([0-9.]+)", "$1"));
                Risk risk = Risk.global(new Prior.Normal(0, 1), u, Tolerance.symmetric(3), Tolerance.symmetric(limit));
                double[] expected = row.numbers("value");
                assertRelative(expected[0], risk.consumer(), 2e-7, row.toString());
                assertRelative(expected[1], risk.producer(), 2e-7, row.toString());
                compared++;
            }
        }
        assertEquals(30, compared);
    }

    @Test
    void jcgm_gum_5_example_10_specific_risk_with_a_lognormal_prior() {
        double conforms =
                Risk.conformance(new Prior.LogNormal(-2.325, 0.434), 0.225, 0.07 * 0.225, Tolerance.atMost(0.2));
        assertEquals(0.11334036, conforms, 1e-7, "G10-5, recomputed; printed 0.11");
    }

    @Test
    void guard_bands_of_ilac_g8_and_their_risks() {
        for (Printed.Row row : Printed.table("guard_band_rules.csv")) {
            String id = row.text("id");
            if (id.startsWith("PFA-")) {
                double factor = Double.parseDouble(id.substring("PFA-".length()));
                assertRelative(row.number("value"), GuardBand.falseAcceptAtLimit(factor), 1e-9, id);
            } else if (id.startsWith("INV-")) {
                double target = Double.parseDouble(id.substring("INV-".length()));
                assertRelative(row.number("value"), GuardBand.factorFor(target), 1e-9, id);
            }
        }
        for (GuardBand band : GuardBand.table()) {
            assertTrue(GuardBand.falseAcceptAtLimit(band.factor()) <= band.riskBound(), band.toString());
        }
    }

    @Test
    void every_figure_of_the_document() {
        try (RowByRow rows = RowByRow.of("jcgm106_conformity.csv")) {
            rows.elsewhere("E731-5|E732-5|E74-7", "Jcgm106Test.clause_7_conformance_probabilities");
            rows.elsewhere("C77-.*", "Jcgm106Test.clause_77_conformance_from_the_capability_index");
            rows.elsewhere("E953-1[0-46]", "Jcgm106Test.clause_953_precision_resistors");
            rows.elsewhere("C954-.*|E954-7", "Jcgm106Test.clause_954_ball_bearings_with_a_gamma_prior");
            rows.elsewhere("G17-.*", "Jcgm106Test.figure_17_grids");
            rows.without("E731-4|E732-4|E74-[56]", "a step towards the probability, which is compared");
            rows.without("E953-[89]", "a difference of limits that are inputs");
            rows.without("E954-[56]", "the shape and rate within the gamma prior, which is made from mean and u");
            limits(rows);
            risks(rows);
        }
    }

    private static void limits(RowByRow rows) {
        for (String probability : new String[] {"0.80", "0.90", "0.95", "0.99", "0.999"}) {
            rows.within(
                    2e-11, "T1-" + probability, oneSided(Double.parseDouble(probability), Double.POSITIVE_INFINITY));
        }
        Tolerance unit = new Tolerance(0, 1);
        assertEquals(0.95, Conformity.probability(check("D77-2"), 0.25, unit), 1e-7);
        assertEquals(0.95, Conformity.probability(check("D77-3"), 0.25, unit), 1e-7);
        rows.elsewhere("D77-[23]", "Jcgm106Test.limits");
        rows.is("E832-3", 100 * GuardBand.falseAcceptAtLimit(1));
        double z = oneSided(0.999, Double.POSITIVE_INFINITY);
        double speed = 100 / (1 - z * 0.02);
        rows.is("E833a-4", z);
        rows.is("E833a-5", speed);
        assertEquals(0.001, Conformity.probability(speed, 0.02 * speed, Tolerance.atMost(100)), 1e-12, "E833a");
        double t = oneSided(0.95, 9);
        rows.is("E833b-4", t);
        rows.is("E833b-5", t * 0.20);
        rows.is("E833b-6", 2 + t * 0.20);
    }

    /** A factor for one side from the one for both. */
    private static double oneSided(double probability, double freedom) {
        return Coverage.factor(2 * probability - 1, freedom);
    }

    private static void risks(RowByRow rows) {
        Risk resistors = Risk.global(
                new Prior.Normal(1500, 0.12), 0.04, new Tolerance(1499.8, 1500.2), new Tolerance(1499.82, 1500.18));
        rows.within(1e-5, "E953-15", 100 * (1 - resistors.accepted())); // given to six digits
        double r = check("E954-9");
        assertEquals(0.001, bearings(r).consumer(), 1e-9, "E954-9");
        rows.elsewhere("E954-9", "Jcgm106Test.risks");
        rows.within(1e-7, "E954-10", 2 - r * 0.5);
        rows.within(1e-6, "E954-11", bearings(0.65).producer());
        rows.within(1e-6, "E954-12", bearings(0.65).consumer());
        for (int index : new int[] {2, 10}) {
            Risk sixth = Risk.global(
                    new Prior.Normal(0, 1), 6.0 / (4 * index), Tolerance.symmetric(3), Tolerance.symmetric(3));
            rows.within(1e-7, "F17-" + index + "-RC", 100 * sixth.consumer());
            rows.within(1e-7, "F17-" + index + "-RP", 100 * sixth.producer());
        }
    }

    private static Risk bearings(double r) {
        return Risk.global(new Prior.Gamma(1, 0.5), 0.25, Tolerance.atMost(2), Tolerance.atMost(2 - r * 0.5));
    }

    @Test
    void the_guard_bands_offered_are_those_of_ilac_g8() {
        for (int i = 0; i < GuardBand.table().size(); i++) {
            Printed.Row row = Printed.row("guard_band_rules.csv", "G8-" + (i + 1));
            GuardBand band = GuardBand.table().get(i);
            assertEquals(Double.parseDouble(row.text("value").split("[ ;]", 2)[0]), band.factor(), row.toString());
            assertRelative(
                    row.number("check_value"), GuardBand.falseAcceptAtLimit(band.factor()), 1e-7, row.toString());
        }
    }
}
