// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.faults;

import isohume.benchmarks.Figure;
import isohume.benchmarks.Machine;
import isohume.benchmarks.Options;
import isohume.benchmarks.Parts;
import isohume.benchmarks.Program;
import isohume.benchmarks.Report;
import isohume.run.Ending;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;

/** Every fault at random moments of many runs, and what became of chamber, readings, facts and endings. */
public final class Faults {
    private static final long RUNS = 300;

    private Faults() {}

    public static void main(String[] arguments) {
        Program program = Faults::measure;
        System.exit(program.run(arguments, "--runs N", "--seed N", "--only FAULT"));
    }

    static Report measure(Options options) throws IOException {
        Machine machine = Machine.here();
        String only = options.own().getOrDefault("--only", "");
        List<Trouble> troubles = List.of(Trouble.values()).stream()
                .filter(t -> only.isEmpty() || t.words().equals(only))
                .toList();
        if (troubles.isEmpty()) {
            throw new IllegalArgumentException("no fault is called " + only);
        }
        long runs = options.quick() ? troubles.size() : options.whole("--runs", 1, RUNS);
        long seed = options.whole("--seed", 0, 1);
        List<Outcome> outcomes = passed(troubles, runs, seed);
        outcomes.stream()
                .filter(o -> !o.good() || !only.isEmpty())
                .forEach(o -> System.err.println("seed " + o.seed() + ", "
                        + o.trouble().words() + ": " + String.join("; ", o.objections()) + o.story()));
        return new Report(machine, Map.of(), figures(outcomes), parts(troubles, outcomes));
    }

    private static List<Outcome> passed(List<Trouble> troubles, long runs, long seed) throws IOException {
        AtomicInteger done = new AtomicInteger();
        try (ExecutorService workers =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors())) {
            List<Future<Outcome>> pending = new ArrayList<>();
            for (long i = 0; i < runs; i++) {
                Trouble trouble = troubles.get((int) (i % troubles.size()));
                long own = seed + i;
                pending.add(workers.submit(() -> {
                    Outcome outcome = Nights.pass(trouble, own);
                    System.err.printf("%d of %d runs done\r", done.incrementAndGet(), runs);
                    return outcome;
                }));
            }
            List<Outcome> outcomes = new ArrayList<>();
            for (Future<Outcome> one : pending) {
                outcomes.add(one.get());
            }
            return outcomes;
        } catch (ExecutionException failed) {
            throw new IOException("a run failed: " + failed.getCause(), failed);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", hurried);
        }
    }

    private static List<Figure> figures(List<Outcome> all) {
        return List.of(
                Figure.of("runs", all.size(), ""),
                Figure.atMost(
                        0, "runs that leave the chamber neither at rest nor known", count(all, o -> !o.safe()), ""),
                Figure.atMost(0, "false readings in results", sum(all, Outcome::falseReadings), ""),
                Figure.atMost(0, "acknowledged facts lost", sum(all, Outcome::lost), ""),
                Figure.atMost(0, "runs with something not explained", count(all, o -> !o.good()), ""));
    }

    /** What became of the runs with each fault. */
    private static Parts parts(List<Trouble> troubles, List<Outcome> all) {
        Map<String, List<Figure>> lines = new LinkedHashMap<>();
        for (Trouble trouble : troubles) {
            List<Outcome> own = all.stream().filter(o -> o.trouble() == trouble).toList();
            lines.put(
                    trouble.words(),
                    List.of(
                            Figure.of("runs", own.size(), ""),
                            Figure.of("completed", count(own, o -> o.ending() == Ending.COMPLETED), ""),
                            Figure.of("stopped", count(own, o -> o.ending() == Ending.STOPPED), ""),
                            Figure.of("holds", sum(own, Outcome::holds), ""),
                            Figure.of("noticed in", count(own, o -> o.noticed() > 0), ""),
                            Figure.of("points", sum(own, Outcome::points), ""),
                            Figure.of("left out", sum(own, Outcome::left), ""),
                            Figure.of("taken again", sum(own, Outcome::withdrawn), ""),
                            Figure.of("false", sum(own, Outcome::falseReadings), ""),
                            Figure.of("lost", sum(own, Outcome::lost), ""),
                            Figure.of("objections", sum(own, o -> o.objections().size()), "")));
        }
        return new Parts("fault", lines);
    }

    private static double count(List<Outcome> all, Predicate<Outcome> what) {
        return (double) all.stream().filter(what).count();
    }

    private static double sum(List<Outcome> all, ToLongFunction<Outcome> what) {
        return (double) all.stream().mapToLong(what).sum();
    }
}
