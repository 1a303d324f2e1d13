// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import java.io.IOException;
import java.io.Reader;

/** A text in which columns are set apart by blanks, with one tab in place of each run of them; those at the ends of a line go. */
final class BlanksReader extends Reader {
    private static final int NONE = -2;

    private final Reader text;
    private final int least;
    private boolean lineBegins = true;
    private int held = NONE;

    /** @param least so many blanks set two cells apart; fewer belong to the cell */
    BlanksReader(Reader text, int least) {
        this.text = text;
        this.least = least;
    }

    @Override
    public int read() throws IOException {
        if (held != NONE) {
            int next = held;
            held = NONE;
            return next;
        }
        int blanks = 0;
        int next = text.read();
        for (; next == ' ' || next == '\t'; next = text.read()) {
            blanks += next == '\t' ? least : 1;
        }
        boolean lineEnds = next < 0 || next == '\n' || next == '\r';
        boolean within = blanks > 0 && !lineBegins && !lineEnds;
        lineBegins = lineEnds;
        if (!within) {
            return next;
        }
        held = next;
        return blanks >= least ? '\t' : ' ';
    }

    @Override
    public int read(char[] into, int from, int count) throws IOException {
        int done = 0;
        for (; done < count; done++) {
            int next = read();
            if (next < 0) {
                return done == 0 && count > 0 ? -1 : done;
            }
            into[from + done] = (char) next;
        }
        return done;
    }

    @Override
    public void close() throws IOException {
        text.close();
    }
}
