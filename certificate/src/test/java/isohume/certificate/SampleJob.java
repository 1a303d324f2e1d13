// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import isohume.moistair.Formulation;
import isohume.quantity.Direction;
import isohume.quantity.Phase;
import isohume.quantity.Point;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.result.Characterisation;
import isohume.result.Item;
import isohume.result.Job;
import isohume.result.PointResult;
import isohume.result.PointResult.Conditions;
import isohume.result.Recording;
import isohume.result.Reference;
import isohume.result.Reference.CertifiedPoint;
import isohume.result.Reference.Traceability;
import isohume.result.Results;
import isohume.result.Specification;
import isohume.uncertainty.Budget;
import isohume.uncertainty.Distribution;
import isohume.uncertainty.Input;
import isohume.uncertainty.Origin;
import isohume.uncertainty.conformity.Conformity;
import isohume.uncertainty.conformity.Decision;
import isohume.uncertainty.conformity.DecisionRule;
import isohume.uncertainty.conformity.Tolerance;
import isohume.uncertainty.montecarlo.MonteCarlo;
import isohume.uncertainty.montecarlo.Settings;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An invented job: three instruments at fifteen points. No figure in it was measured by anybody. */
final class SampleJob {
    static final ZoneId ZONE = ZoneId.of("Europe/Vienna");
    static final Instant ISSUED = Instant.parse("2026-03-05T13:20:00Z");
    private static final Instant BEGAN = Instant.parse("2026-03-03T06:40:00Z");

    private static final LocalDate LATER = LocalDate.of(2026, 9, 30);

    private SampleJob() {}

    static Certificate draft() {
        return Certificate.of(results(points(1)), "A-1042", "2026-0147", ISSUED, ZONE, "Isohume 0.1.0");
    }

    /** With a mirror whose certificate had run out before the readings. */
    static Certificate late() {
        Job job = job(Job.Decision.GUARD_BAND_FOUR_ANSWERS, items(), LocalDate.of(2026, 1, 31));
        return Certificate.of(results(job, points(1)), "A-1042", "2026-0149", ISSUED, ZONE, "Isohume 0.1.0");
    }

    static Certificate authorised() {
        return draft().authorisedBy("Ilse Marwitz", ISSUED).withRoom("23.1 \u00B0C, 41 % RH, 1003 hPa");
    }

    static Results results(List<Point> points) {
        return results(job(Job.Decision.GUARD_BAND_FOUR_ANSWERS, items()), points);
    }

    static Results results(Job job, List<Point> points) {
        List<PointResult> results = new ArrayList<>();
        List<Recording> recordings = new ArrayList<>();
        for (Point point : points) {
            Recording recording = recording(job, point);
            recordings.add(recording);
            for (Item item : job.items()) {
                item.channels().forEach(c -> results.add(result(job, item, c, recording)));
            }
        }
        return new Results(job, recordings, results, hysteresis(job), List.of());
    }

    /** Five up and four down at 23 °C, three at 10 °C, three at 40 °C; as often as asked. */
    static List<Point> points(int times) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            add(points, 23, Direction.ASCENDING, 10, 30, 50, 70, 90);
            add(points, 23, Direction.DESCENDING, 70, 50, 30, 10);
            add(points, 10, Direction.ASCENDING, 20, 50, 80);
            add(points, 40, Direction.ASCENDING, 20, 50, 80);
        }
        return points;
    }

    private static void add(List<Point> points, double celsius, Direction direction, double... percents) {
        for (double percent : percents) {
            points.add(new Point(
                    points.size() + 1, Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(percent), direction));
        }
    }

    static Job job(Job.Decision decision, List<Item> items) {
        return job(decision, items, LocalDate.of(2026, 9, 30));
    }

    private static Job job(Job.Decision decision, List<Item> items, LocalDate mirrorDue) {
        return new Job(
                "K-2026-031",
                new Job.Party(
                        "Calibration Laboratory Hollerbach",
                        List.of("Am Sudhaus 4", "9999 Niederwasser", "Accreditation: none, this is sample data")),
                new Job.Party(
                        "Brunnwerk Pharma-Abf\u00FCllung", List.of("Quality control, Ms Tannhofer", "9998 Oberwasser")),
                "Customer\u2019s site: Oberwasser, building 3, room 1.12",
                "HP-07, issue 4: comparison in a two-flow humidity chamber",
                "Jonas Petermichl",
                Formulation.SONNTAG_1990,
                decision,
                "bench 2, portable two-flow chamber",
                references(mirrorDue),
                new Characterisation(
                        "CS-2026-02",
                        LocalDate.of(2026, 1, 14),
                        LocalDate.of(2027, 1, 14),
                        "nine positions, empty and loaded, 10 to 40 \u00B0C",
                        List.of(new Characterisation.AtTemperature(23, 0.03, 0.02, 0.02, 0.03, 0.005)),
                        0.02,
                        0.03,
                        0.1,
                        10),
                items);
    }

    static List<Item> items() {
        return List.of(
                item("A-1042", "probe and transmitter", "1"),
                item("A-1043", "handheld meter", "2"),
                item("A-1044", "data logger", "3"));
    }

    static Item item(String id, String kind, String position) {
        return new Item(
                id,
                kind,
                "Feuchtler",
                "HX 20",
                "F20-" + id.substring(2) + "-77",
                position,
                LocalDate.of(2026, 2, 26),
                "clean, filter undamaged, no condensation marks",
                List.of(
                        new Specification(Quantity.RELATIVE_HUMIDITY, 0.01, 1.0, 0.01, "maker\u2019s data sheet"),
                        new Specification(Quantity.TEMPERATURE, 0.01, 0.2, 0, "customer")));
    }

    private static List<Reference> references(LocalDate mirrorDue) {
        return List.of(
                reference("R-01", "Chilled-mirror hygrometer", Quantity.DEW_POINT, "DP-25-1180", mirrorDue, 0.08, 0.12),
                reference("R-02", "Platinum thermometer", Quantity.TEMPERATURE, "T-25-0442", LATER, 0.02, 0.02),
                reference("R-03", "Barometer", Quantity.PRESSURE, "P-25-0093", LATER, 15, 15));
    }

    private static Reference reference(
            String id, String title, Quantity quantity, String number, LocalDate due, double least, double most) {
        return new Reference(
                id,
                title,
                "S" + number.hashCode() % 1000,
                quantity,
                new Traceability(
                        number,
                        "National Institute of Inventland",
                        LocalDate.of(2025, 9, 30),
                        due,
                        2,
                        List.of(new CertifiedPoint(-20, 0, most), new CertifiedPoint(20, 0.01, least))),
                least / 4,
                least / 20);
    }

    private static Recording recording(Job job, Point point) {
        List<Recording.Row> rows = new ArrayList<>();
        Instant from = BEGAN.plusSeconds(point.number() * 2400L);
        double celsius = SetPoint.of(point).celsius();
        for (int i = 0; i < 10; i++) {
            Map<String, Double> shown = new HashMap<>();
            for (Item item : job.items()) {
                shown.put(
                        item.key(Quantity.RELATIVE_HUMIDITY), SetPoint.of(point).percent() + 0.5 + i * 0.01);
                shown.put(item.key(Quantity.TEMPERATURE), celsius + 0.1);
            }
            if (i == 4) {
                shown.remove(job.items().getFirst().key(Quantity.TEMPERATURE));
            }
            rows.add(new Recording.Row(from.plusSeconds(i * 30L), 11.5, celsius, 100_325.5, 100_290, shown));
        }
        Phase deposit = point.humidity().percent() < 15 ? Phase.ICE : Phase.WATER;
        return new Recording(point, deposit, "the mirror\u2019s own report", rows);
    }

    private static PointResult result(Job job, Item item, Specification channel, Recording recording) {
        SetPoint set = SetPoint.of(recording.point());
        int n = recording.point().number();
        boolean humid = channel.quantity() == Quantity.RELATIVE_HUMIDITY;
        double reference = (humid ? set.percent() : set.celsius()) + 0.0637 * (n % 3 - 1);
        double error = humid
                ? -0.9 + 0.031 * set.percent() + (recording.point().direction() == Direction.DESCENDING ? 0.42 : 0)
                : 0.0115 * (set.celsius() - 14) - 0.02 * (n % 2);
        Budget budget = budget(channel, reference, reference + error, humid ? 0.32 + 0.007 * set.percent() : 0.0931);
        return new PointResult(
                item.id(),
                channel.quantity(),
                recording.point(),
                reference,
                reference + error,
                MonteCarlo.propagate(budget, new Settings(n, 1, 5, 100_000, 1, Settings.Kind.SYMMETRIC)),
                decide(job.decision(), budget, channel.toleranceAt(reference + error)),
                10,
                7.4,
                conditions(recording, set));
    }

    private static Conditions conditions(Recording recording, SetPoint set) {
        return new Conditions(
                set.percent() < 15 ? -10.234 : 0.2 * set.percent(),
                recording.deposit(),
                recording.depositBy(),
                set.celsius() + 0.0231,
                set.percent() + 0.0637,
                100_325.5,
                recording.rows().getFirst().at(),
                recording.rows().getLast().at());
    }

    /** Two lines; the second has degrees of freedom. */
    private static Budget budget(Specification channel, double reference, double reading, double expanded) {
        String unit = channel.quantity().differenceUnit();
        return Budget.of(
                "error",
                unit,
                List.of(
                        Input.of(
                                "r_cal",
                                "reference: calibration",
                                reference,
                                unit,
                                new Distribution.Expanded(expanded * 0.99, 2),
                                Origin.CERTIFICATE,
                                "DP-25-1180"),
                        Input.of(
                                "u_rep",
                                "repeatability of the instrument",
                                reading,
                                unit,
                                new Distribution.MeanOfReadings(expanded * 0.15, 7.4),
                                Origin.MEASURED,
                                "this record")),
                values -> values[1] - values[0]);
    }

    private static Optional<Decision> decide(Job.Decision decision, Budget budget, double tolerance) {
        Optional<DecisionRule> rule = switch (decision) {
            case NONE -> Optional.empty();
            case SIMPLE_ACCEPTANCE -> Optional.of(DecisionRule.SIMPLE_ACCEPTANCE);
            case GUARD_BAND -> Optional.of(DecisionRule.GUARD_BAND_U);
            case GUARD_BAND_FOUR_ANSWERS -> Optional.of(DecisionRule.FOUR_OUTCOMES);
        };
        return rule.map(r -> Conformity.decide(
                budget.value(), budget.expanded(), budget.coverageFactor(), Tolerance.symmetric(tolerance), r));
    }

    private static List<Results.Hysteresis> hysteresis(Job job) {
        List<Results.Hysteresis> all = new ArrayList<>();
        for (Item item : job.items()) {
            for (double percent : new double[] {10, 30, 50, 70}) {
                all.add(new Results.Hysteresis(item.id(), Quantity.RELATIVE_HUMIDITY, 23, percent, 0.4213));
            }
        }
        return all;
    }
}
