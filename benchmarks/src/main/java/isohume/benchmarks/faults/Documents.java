// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.faults;

import isohume.device.modbus.DeviceDescription;
import isohume.simulator.SimulatedBench;
import isohume.station.bench.OpenBench;
import isohume.station.job.Worksheet;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The demonstration's documents with a shorter plan, and devices that are given up on sooner. */
final class Documents {
    private static final String RULES = """
            rules:
              window-minutes: 3
              soak-minutes: 4
              temperature-soak-minutes: 6
              readings: 15
              longest-minutes: 150
            """;

    private Documents() {}

    static Worksheet worksheet(String points) {
        return Worksheet.read(
                name -> {
                    String text = text(Worksheet.class, "/isohume/station/demo/" + name);
                    return name.equals("plan.yaml")
                            ? text.substring(0, text.indexOf("\npoints:")) + "\npoints:\n" + points + RULES
                            : text;
                },
                "plan.yaml");
    }

    /** @param contact whether the chamber tells of its door */
    static OpenBench open(Worksheet worksheet, SimulatedBench bench, NightTime time, boolean contact) {
        return OpenBench.of(worksheet, name -> description(name, bench, contact), time);
    }

    private static DeviceDescription description(String name, SimulatedBench bench, boolean contact) {
        String text = text(SimulatedBench.class, "devices/" + name).replace("timeout-ms: 1000", "timeout-ms: 120");
        String told = contact ? text : text.replace("bits: {0: the door is open, ", "bits: {");
        return DeviceDescription.parse(told, name).withAddress("127.0.0.1", bench.port());
    }

    private static String text(Class<?> neighbour, String name) {
        try (InputStream in = Objects.requireNonNull(neighbour.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
