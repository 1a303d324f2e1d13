// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.device.protocol.Protocol;
import isohume.station.paper.Papers;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Connecting instruments: a description to begin with, and whether it works. */
@Command(
        name = "device",
        description = "Connects an instrument: writes a description to begin with, and tries it out.",
        mixinStandardHelpOptions = true,
        subcommands = {DeviceTryCommand.class, DeviceCommand.New.class},
        synopsisSubcommandLabel = "(try | new)")
final class DeviceCommand implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getErr());
        return Isohume.WRONG_USE;
    }

    /** A description to begin with. */
    @Command(
            name = "new",
            description = "Writes a description of an invented device with comments, to be changed into one of yours.",
            footer = {"", "Example: isohume device new text --out probe.yaml"},
            mixinStandardHelpOptions = true)
    static final class New implements Callable<Integer> {
        @Spec
        @SuppressWarnings("NullAway.Init") // picocli sets it
        private CommandSpec spec;

        @Parameters(paramLabel = "PROTOCOL", description = "one of modbus-tcp, modbus-rtu, text, scpi, mqtt, http-json")
        @SuppressWarnings("NullAway.Init") // picocli sets it
        private String protocol;

        @Option(names = "--out", paramLabel = "FILE", description = "where to; a file that is there is kept as it is")
        private @Nullable Path out;

        @Override
        public Integer call() throws IOException {
            if (!Protocol.keys().contains(protocol)) {
                throw new ParameterException(
                        spec.commandLine(),
                        "there is no protocol " + protocol + "; there are " + String.join(", ", Protocol.keys()));
            }
            String text = Protocol.ofKey(protocol).scaffold();
            if (out == null) {
                spec.commandLine().getOut().print(text);
                spec.commandLine().getOut().flush();
            } else if (Files.exists(out)) {
                spec.commandLine().getErr().println(out + " is there already and was kept; choose another name");
                return Isohume.FAILED;
            } else {
                Papers.put(out, text.getBytes(StandardCharsets.UTF_8));
            }
            return Isohume.DONE;
        }
    }
}
