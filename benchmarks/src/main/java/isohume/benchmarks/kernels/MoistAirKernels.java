// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.kernels;

import isohume.benchmarks.Conditions;
import isohume.moistair.Formulation;
import isohume.moistair.HumiditySlopes;
import isohume.moistair.MoistAir;
import isohume.moistair.MoistAirBatch;
import isohume.moistair.Psychrometer;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Moist air by the default formulation: one question a call, and the same in batches; time for each value. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class MoistAirKernels {
    private static final int COUNT = 10_000;

    private final MoistAir air = MoistAir.by(Formulation.DEFAULT);
    private final MoistAirBatch batch = air.batch();
    private final MoistAirBatch preview = air.preview();
    private final Conditions given = Conditions.drawn();
    private final double[] out = new double[COUNT];
    private int next;

    @Benchmark
    public double relativeHumidity() {
        int i = step();
        return air.relativeHumidity(point(i), pressure(i), temperature(i), pressure(i))
                .fraction();
    }

    @Benchmark
    public double dewPoint() {
        int i = step();
        RelativeHumidity humidity = RelativeHumidity.ofFraction(given.humidity()[i]);
        return air.dewPoint(humidity, temperature(i), pressure(i), pressure(i), Phase.WATER)
                .celsius();
    }

    @Benchmark
    public HumiditySlopes relativeHumiditySlopes() {
        int i = step();
        return air.relativeHumiditySlopes(point(i), pressure(i), temperature(i), pressure(i));
    }

    @Benchmark
    public double wetBulb() {
        int i = step();
        return air.at(temperature(i), pressure(i))
                .withDewPoint(point(i))
                .wetBulb(Psychrometer.assmannWater())
                .celsius();
    }

    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double[] relativeHumidityBatch() {
        batch.relativeHumidity(given.dewPoint(), given.pressure(), given.air(), given.pressure(), Phase.WATER, out);
        return out;
    }

    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double[] relativeHumidityPreview() {
        preview.relativeHumidity(given.dewPoint(), given.pressure(), given.air(), given.pressure(), Phase.WATER, out);
        return out;
    }

    @Benchmark
    @OperationsPerInvocation(COUNT)
    public double[] dewPointBatch() {
        batch.dewPoint(given.humidity(), given.air(), given.pressure(), given.pressure(), Phase.WATER, out);
        return out;
    }

    private int step() {
        next = next + 1 == COUNT ? 0 : next + 1;
        return next;
    }

    private DewPoint point(int i) {
        return DewPoint.overWater(Temperature.ofCelsius(given.dewPoint()[i]));
    }

    private Temperature temperature(int i) {
        return Temperature.ofCelsius(given.air()[i]);
    }

    private Pressure pressure(int i) {
        return Pressure.ofPascals(given.pressure()[i]);
    }
}
