// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.station.Program;
import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.IVersionProvider;

/** The program's commands. */
@Command(
        name = "isohume",
        description = "A workbench for people who calibrate humidity and temperature instruments.",
        versionProvider = Isohume.Version.class,
        mixinStandardHelpOptions = true,
        subcommands = {DemoCommand.class, ServeCommand.class, HelpCommand.class},
        synopsisSubcommandLabel = "COMMAND")
public final class Isohume implements Callable<Integer> {
    static final int DONE = 0;
    static final int FAILED = 1;
    static final int WRONG_USE = 2;

    /** Runs a command and says with which code to exit. */
    public static int run(String... arguments) {
        return new CommandLine(new Isohume())
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(Failure::tell)
                .execute(arguments);
    }

    @Override
    public Integer call() {
        CommandLine.usage(this, System.out);
        return DONE;
    }

    /** The program's name and version. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {Program.title()};
        }
    }

    /** A failure told in words; nobody is shown a stack trace for a typing error. */
    private static final class Failure {
        private static int tell(Exception failure, CommandLine command, CommandLine.ParseResult parsed) {
            String message = failure instanceof IOException
                    ? failure.getClass().getSimpleName().replace("Exception", "") + ": " + failure.getMessage()
                    : String.valueOf(failure.getMessage());
            System.err.println("isohume " + command.getCommandName() + ": " + message);
            return FAILED;
        }
    }
}
