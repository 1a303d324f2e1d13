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
import isohume.run.reach.WayPoint;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
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
                new RunFact.Recorded(2, 417, 446),
                new RunFact.Rested(new Answer.AtRest()),
                new RunFact.Finished(Ending.COMPLETED, "every point is done"));
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void every_kind_of_fact_comes_back_as_it_was_written(RunFact fact) {
        assertEquals(fact, RunNotation.decode(RunNotation.encode(fact)));
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
