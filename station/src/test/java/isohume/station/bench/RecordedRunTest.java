// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.journal.Journal;
import isohume.journal.MemoryJournal;
import isohume.journal.StreamName;
import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.result.PointResult;
import isohume.result.Results;
import isohume.run.Ending;
import isohume.run.Order;
import isohume.simulator.BenchParameters;
import isohume.station.demo.HeadlessDemo;
import isohume.station.job.Texts;
import isohume.station.job.Worksheet;
import isohume.station.rehearsal.Rehearsal;
import isohume.station.rehearsal.Unattended;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class RecordedRunTest {
    private static final StreamName RUN = new StreamName("run", "one");
    private static final Instant START = Instant.parse("2026-03-02T07:00:00Z");
    private static final MoistAir AIR = MoistAir.by(Formulation.SONNTAG_1990);

    /** The demonstration's plan with one point, and a dew point that is derived for its first instrument. */
    private static Worksheet worksheet() {
        Texts packaged = Texts.packagedWith(HeadlessDemo.class);
        String derived = "dew_point: {derived-from: [relative_humidity, temperature], below-zero: dew, tolerance: 1,"
                + " tolerance-from: maker}";
        String plan = packaged.text("plan.yaml")
                .replaceFirst("(?m)^( +)temperature: .*resolution.*$", "$0\n$1" + derived)
                .replaceFirst("(?s)\npoints:.*?(?=\n[a-z]|$)", "\npoints:\n  - {temperature: 23, humidity: [40]}\n");
        return Worksheet.read(name -> name.equals("plan.yaml") ? plan : packaged.text(name), "plan.yaml");
    }

    private static double dewPoint(PointResult humidity, PointResult temperature, boolean reference) {
        Pressure pressure = Pressure.ofPascals(humidity.conditions().pressure());
        double percent = reference ? humidity.reference() : humidity.reading();
        double celsius = reference ? temperature.reference() : temperature.reading();
        return AIR.dewPoint(
                        RelativeHumidity.ofPercent(percent),
                        Temperature.ofCelsius(celsius),
                        pressure,
                        pressure,
                        Phase.WATER)
                .celsius();
    }

    @Test
    void a_dew_point_is_derived_from_what_a_run_recorded_though_the_run_knew_nothing_of_it() {
        Worksheet worksheet = worksheet();
        try (Rehearsal bench = Rehearsal.of(worksheet, BenchParameters.portable(), 1, START)) {
            Journal journal = new MemoryJournal(bench.simulated()::now);
            assertEquals(
                    Ending.COMPLETED, new Unattended(bench, journal, RUN, Order.STOP, (entry, fact) -> {}).carryOut());
            Results results = new RecordedRun(journal, RUN).results();
            String id = worksheet.job().items().getFirst().id();
            PointResult dew = one(results, id, Quantity.DEW_POINT);
            PointResult humidity = one(results, id, Quantity.RELATIVE_HUMIDITY);
            PointResult temperature = one(results, id, Quantity.TEMPERATURE);
            double reading = dewPoint(humidity, temperature, false);
            assertEquals(reading, dew.reading(), 1e-3, "as the two means would have it");
            assertEquals(dewPoint(humidity, temperature, true), dew.reference(), 1e-3);
            assertTrue(
                    dew.budget().contributions().stream()
                            .anyMatch(c -> c.input().symbol().equals("u_settle")
                                    && c.input().evidence().startsWith("tail fitted")),
                    "what both had still to change is known");
            assertEquals(
                    2,
                    results.of(worksheet.job().items().getLast().id()).size(),
                    "other instruments have two channels");
        }
    }

    private static PointResult one(Results results, String id, Quantity quantity) {
        return results.of(id).stream()
                .filter(p -> p.quantity() == quantity)
                .findFirst()
                .orElseThrow();
    }
}
