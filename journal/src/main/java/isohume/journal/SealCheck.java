// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Compares what the seals list, and seals noted elsewhere, with what is there. */
final class SealCheck {
    private static final String ENTRIES = "SELECT e.number, e.at, e.form, e.text, e.hash FROM stream s"
            + " JOIN entry e ON e.stream = s.place WHERE s.kind = ? AND s.id = ?";

    private final List<Seal> noted;
    private final Verifier.Findings findings;
    private final Map<StreamName, Long> sealed = new HashMap<>(); // the highest number sealed, -1 once found wrong
    private @Nullable Seal last;

    SealCheck(List<Seal> noted, Verifier.Findings findings) {
        this.noted = noted;
        this.findings = findings;
    }

    /** Facts under a seal; the seals before the last one are under the last one. */
    long sealed() {
        long seals = last == null ? 0 : last.number();
        return sealed.values().stream().mapToLong(Long::longValue).sum() + seals;
    }

    @Nullable
    Seal last() {
        return last;
    }

    void check(Connection connection) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(ENTRIES + " ORDER BY e.number");
                PreparedStatement one = connection.prepareStatement(ENTRIES + " AND e.number = ?");
                ResultSet rows = entries(select, Seal.STREAM)) {
            while (rows.next()) {
                Seal seal = new Seal(
                        rows.getLong(1), Microseconds.instant(rows.getLong(2)), String.valueOf(rows.getString(5)));
                Optional<List<Tables.Head>> heads = Seal.heads(String.valueOf(rows.getString(4)));
                if (heads.isEmpty() || rows.getLong(3) != Seal.FORM) {
                    findings.find(Seal.STREAM.toString(), seal.number(), "is not a seal of a form known here");
                }
                for (Tables.Head head : heads.orElse(List.of())) {
                    check(one, seal, head);
                }
                last = seal;
            }
            for (Seal seal : noted) {
                check(one, seal);
            }
        }
    }

    private void check(PreparedStatement one, Seal seal, Tables.Head head) throws SQLException {
        if (sealed.getOrDefault(head.stream(), 0L) < 0) {
            return; // this stream is found wrong already
        }
        String kept = hash(one, head.stream(), head.number());
        if (head.hash().equals(kept)) {
            sealed.put(head.stream(), head.number());
            return;
        }
        sealed.put(head.stream(), -1L);
        findings.find(
                head.stream().toString(),
                head.number(),
                (kept == null ? "was removed" : "was rewritten") + " after seal " + seal.number()
                        + " was set over it, at " + seal.at());
    }

    private void check(PreparedStatement one, Seal seal) throws SQLException {
        String kept = hash(one, Seal.STREAM, seal.number());
        if (!seal.hash().equals(kept)) {
            findings.find(
                    Seal.STREAM.toString(),
                    seal.number(),
                    (kept == null ? "was removed" : "was rewritten") + ": the seal noted elsewhere is " + seal.hash());
        }
    }

    private static @Nullable String hash(PreparedStatement one, StreamName stream, long number) throws SQLException {
        one.setLong(3, number);
        try (ResultSet row = entries(one, stream)) {
            return row.next() ? row.getString(5) : null;
        }
    }

    private static ResultSet entries(PreparedStatement select, StreamName stream) throws SQLException {
        select.setString(1, stream.kind());
        select.setString(2, stream.id());
        return select.executeQuery();
    }
}
