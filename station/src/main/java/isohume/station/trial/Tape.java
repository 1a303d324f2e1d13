// SPDX-License-Identifier: Apache-2.0
package isohume.station.trial;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/** The last lines of what went over a line. Safe for any thread; takes no more room however long it runs. */
final class Tape {
    static final int MOST_LINES = 200;
    private static final int LONGEST_LINE = 320; // characters; 64 bytes and the text that they are, and some more

    private final Deque<String> lines = new ArrayDeque<>();
    private long leftOut;

    synchronized void add(String line) {
        if (lines.size() == MOST_LINES) {
            lines.removeFirst();
            leftOut++;
        }
        lines.addLast(line.length() <= LONGEST_LINE ? line : line.substring(0, LONGEST_LINE) + " …");
    }

    synchronized List<String> lines() {
        return List.copyOf(lines);
    }

    /** How many earlier lines are gone. */
    synchronized long leftOut() {
        return leftOut;
    }
}
