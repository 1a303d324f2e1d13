// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.conformity;

import static isohume.uncertainty.Printed.assertDigits;
import static isohume.uncertainty.Printed.assertRelative;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.uncertainty.Printed;
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
}
