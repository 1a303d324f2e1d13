// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.quantity.Direction;
import isohume.quantity.Phase;
import isohume.quantity.Point;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.result.Specification.BelowZero;
import isohume.uncertainty.Contribution;
import isohume.uncertainty.conformity.Verdict;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Channels that are computed from two others. Dew points and slopes are those of worked-budgets.csv, which were computed
 * independently of this program from the formulas of Sonntag 1990 and Greenspan 1976 at 101 325 Pa: rows d_cal and t_cal
 * at 50 % RH and at 10 % RH, 23 °C.
 */
class DerivedChannelsTest {
    private static final double DEW = 12.0323; // of 50 % RH at 23 °C
    private static final double FROST = -9.11299; // of 10 % RH at 23 °C
    private static final double PERCENT_PER_KELVIN_DEW = 3.2972; // at 50 % RH
    private static final double PERCENT_PER_KELVIN_AIR = -3.02804;
    private static final String HUMIDITY = "P-1/relative_humidity";
    private static final String TEMPERATURE = "P-1/temperature";
    private static final String DEW_POINT = "P-1/dew_point";

    private static final Specification READ_HUMIDITY =
            new Specification(Quantity.RELATIVE_HUMIDITY, 0.1, 1.5, 0, "maker");
    private static final Specification READ_TEMPERATURE =
            new Specification(Quantity.TEMPERATURE, 0.01, 0.3, 0, "maker");

    private static Specification dewPoint(BelowZero belowZero) {
        return new Specification(Quantity.DEW_POINT, 0, 0.5, 0, "maker", Optional.of(belowZero), true);
    }

    private static Specification readDewPoint(BelowZero belowZero) {
        return new Specification(Quantity.DEW_POINT, 0.1, 0.5, 0, "maker", Optional.of(belowZero), false);
    }

    private static final Specification HUMIDITY_FROM_DEW_POINT =
            new Specification(Quantity.RELATIVE_HUMIDITY, 0, 1.5, 0, "maker", Optional.empty(), true);

    /** What a row shows at an even and at an odd instant. */
    private record Pair(Map<String, Double> even, Map<String, Double> odd) {
        Pair(Map<String, Double> always) {
            this(always, always);
        }
    }

    private static Recording recording(double mirror, Phase deposit, double percent, Pair shown) {
        List<Recording.Row> rows = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            rows.add(new Recording.Row(
                    Instant.parse("2026-03-02T08:00:00Z").plusSeconds(10L * i),
                    mirror,
                    23,
                    101_325,
                    101_325,
                    i % 2 == 0 ? shown.even() : shown.odd()));
        }
        Point point = new Point(1, Temperature.ofCelsius(23), RelativeHumidity.ofPercent(percent), Direction.ASCENDING);
        return new Recording(point, deposit, "test", rows);
    }

    private static List<PointResult> results(Recording recording, Specification... channels) {
        Job job = InventedJob.of(
                Job.Decision.SIMPLE_ACCEPTANCE,
                InventedJob.probe(channels),
                reference(Quantity.DEW_POINT, -30, 50, 0.1),
                reference(Quantity.TEMPERATURE, -10, 40, 0.04),
                reference(Quantity.PRESSURE, 80_000, 110_000, 30));
        return Evaluation.of(job, List.of(recording)).points();
    }

    private static Reference reference(Quantity quantity, double from, double to, double expanded) {
        return InventedJob.reference(quantity, from, to, 0, expanded, 0.02, 0.01);
    }

    private static Optional<PointResult> of(Quantity quantity, List<PointResult> results) {
        return results.stream().filter(p -> p.quantity() == quantity).findFirst();
    }

    private static PointResult derived(Recording recording, Specification... channels) {
        return of(channels[channels.length - 1].quantity(), results(recording, channels))
                .orElseThrow();
    }

    private static PointResult dewPointAt50() {
        Recording recording =
                recording(DEW - 0.2, Phase.WATER, 50, new Pair(Map.of(HUMIDITY, 50.0, TEMPERATURE, 23.0)));
        return derived(recording, READ_HUMIDITY, READ_TEMPERATURE, dewPoint(BelowZero.DEW));
    }

    @Test
    void a_dew_point_follows_from_humidity_and_temperature_and_has_an_error_and_a_verdict() {
        PointResult result = dewPointAt50();
        assertEquals(DEW, result.reading(), 5e-5);
        assertEquals(DEW - 0.2, result.reference(), 5e-5);
        assertEquals(0.2, result.error(), 5e-5);
        assertEquals(Optional.of(Phase.WATER), result.over());
        assertEquals(Optional.of(Verdict.CONFORMS), result.verdict());
    }

    @Test
    void below_zero_it_is_a_frost_point_or_a_dew_point_as_was_agreed_on_and_says_which() {
        Recording dry = recording(FROST, Phase.ICE, 10, new Pair(Map.of(HUMIDITY, 10.0, TEMPERATURE, 23.0)));
        PointResult frost = derived(dry, READ_HUMIDITY, READ_TEMPERATURE, dewPoint(BelowZero.FROST));
        assertEquals(FROST, frost.reading(), 5e-6);
        assertEquals(0, frost.error(), 5e-6);
        assertEquals(Optional.of(Phase.ICE), frost.over());

        PointResult dew = derived(dry, READ_HUMIDITY, READ_TEMPERATURE, dewPoint(BelowZero.DEW));
        // humidity_conversion_checks.csv of moistair, rh-dew-23-10 and rh-frost-23-10, without enhancement
        double apart = -10.24144787 - -9.113455302;
        assertEquals(apart, dew.reading() - frost.reading(), 2e-3);
        assertEquals(0, dew.error(), 1e-5, "reading and reference are over the same phase");
        assertEquals(Optional.of(Phase.WATER), dew.over());
    }

    /**
     * By hand, as in JCGM 100, 5.1: from h = RH(d, t) follow ∂d/∂h = 1/(∂h/∂d) and ∂d/∂t = −(∂h/∂t)/(∂h/∂d), and a
     * relative change of the vapour pressure is one of h.
     */
    @Test
    void the_budget_is_that_of_the_hand_derivation() {
        PointResult result = dewPointAt50();
        double perPercent = 1 / PERCENT_PER_KELVIN_DEW;
        double perUnit = 50 * perPercent;
        double sum = 0;
        for (Contribution line : result.budget().contributions()) {
            String symbol = line.input().symbol();
            double sensitivity = switch (symbol.substring(0, symbol.indexOf('_'))) {
                case "u1" -> perPercent;
                case "u2" -> -PERCENT_PER_KELVIN_AIR * perPercent;
                case "u" -> 1;
                case "d" -> -1;
                case "dp" -> perUnit / 101_325; // the vapour thins out on the way to the chamber
                case "e", "f" -> -perUnit;
                default -> throw new AssertionError(symbol);
            };
            // the mirror is 0.2 K below the reading, where the slope is less than a hundredth off
            assertEquals(sensitivity, line.sensitivity(), 0.01 * Math.abs(sensitivity), symbol);
            sum += Math.pow(sensitivity * line.input().standardUncertainty(), 2);
        }
        assertEquals(Math.sqrt(sum), result.budget().combined(), 0.002 * Math.sqrt(sum));
        assertEquals(
                List.of("u1_res", "u2_res", "u_rep", "u_settle", "u1_creep", "d_cal"),
                symbols(result).subList(0, 6));
        assertEquals(0.1 / 2 / Math.sqrt(3), uncertainty(result, "u1_res"), 1e-12);
        assertEquals(0.01 / 2 / Math.sqrt(3), uncertainty(result, "u2_res"), 1e-12);
        assertTrue(
                symbols(result).containsAll(List.of("e_eq", "e_air", "f_eq")),
                () -> symbols(result).toString());
    }

    private static List<String> symbols(PointResult result) {
        return result.budget().contributions().stream()
                .map(c -> c.input().symbol())
                .toList();
    }

    private static double uncertainty(PointResult result, String symbol) {
        return result.budget().contributions().stream()
                .filter(c -> c.input().symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .standardUncertainty();
    }

    @Test
    void what_moves_both_readings_but_not_the_dew_point_is_no_noise_of_it() {
        double kelvin = 0.2;
        double percent = PERCENT_PER_KELVIN_AIR * kelvin; // the same vapour in warmer air
        Recording together = recording(
                DEW,
                Phase.WATER,
                50,
                new Pair(
                        Map.of(HUMIDITY, 50 + percent, TEMPERATURE, 23 + kelvin),
                        Map.of(HUMIDITY, 50 - percent, TEMPERATURE, 23 - kelvin)));
        Recording against = recording(
                DEW,
                Phase.WATER,
                50,
                new Pair(
                        Map.of(HUMIDITY, 50 - percent, TEMPERATURE, 23 + kelvin),
                        Map.of(HUMIDITY, 50 + percent, TEMPERATURE, 23 - kelvin)));
        Specification dew = dewPoint(BelowZero.DEW);
        double small = uncertainty(derived(together, READ_HUMIDITY, READ_TEMPERATURE, dew), "u_rep");
        double large = uncertainty(derived(against, READ_HUMIDITY, READ_TEMPERATURE, dew), "u_rep");
        assertTrue(small < 0.01 * large, small + " against " + large);
        double apart = 2 * percent / PERCENT_PER_KELVIN_DEW; // what each row is off by, in K
        assertEquals(Math.abs(apart), large * Math.sqrt(20), 0.1 * Math.abs(apart));
    }

    @Test
    void a_relative_humidity_follows_from_dew_point_and_temperature() {
        Recording recording = recording(DEW, Phase.WATER, 50, new Pair(Map.of(DEW_POINT, DEW, TEMPERATURE, 23.0)));
        List<PointResult> results =
                results(recording, readDewPoint(BelowZero.DEW), READ_TEMPERATURE, HUMIDITY_FROM_DEW_POINT);
        PointResult humidity = of(Quantity.RELATIVE_HUMIDITY, results).orElseThrow();
        assertEquals(50, humidity.reading(), 0.0005);
        assertEquals(0, humidity.error(), 1e-9);
        Contribution dew = line(humidity, "u1_res");
        assertEquals(PERCENT_PER_KELVIN_DEW, dew.sensitivity(), 1e-4 * PERCENT_PER_KELVIN_DEW);
        Contribution air = line(humidity, "u2_res");
        assertEquals(PERCENT_PER_KELVIN_AIR, air.sensitivity(), 1e-4 * -PERCENT_PER_KELVIN_AIR);
    }

    private static Contribution line(PointResult result, String symbol) {
        return result.budget().contributions().stream()
                .filter(c -> c.input().symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_dew_point_that_is_read_is_compared_over_its_own_phase() {
        Recording same = recording(DEW, Phase.WATER, 50, new Pair(Map.of(DEW_POINT, DEW + 0.1)));
        PointResult plain = derived(same, readDewPoint(BelowZero.DEW));
        assertEquals(0.1, plain.error(), 1e-9);
        assertTrue(symbols(plain).stream().noneMatch(s -> s.startsWith("e_")), "no formula was needed");

        // humidity_conversion_checks.csv, dew-frost--10: dew point -10 is frost point -8.896791638, without enhancement
        Recording other = recording(-8.896791638, Phase.ICE, 10, new Pair(Map.of(DEW_POINT, -10.0)));
        PointResult converted = derived(other, readDewPoint(BelowZero.DEW));
        assertEquals(0, converted.error(), 2e-3);
        assertTrue(
                symbols(converted).containsAll(List.of("e_eq", "e_over")),
                () -> symbols(converted).toString());
    }

    @Test
    void an_instant_without_one_of_the_two_has_no_dew_point_and_nothing_stands_in() {
        Specification dew = dewPoint(BelowZero.DEW);
        Recording half = recording(
                DEW, Phase.WATER, 50, new Pair(Map.of(HUMIDITY, 50.0, TEMPERATURE, 23.0), Map.of(HUMIDITY, 80.0)));
        assertEquals(DEW, derived(half, READ_HUMIDITY, READ_TEMPERATURE, dew).reading(), 5e-5);
        Recording never = recording(DEW, Phase.WATER, 50, new Pair(Map.of(HUMIDITY, 50.0), Map.of(TEMPERATURE, 23.0)));
        assertTrue(of(Quantity.DEW_POINT, results(never, READ_HUMIDITY, READ_TEMPERATURE, dew))
                .isEmpty());
    }

    @Test
    void a_reading_of_no_humidity_has_no_dew_point() {
        Recording dry = recording(DEW, Phase.WATER, 50, new Pair(Map.of(HUMIDITY, 0.0, TEMPERATURE, 23.0)));
        List<PointResult> results = results(dry, READ_HUMIDITY, READ_TEMPERATURE, dewPoint(BelowZero.FROST));
        assertTrue(of(Quantity.DEW_POINT, results).isEmpty());
        assertTrue(of(Quantity.RELATIVE_HUMIDITY, results).isPresent());
    }

    @Test
    void a_frost_point_too_near_to_zero_has_no_result_and_spoils_no_other() {
        Recording recording = recording(
                0.0, Phase.WATER, 21.7, new Pair(Map.of(HUMIDITY, 21.7, TEMPERATURE, 23.0, DEW_POINT, -0.002)));
        List<PointResult> results = results(recording, READ_HUMIDITY, READ_TEMPERATURE, readDewPoint(BelowZero.FROST));
        assertTrue(of(Quantity.DEW_POINT, results).isEmpty());
        assertTrue(of(Quantity.RELATIVE_HUMIDITY, results).isPresent());
    }

    @Test
    void what_it_is_derived_from_has_to_be_read() {
        assertThrows(IllegalArgumentException.class, () -> InventedJob.probe(READ_HUMIDITY, dewPoint(BelowZero.DEW)));
        assertThrows(
                IllegalArgumentException.class,
                () -> InventedJob.probe(dewPoint(BelowZero.DEW), READ_TEMPERATURE, HUMIDITY_FROM_DEW_POINT));
    }

    @Test
    void what_both_had_still_to_change_is_carried_over() {
        Recording plain = recording(DEW, Phase.WATER, 50, new Pair(Map.of(HUMIDITY, 50.0, TEMPERATURE, 23.0)));
        Recording known = new Recording(
                plain.point(),
                plain.deposit(),
                plain.depositBy(),
                plain.rows(),
                Map.of(HUMIDITY, new StillToCome(0.3, 0.1), TEMPERATURE, new StillToCome(0.02, 0.01)));
        PointResult result = derived(known, READ_HUMIDITY, READ_TEMPERATURE, dewPoint(BelowZero.DEW));
        double perPercent = 1 / PERCENT_PER_KELVIN_DEW;
        double perKelvin = -PERCENT_PER_KELVIN_AIR * perPercent;
        double change = 0.3 * perPercent + 0.02 * perKelvin;
        double expected = Math.sqrt(change * change + Math.pow(0.1 * perPercent, 2) + Math.pow(0.01 * perKelvin, 2));
        assertEquals(expected, uncertainty(result, "u_settle"), 1e-3 * expected);
    }
}
