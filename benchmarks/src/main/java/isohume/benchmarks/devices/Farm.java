// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.devices;

import isohume.simulator.BenchParameters;
import isohume.simulator.SimulatedBench;
import isohume.simulator.Spoken;
import java.io.IOException;
import java.time.Instant;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The simulated devices, in a process of their own so that their work is not counted: prints a port for each device and
 * answers on them until its input ends.
 */
public final class Farm {
    private Farm() {}

    static Spoken spoken(int device) {
        return switch (device % 4) {
            case 0 -> Spoken.MODBUS_TCP;
            case 1 -> Spoken.MODBUS_RTU;
            case 2 -> Spoken.TEXT;
            default -> Spoken.SCPI;
        };
    }

    public static void main(String[] arguments) throws IOException {
        int devices = Integer.parseInt(arguments[0]);
        try (SimulatedBench bench = SimulatedBench.start(BenchParameters.portable(), 1, Instant.EPOCH, 0)) {
            System.out.println(IntStream.range(0, devices)
                    .mapToObj(device -> String.valueOf(bench.speak(spoken(device), 0)))
                    .collect(Collectors.joining(" ")));
            int end = System.in.read();
            assert end < 0;
        }
    }
}
