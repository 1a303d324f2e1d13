// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.device.Answer;
import isohume.device.Channel;
import isohume.device.Reading;
import isohume.device.Setpoint;
import isohume.device.Trouble;
import isohume.journal.Fact;
import isohume.journal.JournalLost;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.entry.DisplayedChannel;
import isohume.run.entry.Photo;
import isohume.run.reach.WayPoint;
import isohume.run.watch.Bounds;
import isohume.run.watch.Fault;
import isohume.run.watch.Measure;
import isohume.run.watch.Policies;
import isohume.run.watch.Policy;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RunNotationTest {
    private static final Instant AT = Instant.parse("2026-03-02T08:00:10.250Z");
    private static final Channel CHANNEL = new Channel("mirror", "dew_point", Quantity.DEW_POINT);
    private static final Setpoint TARGET = new Setpoint(Temperature.ofCelsius(23), RelativeHumidity.ofPercent(51.3));

    static Stream<RunFact> everyKind() {
        return Stream.of(
                Rig.started(),
                new RunFact.Resumed("Ada \"the\" reader\n"),
                new RunFact.Asked(3, TARGET),
                new RunFact.Detoured(3, TARGET, WayPoint.Aim.DRYING),
                new RunFact.Answered(new Answer.Taken(TARGET)),
                new RunFact.Answered(new Answer.Refused("beyond 50 °C")),
                new RunFact.Answered(new Answer.None(Trouble.GARBLED, "7 bytes of noise")),
                new RunFact.Observed(
                        AT,
                        List.of(
                                new Reading.Value(CHANNEL, AT, new BigDecimal("12.030"), "2EFE"),
                                new Reading.Doubtful(CHANNEL, AT, new BigDecimal("-0.50"), "FFCE", "being cleaned"),
                                new Reading.Absent(
                                        CHANNEL, AT.plusMillis(7), Trouble.SILENCE, "no reply within 1000 ms"))),
                new RunFact.Entered(Phase.SAFE_STOP, 2, "over-temperature"),
                new RunFact.Ordered(Order.SKIP, "Ada", ""),
                Rig.startedByTheTail(),
                new RunFact.Recorded(2, 417, 446),
                new RunFact.Recorded(
                        2, 417, 446, List.of(new RunFact.ToCome("P-1/relative_humidity", -0.012345, 0.05))),
                new RunFact.Rested(new Answer.AtRest()),
                new RunFact.Finished(Ending.COMPLETED, "every point is done"),
                new RunFact.Guarded(Bounds.usual(), Policies.usual()),
                new RunFact.Guarded(
                        new Bounds(
                                60.5,
                                12,
                                2,
                                0.25,
                                List.of(new Bounds.Pair("a/t", "b/t", 0.2)),
                                Map.of("door", Fault.DOOR_OPEN),
                                Duration.ofMinutes(4),
                                Duration.ofMinutes(15),
                                Duration.ofMinutes(30),
                                Duration.ofHours(2)),
                        new Policies(Map.of(Fault.SILENT, new Policy(Duration.ofSeconds(90), Measure.SKIP)))),
                new RunFact.Noticed(
                        Fault.FROZEN, "A/rh", AT, "51.2 % RH for 300 s", new Policy(Duration.ZERO, Measure.HOLD)),
                new RunFact.Over(Fault.FROZEN, "A/rh"),
                new RunFact.Acted(Fault.WATER_LOW, "chamber/water_level", 2, Measure.STOP_AFTER_POINT, "4 % left"),
                new RunFact.Withdrawn(1, "A/rh stood still"),
                new RunFact.Wanted(2, List.of("H-1/temperature", "H-1/relative_humidity")),
                new RunFact.Typed(
                        2,
                        "H-1/temperature",
                        "-10,50",
                        AT,
                        "Ada",
                        417,
                        "confirmed when asked",
                        Optional.of(new Photo("0".repeat(64), "a \"b\".png", "image/png", 812))),
                new RunFact.Typed(2, "H-1/temperature", "23.0", AT, "Ada", 417, "", Optional.empty()),
                new RunFact.Declined("H-1/temperature", "2 3", AT, "Ada", "no number"),
                new RunFact.TakenBack(418, "Ada", "misread"),
                new RunFact.LeftOut(2, "H-1/temperature", "Ada", "it is off"));
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void every_kind_of_fact_comes_back_as_it_was_written(RunFact fact) {
        assertEquals(fact, RunNotation.decode(RunNotation.encode(fact)));
    }

    /** As they were written until version 1 of the form; these texts are never to be changed. */
    @Test
    void facts_of_earlier_forms_are_read() {
        assertEquals(
                new RunFact.Recorded(2, 417, 446),
                RunNotation.decode(new Fact(8, "{\"point\":2,\"first\":417,\"last\":446}")));
        RunFact.Started started = (RunFact.Started) RunNotation.decode(new Fact(1, """
                {"plan":{"title":"Two points","points":[{"number":1,"kelvin":296.15,"fraction":0.5,\
                "direction":"ascending"}],"rules":{"interval":"PT10S","window":"PT5M",\
                "temperature":{"band":0.5,"spread":0.01,"drift_per_minute":0.004},\
                "dew_point":{"spread":0.02,"drift_per_minute":0.01},\
                "humidity":{"band":2.0,"spread":0.05,"drift_per_minute":0.02},\
                "humidity_difference":{"spread":0.1,"drift_per_minute":0.02},\
                "temperature_difference":{"spread":0.05,"drift_per_minute":0.004},\
                "soak":"PT10M","temperature_soak":"PT30M","readings":30,"longest":"PT4H","patience":"PT1M"}},\
                "bench":"a bench","roles":{"dew_point":"m/d","deposit":"m/p","temperature":"t/t","pressure":"t/p",\
                "mirror_pressure":"t/m","instruments":["P-1/temperature"]},"formulation":"SONNTAG_1990",\
                "operator":"Ada","program":"test","job":"no job"}"""));
        assertEquals(List.of(), started.displays());
        assertEquals(Rules.fixed(), started.plan().rules());
        assertEquals(Targets.none(), started.targets());
    }

    /** As it is described in docs/formats/run-facts.md. */
    @Test
    void a_noticed_fault_is_written_as_it_is_described() {
        Fact fact = RunNotation.encode(new RunFact.Noticed(
                Fault.DOOR_OPEN, "chamber", AT, "the door is open", new Policy(Duration.ofMinutes(10), Measure.HOLD)));
        assertEquals(41, fact.form());
        assertEquals(
                "{\"fault\":\"door-open\",\"channel\":\"chamber\",\"since\":\"2026-03-02T08:00:10.250Z\","
                        + "\"evidence\":\"the door is open\",\"policy\":{\"wait\":\"PT10M\",\"then\":\"HOLD\"}}",
                fact.text());
    }

    /** As they are described in docs/formats/run-facts.md; these texts are never to be changed. */
    @Test
    void what_a_person_typed_is_written_as_it_is_described() {
        Fact fact = RunNotation.encode(
                new RunFact.Typed(2, "H-1/temperature", "23.0", AT, "Ada", 417, "", Optional.empty()));
        assertEquals(51, fact.form());
        assertEquals(
                "{\"point\":2,\"channel\":\"H-1/temperature\",\"shown\":\"23.0\",\"at\":\"2026-03-02T08:00:10.250Z\","
                        + "\"operator\":\"Ada\",\"observed\":417,\"remark\":\"\"}",
                fact.text());
    }

    @Test
    void displays_come_back_with_the_digits_of_their_resolution() {
        RunFact.Started plain = Rig.startedByTheTail();
        DisplayedChannel display =
                new DisplayedChannel("H-1/temperature", new BigDecimal("0.10"), Duration.ofMillis(500), 3, 0.3, 0.001);
        RunFact.Started started = new RunFact.Started(
                plain.plan(),
                plain.bench(),
                plain.roles(),
                plain.formulation(),
                plain.operator(),
                plain.program(),
                plain.job(),
                plain.targets(),
                List.of(display));
        assertEquals(started, RunNotation.decode(RunNotation.encode(started)));
    }

    @Test
    void digits_survive_trailing_zeros_included() {
        RunFact.Observed read = (RunFact.Observed) RunNotation.decode(RunNotation.encode(
                new RunFact.Observed(AT, List.of(new Reading.Value(CHANNEL, AT, new BigDecimal("12.030"), "2EFE")))));
        assertEquals(
                "12.030", ((Reading.Value) read.readings().getFirst()).shown().toPlainString());
    }

    @Test
    void a_fact_of_an_unknown_form_is_named_and_not_skipped() {
        JournalLost lost = assertThrows(
                JournalLost.class,
                () -> RunNotation.decode(new Fact(99, "{\"a\":1}")).hashCode());
        assertTrue(String.valueOf(lost.getMessage()).contains("99"));
    }
}
