// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** A failure told in words; nobody is shown a stack trace for a typing error. */
final class Failure {
    private Failure() {}

    /** The work failed. */
    static int tell(Exception failure, CommandLine command, CommandLine.ParseResult parsed) {
        print(command, message(failure));
        return Isohume.FAILED;
    }

    /** The command was used wrongly. */
    static int tellWrongUse(ParameterException wrong, String... arguments) {
        CommandLine command = wrong.getCommandLine();
        print(command, String.valueOf(wrong.getMessage()));
        boolean unused = UnmatchedArgumentException.printSuggestions(wrong, command.getErr());
        command.getErr().println("“" + command.getCommandSpec().qualifiedName() + " --help” tells how it is used");
        return Isohume.WRONG_USE;
    }

    private static void print(CommandLine command, String message) {
        command.getErr().println(command.getCommandSpec().qualifiedName() + ": " + message);
        command.getErr().flush();
    }

    private static String message(Exception failure) {
        return switch (failure) {
            case UncheckedIOException wrapped -> message(Objects.requireNonNull(wrapped.getCause()));
            case FileSystemException file -> message(file);
            case IOException other -> other.getMessage() == null ? other.toString() : other.getMessage();
            case ReadOnlyFileSystemException readOnly ->
                "nothing can be written there; choose a folder that may be written";
            case NullPointerException bug -> fault(bug);
            case ClassCastException bug -> fault(bug);
            case IndexOutOfBoundsException bug -> fault(bug);
            default -> failure.getMessage() == null ? fault(failure) : failure.getMessage();
        };
    }

    private static String message(FileSystemException trouble) {
        String file = trouble.getFile();
        return switch (trouble) {
            case NoSuchFileException none -> "there is no file " + file + "; check the name and the folder";
            case AccessDeniedException denied ->
                file + " may not be read or written by this user; nothing was changed there; choose another place or"
                        + " have the permission changed";
            case FileAlreadyExistsException other ->
                file + " is there already and is not a folder; nothing was changed; choose another name";
            default ->
                file + ": " + (trouble.getReason() == null ? "cannot be used" : trouble.getReason())
                        + "; check the name, the disk and the permissions";
        };
    }

    private static String fault(Exception bug) {
        StackTraceElement[] trace = bug.getStackTrace();
        return "a fault in this program (" + bug + (trace.length == 0 ? "" : " at " + trace[0])
                + "); please report it with what you asked for. Nothing further was done.";
    }
}
