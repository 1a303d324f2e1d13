// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.digitalpetri.modbus.exceptions.ModbusException;
import isohume.quantity.Quantity;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DeterminismTest {
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    private static final Duration WHOLE = Duration.ofMinutes(40);

    /** Lets the time of a bench pass until an instant. */
    private interface Passing {
        void until(SimulatedBench bench, Wire wire, Instant end) throws ModbusException;
    }

    private static double[] run(long seed, Passing passing) throws ModbusException {
        try (SimulatedBench bench = SimulatedBench.start(BenchParameters.portable(), seed, START, 0);
                Wire wire = new Wire(bench)) {
            wire.ask(30, 80);
            passing.until(bench, wire, START.plus(WHOLE));
            wire.ask(15, 10);
            passing.until(bench, wire, START.plus(WHOLE).plus(WHOLE));
            return new double[] {
                bench.trueValue("chamber", Quantity.TEMPERATURE),
                bench.trueValue("chamber", Quantity.RELATIVE_HUMIDITY),
                bench.trueValue("mirror", Quantity.DEW_POINT),
                bench.trueError("C-3310", Quantity.RELATIVE_HUMIDITY),
                wire.input(Units.MIRROR, 0, 1).getShort(),
                wire.input(Units.THERMOMETER, 0, 2).getFloat(),
                wire.input(Units.FIRST_TRANSMITTER, 0, 1).getShort()
            };
        }
    }

    @Test
    void the_way_time_is_cut_up_changes_no_bit() throws ModbusException {
        Random pieces = new Random(5);
        double[] inOneGo = run(21, (bench, wire, end) -> bench.advanceTo(end));
        double[] inPieces = run(21, (bench, wire, end) -> {
            while (bench.now().isBefore(end)) {
                Instant next = bench.now().plusMillis(1 + pieces.nextInt(90_000));
                bench.advanceTo(next.isAfter(end) ? end : next);
            }
        });
        assertArrayEquals(inOneGo, inPieces);
    }

    @Test
    void looking_changes_no_bit() throws ModbusException {
        double[] unseen = run(22, (bench, wire, end) -> bench.advanceTo(end));
        double[] watched = run(22, (bench, wire, end) -> {
            while (bench.now().isBefore(end)) {
                bench.advanceTo(bench.now().plusSeconds(60));
                var unusedWords = wire.input(Units.MIRROR, 0, 2);
                double unusedError = bench.trueError("A-1042", Quantity.RELATIVE_HUMIDITY);
            }
        });
        assertArrayEquals(unseen, watched);
    }

    @Test
    void another_seed_is_another_bench() throws ModbusException {
        double[] one = run(23, (bench, wire, end) -> bench.advanceTo(end));
        double[] other = run(24, (bench, wire, end) -> bench.advanceTo(end));
        assertFalse(Arrays.equals(one, other));
    }
}
