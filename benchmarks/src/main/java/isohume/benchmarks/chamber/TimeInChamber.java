// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.chamber;

import isohume.benchmarks.Machine;
import isohume.benchmarks.Options;
import isohume.benchmarks.Program;
import isohume.benchmarks.Report;
import isohume.device.sheet.SheetError;
import isohume.simulator.BenchParameters;
import isohume.station.job.SimulatedBenchSheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/**
 * A plan of nineteen points by common practice and by Isohume, on simulated benches: hours, U and whether the truth lies
 * within it. The property {@code benches} names the folder of the usual benches.
 */
public final class TimeInChamber {
    private static final int SEEDS = 10;

    private TimeInChamber() {}

    public static void main(String[] arguments) {
        Program program = TimeInChamber::measure;
        System.exit(program.run(arguments, "--benches DIR", "--seeds N", "--random N", "--seed N"));
    }

    static Report measure(Options options) throws IOException {
        Machine machine = Machine.here();
        Comparison comparison = new Comparison(done(jobs(options)));
        comparison.remarks().forEach(System.err::println);
        return new Report(machine, Map.of(), comparison.figures(), comparison.parts());
    }

    /** Every job has a seed of its own, so that no bench has the luck of another. */
    private static List<Job> jobs(Options options) throws IOException {
        long seed = options.whole("--seed", 0, 1);
        long seeds = options.quick() ? 1 : options.whole("--seeds", 1, SEEDS);
        List<Job> jobs = new ArrayList<>();
        for (Map.Entry<String, BenchParameters> bench : benches(options, seed).entrySet()) {
            for (long i = 0; i < seeds; i++) {
                jobs.add(Job.of(bench.getKey(), bench.getValue(), seed++));
            }
        }
        return jobs;
    }

    private static Map<String, BenchParameters> benches(Options options, long seed) throws IOException {
        Map<String, BenchParameters> benches = new LinkedHashMap<>();
        if (options.own().containsKey("--random")) {
            long most = seed + options.whole("--random", 1, 1);
            for (long i = seed; i < most; i++) {
                benches.put("drawn with " + i, RandomBench.drawn(i));
            }
            return benches;
        }
        Path folder = Path.of(options.own().getOrDefault("--benches", System.getProperty("benches", "")));
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .limit(options.quick() ? 1 : Long.MAX_VALUE)
                    .forEach(file -> benches.put(name(file), parameters(file)));
        }
        if (benches.isEmpty()) {
            throw new IllegalArgumentException(folder + " has no bench in it; a bench is a file that ends with .yaml");
        }
        return benches;
    }

    private static BenchParameters parameters(Path file) {
        try {
            return SimulatedBenchSheet.read(file);
        } catch (SheetError wrong) {
            throw new IllegalArgumentException(wrong.getMessage(), wrong);
        }
    }

    private static String name(Path file) {
        return file.getFileName().toString().replaceFirst("\\.yaml$", "");
    }

    /** Each job by both ways, as many at a time as there are cores. */
    private static List<Comparison.Pair> done(List<Job> jobs) throws IOException {
        AtomicInteger done = new AtomicInteger();
        try (ExecutorService workers =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors())) {
            List<Future<Comparison.Pair>> pending = jobs.stream()
                    .map(job -> workers.submit(() -> {
                        var pair = new Comparison.Pair(job, new ByTheClock().work(job), new ByIsohume().work(job));
                        System.err.printf("%d of %d jobs done\r", done.incrementAndGet(), jobs.size());
                        return pair;
                    }))
                    .toList();
            List<Comparison.Pair> pairs = new ArrayList<>();
            for (Future<Comparison.Pair> one : pending) {
                pairs.add(one.get());
            }
            return pairs;
        } catch (ExecutionException failed) {
            throw new IOException("a job failed: " + failed.getCause(), failed);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", hurried);
        }
    }
}
