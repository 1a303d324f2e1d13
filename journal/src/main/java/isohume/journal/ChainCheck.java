// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import java.sql.ResultSet;
import java.sql.SQLException;

/** Follows the chain of one stream. */
final class ChainCheck {
    private final long place;
    private final String stream;
    private final Verifier.Findings findings;
    private String previous = Chain.BEGINNING;
    private long number;
    private long facts;

    ChainCheck(long place, String stream, Verifier.Findings findings) {
        this.place = place;
        this.stream = stream;
        this.findings = findings;
    }

    long place() {
        return place;
    }

    String stream() {
        return stream;
    }

    long facts() {
        return facts;
    }

    /** Takes a row with the columns number, at, form, text and hash from the fourth on. */
    void next(ResultSet row) throws SQLException {
        long found = row.getLong(4);
        if (row.wasNull()) {
            findings.find(stream, 0, "all entries were removed");
            return;
        }
        facts++;
        String kept = String.valueOf(row.getString(8));
        if (found != number + 1) {
            findings.find(stream, number + 1, missing(found));
        } else if (!hash(row, found).equals(kept)) {
            findings.find(
                    stream,
                    found,
                    "is not what was acknowledged: its text, form, time or place in the stream"
                            + " was changed, or the entry before it was");
        }
        number = found; // go on from what is there, so that one change is reported once
        previous = kept;
    }

    private String missing(long found) {
        return found - 1 > number + 1 ? "was removed, with all up to entry " + (found - 1) : "was removed";
    }

    // The bytes as they are kept: decoding could hide a change.
    private String hash(ResultSet row, long found) throws SQLException {
        byte[] text = row.getBytes(7);
        return Chain.hash(previous, stream, found, row.getLong(5), row.getLong(6), text == null ? new byte[0] : text);
    }
}
