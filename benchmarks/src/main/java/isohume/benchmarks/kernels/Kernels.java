// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.kernels;

import isohume.benchmarks.Figure;
import isohume.benchmarks.Machine;
import isohume.benchmarks.Options;
import isohume.benchmarks.Program;
import isohume.benchmarks.Report;
import java.util.List;
import java.util.Map;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.openjdk.jmh.util.Version;

/** Runs the kernels one after the other; the whole takes less than three minutes. */
public final class Kernels {
    private Kernels() {}

    public static void main(String[] arguments) {
        Program program = Kernels::measure;
        System.exit(program.run(arguments));
    }

    static Report measure(Options options) {
        Machine machine = Machine.here(); // its load before we add our own
        ChainedOptionsBuilder plan = new OptionsBuilder()
                .include("isohume\\.benchmarks\\.kernels\\..*")
                .verbosity(VerboseMode.SILENT)
                .shouldFailOnError(true)
                .forks(options.quick() ? 0 : 1)
                .warmupIterations(options.quick() ? 0 : 4)
                .warmupTime(TimeValue.seconds(1))
                .measurementIterations(options.quick() ? 1 : 5)
                .measurementTime(options.quick() ? TimeValue.milliseconds(5) : TimeValue.seconds(1));
        try {
            List<Figure> figures = new Runner(plan.build())
                    .run().stream().map(run -> figure(run.getPrimaryResult())).toList();
            return new Report(machine, Map.of("JMH", Version.getPlainVersion()), figures);
        } catch (RunnerException failed) {
            throw new IllegalStateException("a kernel failed: " + failed.getMessage(), failed);
        }
    }

    private static Figure figure(Result<?> result) {
        return Figure.of(result.getLabel(), result.getStatistics().getPercentile(50), result.getScoreUnit());
    }
}
