// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * What the figures were measured on.
 *
 * @param load how many threads wanted to run in the last minute, on average; below zero where nobody counts them
 */
public record Machine(String processor, int cores, String system, String java, double load) {
    private static final Path PROCESSORS = Path.of("/proc/cpuinfo");

    public static Machine here() {
        return new Machine(
                processorName(),
                Runtime.getRuntime().availableProcessors(),
                System.getProperty("os.name") + " " + System.getProperty("os.arch"),
                System.getProperty("java.vm.name") + " " + System.getProperty("java.runtime.version"),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    private static String processorName() {
        if (!Files.isReadable(PROCESSORS)) {
            return "unnamed processor";
        }
        try (Stream<String> lines = Files.lines(PROCESSORS)) {
            return lines.filter(line -> line.startsWith("model name"))
                    .map(line -> line.substring(line.indexOf(':') + 1).strip())
                    .findFirst()
                    .orElse("unnamed processor");
        } catch (IOException unreadable) {
            return "unnamed processor";
        }
    }

    /** Whether others want the processor too, so that times by the clock mean little. */
    public boolean busy() {
        return load > 0.5 * cores;
    }

    String words() {
        return String.format(
                Locale.ROOT, "%s, %d cores, %s, %s, load %.1f", processor, cores, system, java, Math.max(0, load));
    }

    String json() {
        return "{\"processor\": " + Report.quoted(processor) + ", \"cores\": " + cores + ", \"system\": "
                + Report.quoted(system) + ", \"java\": " + Report.quoted(java) + ", \"load\": " + load + "}";
    }
}
