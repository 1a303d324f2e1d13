// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.station.Program;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program's commands. */
@Command(
        name = "isohume",
        description = "A workbench for people who calibrate humidity and temperature instruments.",
        versionProvider = Isohume.Version.class,
        mixinStandardHelpOptions = true,
        subcommands = {
            DemoCommand.class,
            ServeCommand.class,
            EnterCommand.class,
            EvaluateCommand.class,
            PlanCommand.class,
            ImportCommand.class,
            ConvertCommand.class,
            VerifyCommand.class,
            SimulateCommand.class,
            DeviceCommand.class,
            ValidateCommand.class,
            HelpCommand.class
        },
        synopsisSubcommandLabel = "COMMAND")
public final class Isohume implements Callable<Integer> {
    static final int DONE = 0;
    static final int FAILED = 1;
    static final int WRONG_USE = 2;

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private CommandSpec spec;

    /** Runs a command and says with which code to exit. */
    public static int run(String... arguments) {
        return run(writer(System.out), writer(System.err), arguments);
    }

    /** The same with answers and messages going elsewhere. */
    static int run(PrintWriter answers, PrintWriter messages, String... arguments) {
        return new CommandLine(new Isohume())
                .setOut(answers)
                .setErr(messages)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(Failure::tell)
                .setParameterExceptionHandler(Failure::tellWrongUse)
                .execute(arguments);
    }

    /**
     * What goes to a file or to another program is UTF-8 wherever the program runs; a terminal that has a code page of
     * its own, other than its system's, is written to in that.
     */
    private static PrintWriter writer(PrintStream to) {
        boolean ownCodePage = !to.charset().name().equals(System.getProperty("native.encoding"));
        Charset charset =
                ownCodePage && !to.charset().equals(StandardCharsets.US_ASCII) ? to.charset() : StandardCharsets.UTF_8;
        return new PrintWriter(new OutputStreamWriter(to, charset), true);
    }

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getOut());
        return DONE;
    }

    /** The program's name and version. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {Program.title()};
        }
    }
}
