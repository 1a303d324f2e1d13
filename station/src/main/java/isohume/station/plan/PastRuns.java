// SPDX-License-Identifier: Apache-2.0
package isohume.station.plan;

import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.run.order.Lesson;
import isohume.run.order.Lessons;
import java.util.ArrayList;
import java.util.List;

/** What the runs in a journal teach about a bench. */
public final class PastRuns {
    private static final int PAGE = 500; // entries read at a time

    private PastRuns() {}

    /** The lessons of every run on a bench of that title, oldest first. */
    public static List<Lesson> lessons(Journal journal, String bench) {
        List<Lesson> lessons = new ArrayList<>();
        for (StreamName stream : journal.streams("run")) {
            List<Entry> first = journal.read(stream, 0, 1);
            boolean here = !first.isEmpty()
                    && RunNotation.decode(first.getFirst().fact()) instanceof RunFact.Started started
                    && started.bench().equals(bench);
            if (here) {
                lessons.addAll(of(journal, stream));
            }
        }
        return lessons;
    }

    private static List<Lesson> of(Journal journal, StreamName stream) {
        Lessons lessons = new Lessons();
        long after = 0;
        List<Entry> page;
        do {
            page = journal.read(stream, after, PAGE);
            for (Entry entry : page) {
                if (!RunNotation.observes(entry.fact())) {
                    lessons.take(entry.at(), RunNotation.decode(entry.fact()));
                }
                after = entry.number();
            }
        } while (page.size() == PAGE);
        return lessons.learned();
    }
}
