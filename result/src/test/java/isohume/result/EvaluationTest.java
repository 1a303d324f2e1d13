// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.Direction;
import isohume.quantity.Phase;
import isohume.quantity.Point;
import isohume.quantity.Pressure;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.uncertainty.Contribution;
import isohume.uncertainty.Origin;
import isohume.uncertainty.conformity.Verdict;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EvaluationTest {
    private static final String HUMIDITY = "P-1/relative_humidity";
    private static final String TEMPERATURE = "P-1/temperature";

    /** 23 °C and a dew point of 12.0323 °C are 50 % RH: worked-budgets.csv, row d_cal of 50 % RH. */
    @Test
    void an_error_is_the_reading_minus_the_corrected_reference() {
        Results results = Evaluation.of(job(Job.Decision.NONE), List.of(recording(1, Direction.ASCENDING, 50.6)));
        PointResult humidity = only(results, Quantity.RELATIVE_HUMIDITY);
        assertEquals(50.000, humidity.reference(), 0.0005);
        assertEquals(0.600, humidity.error(), 0.0005);
        PointResult temperature = only(results, Quantity.TEMPERATURE);
        assertEquals(23.00, temperature.reference(), 1e-9);
        assertEquals(0.10, temperature.error(), 1e-9);
    }

    @Test
    void a_certificates_correction_moves_the_reference() {
        Job corrected = job(Job.Decision.NONE, 0.5);
        Results results = Evaluation.of(corrected, List.of(recording(1, Direction.ASCENDING, 50.6)));
        assertEquals(23.5, only(results, Quantity.TEMPERATURE).reference(), 1e-9);
    }

    @Test
    void every_line_says_where_it_comes_from_and_measured_ones_are_from_this_record() {
        PointResult result = only(
                Evaluation.of(job(Job.Decision.NONE), List.of(recording(1, Direction.ASCENDING, 50.6))),
                Quantity.RELATIVE_HUMIDITY);
        assertEquals(
                List.of("u_res", "u_rep", "u_settle", "d_stab", "d_rep", "t_stab", "t_rep"),
                result.budget().contributions().stream()
                        .filter(c -> c.input().origin() == Origin.MEASURED)
                        .map(c -> c.input().symbol())
                        .toList());
        assertTrue(result.budget().contributions().stream()
                .noneMatch(c -> c.input().evidence().isBlank()));
    }

    /** 0.01 % of Sonntag over water at k = 2; ratios of Greenspan's factors by the figure for the dew point of 12 °C. */
    @Test
    void the_formulas_bring_in_what_is_stated_of_them() {
        List<Contribution> lines = only(
                        Evaluation.of(job(Job.Decision.NONE), List.of(recording(1, Direction.ASCENDING, 50.6))),
                        Quantity.RELATIVE_HUMIDITY)
                .budget()
                .contributions();
        Contribution atMirror = line(lines, "e_eq");
        assertEquals(5e-5, atMirror.standardUncertainty(), 1e-18);
        assertEquals(5e-5 * 50, Math.abs(atMirror.contribution()), 1e-6, "a part of the reference, 50 % RH");
        assertTrue(
                atMirror.input().evidence().startsWith("Sonntag"),
                atMirror.input().evidence());
        assertTrue(
                atMirror.input().evidence().endsWith("(from memory)"),
                atMirror.input().evidence());
        assertEquals(5e-5, line(lines, "e_air").standardUncertainty(), 1e-18);
        MoistAir air = MoistAir.by(Formulation.SONNTAG_1990);
        double colder = air.enhancementUncertainty(Temperature.ofCelsius(12.0323), Pressure.STANDARD, Phase.WATER)
                .standard();
        assertEquals(colder, line(lines, "f_eq").standardUncertainty(), 1e-9);
    }

    private static Contribution line(List<Contribution> lines, String symbol) {
        return lines.stream()
                .filter(c -> c.input().symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void hysteresis_is_the_descending_error_less_the_ascending_one() {
        Results results = Evaluation.of(
                job(Job.Decision.NONE),
                List.of(recording(1, Direction.ASCENDING, 50.2), recording(2, Direction.DESCENDING, 51.0)));
        assertEquals(0.8, results.hysteresis().getFirst().difference(), 1e-9);
    }

    @Test
    void a_verdict_follows_the_rule_that_was_agreed() {
        Recording close = recording(1, Direction.ASCENDING, 51.2); // tolerance 1.5, U about 0.7
        assertEquals(Optional.empty(), verdict(Job.Decision.NONE, close));
        assertEquals(Optional.of(Verdict.CONFORMS_IN_GUARD_BAND), verdict(Job.Decision.SIMPLE_ACCEPTANCE, close));
        assertEquals(Optional.of(Verdict.DOES_NOT_CONFORM), verdict(Job.Decision.GUARD_BAND, close));
        Recording beyond = recording(1, Direction.ASCENDING, 51.8);
        assertEquals(Optional.of(Verdict.NOT_DECIDED), verdict(Job.Decision.GUARD_BAND_FOUR_ANSWERS, beyond));
    }

    @Test
    void an_overdue_certificate_stands_against_issuing() {
        Job job = job(Job.Decision.NONE);
        Results late = Evaluation.of(job, List.of(recording(1, Direction.ASCENDING, 50, "2031-01-01T00:00:00Z")));
        assertEquals(4, late.objections().size(), late.objections().toString());
        assertTrue(
                late.objections().getFirst().contains("2027-01-31"),
                late.objections().getFirst());
    }

    @Test
    void a_reading_beyond_a_references_certificate_is_refused_with_its_range() {
        Recording hot = recording(1, Direction.ASCENDING, 50, "2026-03-02T08:00:00Z", 23.7);
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> Evaluation.of(job(Job.Decision.NONE), List.of(hot)));
        assertTrue(String.valueOf(refused.getMessage()).contains("covers -10.00 to 23.50"), refused.getMessage());
    }

    @Test
    void an_instrument_with_gaps_is_evaluated_from_what_there_is() {
        Recording whole = recording(1, Direction.ASCENDING, 50.6);
        List<Recording.Row> rows = new ArrayList<>();
        for (int i = 0; i < whole.rows().size(); i++) {
            Recording.Row row = whole.rows().get(i);
            Map<String, Double> shown = i % 3 == 0 ? Map.of(TEMPERATURE, 23.1) : row.shown();
            rows.add(new Recording.Row(
                    row.at(), row.dewPoint(), row.temperature(), row.pressure(), row.mirrorPressure(), shown));
        }
        Recording gaps = new Recording(whole.point(), Phase.WATER, "test", rows);
        assertEquals(
                0.6,
                only(Evaluation.of(job(Job.Decision.NONE), List.of(gaps)), Quantity.RELATIVE_HUMIDITY)
                        .error(),
                0.003); // the wiggle no longer cancels to the last digit
    }

    /** The air warms by 0.02 K a row, and the instrument reads 0.1 K too much at the last five rows, where it is read. */
    @Test
    void an_instrument_that_is_read_now_and_then_is_compared_with_the_reference_of_those_moments() {
        Recording whole = recording(1, Direction.ASCENDING, 50.6);
        List<Recording.Row> rows = new ArrayList<>();
        for (int i = 0; i < whole.rows().size(); i++) {
            Recording.Row row = whole.rows().get(i);
            double celsius = 23 + 0.02 * i;
            rows.add(new Recording.Row(
                    row.at(),
                    row.dewPoint(),
                    celsius,
                    row.pressure(),
                    row.mirrorPressure(),
                    i < 15 ? Map.of() : Map.of(TEMPERATURE, celsius + 0.1)));
        }
        Recording late = new Recording(whole.point(), Phase.WATER, "test", rows);
        PointResult result = only(Evaluation.of(job(Job.Decision.NONE), List.of(late)), Quantity.TEMPERATURE);
        assertEquals(0.1, result.error(), 1e-9);
        assertEquals(23.34, result.reference(), 1e-9);
        assertEquals(5, result.readings());
    }

    private static Optional<Verdict> verdict(Job.Decision decision, Recording recording) {
        return only(Evaluation.of(job(decision), List.of(recording)), Quantity.RELATIVE_HUMIDITY)
                .verdict();
    }

    private static PointResult only(Results results, Quantity quantity) {
        return results.points().stream()
                .filter(p -> p.quantity() == quantity)
                .findFirst()
                .orElseThrow();
    }

    private static Recording recording(int number, Direction direction, double shown) {
        return recording(number, direction, shown, "2026-03-02T08:00:00Z");
    }

    private static Recording recording(int number, Direction direction, double shown, String from) {
        return recording(number, direction, shown, from, 23);
    }

    private static Recording recording(int number, Direction direction, double shown, String from, double celsius) {
        List<Recording.Row> rows = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            double wiggle = i % 2 == 0 ? 0.02 : -0.02;
            rows.add(new Recording.Row(
                    Instant.parse(from).plusSeconds(10L * i),
                    12.0323,
                    celsius,
                    101_325,
                    101_325,
                    Map.of(HUMIDITY, shown + wiggle, TEMPERATURE, celsius + 0.1)));
        }
        Point point = new Point(number, Temperature.ofCelsius(23), RelativeHumidity.ofPercent(50), direction);
        return new Recording(point, Phase.WATER, "test", rows);
    }

    private static Job job(Job.Decision decision) {
        return job(decision, 0);
    }

    private static Job job(Job.Decision decision, double thermometerCorrection) {
        Item item = InventedJob.probe(
                new Specification(Quantity.RELATIVE_HUMIDITY, 0.01, 1.5, 0, "maker"),
                new Specification(Quantity.TEMPERATURE, 0.01, 0.3, 0, "maker"));
        return InventedJob.of(
                decision,
                item,
                reference(Quantity.DEW_POINT, -30, 50, 0, 0.1),
                reference(Quantity.TEMPERATURE, -10, 23.5, thermometerCorrection, 0.04),
                reference(Quantity.PRESSURE, 80_000, 110_000, 0, 30));
    }

    private static Reference reference(Quantity quantity, double from, double to, double correction, double expanded) {
        return InventedJob.reference(quantity, from, to, correction, expanded, 0.02, 0.01);
    }
}
