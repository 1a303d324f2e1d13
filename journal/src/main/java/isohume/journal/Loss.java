// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Says in plain words what happened to a journal, what was kept and what to do. */
final class Loss {
    private static final int PRIMARY = 0xff; // SQLite's extended codes carry the plain one in the lowest byte

    private Loss() {}

    static JournalLost whileWriting(Path file, Duration patience, StreamName stream, SQLException cause) {
        return new JournalLost(
                cause(file, patience, cause) + " The fact for " + stream + " was not written; all facts"
                        + " acknowledged before are kept. " + remedy(cause),
                cause);
    }

    static JournalLost whileReading(Path file, Duration patience, SQLException cause) {
        return new JournalLost(
                cause(file, patience, cause) + " Nothing was read and nothing was changed. " + remedy(cause), cause);
    }

    static JournalLost gone(Path file, String what) {
        return new JournalLost("The journal " + file + " was opened, but " + what + ". Nothing further is written."
                + " Stop the program, leave the folder as it is, verify the journal and put back a backup if it is"
                + " not whole.");
    }

    static JournalLost altered(Path file, String what, Throwable cause) {
        return new JournalLost(
                "The journal " + file + " is not what it was: " + what + ". It was not read further and nothing was"
                        + " changed. Verify the journal, and put back a backup.",
                cause);
    }

    /** Whether a file was not even looked at, so that nothing can be said about it. */
    static boolean isNoAccess(SQLException cause) {
        return switch (code(cause) & PRIMARY) {
            case 3, 5, 6, 8, 14, 23 -> true;
            default -> false;
        };
    }

    static boolean isNoDatabase(SQLException cause) {
        return (code(cause) & PRIMARY) == SQLiteErrorCode.SQLITE_NOTADB.code;
    }

    private static String cause(Path file, Duration patience, SQLException cause) {
        return switch (code(cause) & PRIMARY) {
                    case 5, 6 ->
                        "Another program has held the journal " + file + " for longer than " + patience.toMillis()
                                + " ms.";
                    case 13 -> "The disk is full: no room for the journal " + file + ".";
                    case 3, 8, 14, 23 -> "The journal " + file + " may not be opened or written.";
                    case 10 -> "The disk reported an error at the journal " + file + ".";
                    case 11, 26 -> "The file " + file + " is damaged or is not a journal.";
                    default -> "The journal " + file + " failed.";
                }
                + " (" + cause.getMessage() + ")";
    }

    private static String remedy(SQLException cause) {
        return switch (code(cause) & PRIMARY) {
            case 5, 6 -> "Close the other program and try again.";
            case 13 -> "Free some space on that disk and try again.";
            case 3, 8, 14, 23 -> "Check that the file and its folder are there and may be written by this user.";
            case 10 -> "Check the disk, verify the journal and make a backup on another disk.";
            case 11, 26 -> "Check the name; if it is right, verify the journal and put back a backup.";
            default -> "Verify the journal; if it is whole, try again.";
        };
    }

    private static int code(SQLException cause) {
        return cause instanceof SQLiteException known ? known.getResultCode().code : SQLiteErrorCode.SQLITE_ERROR.code;
    }
}
