// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import java.io.Console;
import java.io.PrintStream;
import org.jspecify.annotations.Nullable;

/** One line on stderr that is written over where a person watches, and one line after the other where a file does. */
final class ProgressLine {
    private final PrintStream to;
    private final boolean watched;
    private int width;

    ProgressLine(PrintStream to, @Nullable Console console) {
        this.to = to;
        this.watched = console != null;
    }

    void show(String text) {
        if (watched) {
            to.print("\r" + text + " ".repeat(Math.max(0, width - text.length())));
            to.flush();
            width = text.length();
        } else {
            to.println(text);
        }
    }

    /** Leaves what was shown last and begins a new line. */
    void end() {
        if (watched && width > 0) {
            to.println();
        }
    }
}
