// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.runs;

import isohume.journal.Entry;
import isohume.run.RunNotation;
import isohume.station.web.Clockface;
import isohume.station.web.Desk;
import java.util.List;

/**
 * A page of a run's facts.
 *
 * @param after the number behind which this page begins
 * @param before where the page before begins; -1 when this is the first
 * @param next where the next page begins; -1 when this is the last
 */
public record FactsView(String run, long after, long before, long next, List<Row> rows) {
    static final int PAGE = 100;
    private static final int SHORT_HASH = 12;

    /** One fact. */
    public record Row(long number, String at, String kind, String told, String hash, String whole) {}

    static FactsView of(String run, Desk desk, long after, Clockface clock) {
        List<Entry> entries = desk.facts(run, after, PAGE + 1);
        boolean more = entries.size() > PAGE;
        List<Row> rows = entries.stream().limit(PAGE).map(e -> row(e, clock)).toList();
        return new FactsView(run, after, after == 0 ? -1 : Math.max(0, after - PAGE), more ? after + PAGE : -1, rows);
    }

    private static Row row(Entry entry, Clockface clock) {
        Telling telling = Telling.of(RunNotation.decode(entry.fact()));
        return new Row(
                entry.number(),
                clock.full(entry.at()),
                telling.kind(),
                telling.text(),
                entry.hash().substring(0, Math.min(SHORT_HASH, entry.hash().length())),
                entry.fact().text());
    }
}
