// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.compare;

import com.sun.management.OperatingSystemMXBean;
import isohume.benchmarks.Conditions;
import isohume.benchmarks.HumidityBudget;
import isohume.uncertainty.Budget;
import isohume.uncertainty.montecarlo.MonteCarlo;
import isohume.uncertainty.montecarlo.Propagation;
import isohume.uncertainty.montecarlo.Settings;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;

/** Isohume as a {@link Contestant}: a process of its own whose heap is limited to 64 MB. */
final class Isohume {
    private static final int MILLION = 1_000_000;
    private static final int SHOWN = 1_000;

    private final Conditions given = Conditions.drawn();
    private final AirWork air = new AirWork(given);
    private final Budget budget = HumidityBudget.evaluate();
    private final int cores = Runtime.getRuntime().availableProcessors();
    private final int trials;
    private long seed;

    private Isohume(int trials) {
        this.trials = trials;
    }

    static List<String> command() {
        return command(MILLION);
    }

    /** With so many trials for each Monte Carlo run. */
    static List<String> command(int trials) {
        return List.of(
                System.getProperty("java.home") + "/bin/java",
                "-Xmx64m",
                "-XX:+UseSerialGC", // as ./isohume has it
                "-cp",
                System.getProperty("java.class.path"),
                Isohume.class.getName(),
                String.valueOf(trials));
    }

    public static void main(String[] arguments) throws IOException {
        Isohume isohume = new Isohume(Integer.parseInt(arguments[0]));
        BufferedReader requests = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String line = requests.readLine(); line != null; line = requests.readLine()) {
            System.out.println(isohume.answer(line.split(" ")));
        }
    }

    private String answer(String[] request) {
        return switch (request[0]) {
            case "version" -> "strict, " + cores + " threads for Monte Carlo, JDK " + Runtime.version();
            case "load" -> "ok"; // the file was drawn from the same seed
            case "give" ->
                Arrays.stream(give(request[1])).mapToObj(String::valueOf).collect(Collectors.joining(" "));
            case "time" -> time(request[1], Integer.parseInt(request[2]));
            default -> "not understood";
        };
    }

    private double[] give(String work) {
        return switch (work) {
            case "heap" -> new double[] {Runtime.getRuntime().maxMemory() / 1048576.0};
            case "budget" -> new double[] {budget.value(), budget.combined()};
            case "montecarlo" -> figures(propagate());
            default -> Arrays.copyOf(air.reckon(work), SHOWN);
        };
    }

    private String time(String work, int milliseconds) {
        return switch (work) {
            case "budget" -> clocked(milliseconds, 1, HumidityBudget::evaluate, Isohume::threadNanos);
            case "montecarlo" -> clocked(milliseconds, trials, this::propagate, Isohume::processNanos);
            default -> clocked(milliseconds, given.count(), () -> air.reckon(work), Isohume::threadNanos);
        };
    }

    private Propagation propagate() {
        seed++;
        return MonteCarlo.propagate(budget, new Settings(seed, 2, 1e9, trials, cores, Settings.Kind.SYMMETRIC));
    }

    private static double[] figures(Propagation found) {
        return new double[] {
            found.standardUncertainty(),
            found.symmetric().low(),
            found.symmetric().high(),
            found.shortest().low(),
            found.shortest().high()
        };
    }

    private interface Work {
        Object once();
    }

    private static String clocked(int milliseconds, int values, Work work, LongSupplier processor) {
        long clock = System.nanoTime();
        long spent = processor.getAsLong();
        long elapsed;
        long times = 0;
        do {
            Object unused = work.once();
            assert unused != null;
            times++;
            elapsed = System.nanoTime() - clock;
        } while (elapsed < milliseconds * 1_000_000L);
        double all = (double) times * values;
        return elapsed / all + " " + (processor.getAsLong() - spent) / all;
    }

    private static long threadNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static long processNanos() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }
}
