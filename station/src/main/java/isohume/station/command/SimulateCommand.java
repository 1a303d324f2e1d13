// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.device.Channel;
import isohume.device.modbus.ModbusDescription;
import isohume.simulator.BenchParameters;
import isohume.simulator.Pace;
import isohume.simulator.SimulatedBench;
import isohume.station.job.SimulatedBenchSheet;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The simulated bench alone, for whoever wants to read it with a program of their own. */
@Command(
        name = "simulate",
        description =
                "Runs the simulated bench on a port of this machine until it is stopped with Ctrl-C: a chamber, its"
                        + " references and three instruments, over Modbus TCP.",
        footer = {"", "Example: isohume simulate --speed 60"},
        mixinStandardHelpOptions = true)
final class SimulateCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private CommandSpec spec;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "8641",
            description = "TCP port on this machine, ${DEFAULT-VALUE}; 0 for any free one")
    private int port;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "decides all that is drawn: ${DEFAULT-VALUE}")
    private long seed;

    @Option(
            names = "--speed",
            paramLabel = "X",
            defaultValue = "1",
            description = "how many times as fast as the clock, 0.001 to 20000: ${DEFAULT-VALUE}")
    private double speed;

    @Option(
            names = "--bench",
            paramLabel = "FILE.yaml",
            description = "what differs from the usual bench; docs/formats/simulated-bench.md has the keys")
    private @Nullable Path file;

    @Option(names = "--json", description = "print the address and the devices as JSON")
    private boolean json;

    @Override
    public Integer call() {
        BenchParameters parameters = file == null ? BenchParameters.portable() : SimulatedBenchSheet.read(file);
        InstantSource clock = InstantSource.system();
        Instant start = clock.instant().truncatedTo(ChronoUnit.SECONDS);
        try (SimulatedBench bench = SimulatedBench.start(parameters, seed, start, Address.port(spec, port))) {
            Pace pace = pace(bench, clock);
            print(bench);
            pace.run(); // until its thread is interrupted, or the program is stopped
        }
        return Isohume.DONE;
    }

    private Pace pace(SimulatedBench bench, InstantSource clock) {
        try {
            return Pace.of(bench, speed, clock);
        } catch (IllegalArgumentException beyond) {
            throw new ParameterException(spec.commandLine(), String.valueOf(beyond.getMessage()), beyond);
        }
    }

    private void print(SimulatedBench bench) {
        PrintWriter answer = spec.commandLine().getOut();
        List<ModbusDescription> devices = bench.descriptions();
        if (json) {
            answer.println(tree(bench, devices));
        } else {
            answer.println("Modbus TCP at " + devices.getFirst().place());
            TextTable table = new TextTable(List.of(">unit", "device", "what it is", "channels"));
            for (ModbusDescription device : devices) {
                String channels =
                        device.channels().stream().map(SimulateCommand::text).collect(Collectors.joining(", "));
                table.row(List.of(String.valueOf(device.unit()), device.id(), device.title(), channels));
            }
            table.write(answer);
        }
        answer.flush();
        PrintWriter messages = spec.commandLine().getErr();
        messages.println("seed " + seed + ", " + speed + " times as fast as the clock, from " + bench.now()
                + "; stop it with Ctrl-C");
        messages.flush();
    }

    private static String text(Channel channel) {
        String unit = channel.quantity().unit();
        return unit.isEmpty() ? channel.name() : channel.name() + " [" + unit + "]";
    }

    private ObjectNode tree(SimulatedBench bench, List<ModbusDescription> devices) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("host", SimulatedBench.HOST).put("port", bench.port());
        node.put("seed", seed).put("speed", speed).put("start", bench.now().toString());
        for (ModbusDescription device : devices) {
            ObjectNode one = node.withArray("/devices").addObject();
            one.put("unit", device.unit()).put("id", device.id()).put("title", device.title());
            for (Channel channel : device.channels()) {
                one.withArray("/channels")
                        .addObject()
                        .put("name", channel.name())
                        .put("quantity", channel.quantity().key())
                        .put("unit", channel.quantity().unit());
            }
        }
        return node;
    }
}
