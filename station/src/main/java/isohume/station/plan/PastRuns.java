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
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the runs in a journal teach about a bench. Each fact is read once. Safe for any thread. */
public final class PastRuns {
    private static final int PAGE = 500; // entries read at a time

    private final Journal journal;
    private final Map<StreamName, Followed> followed = new HashMap<>();

    public PastRuns(Journal journal) {
        this.journal = journal;
    }

    /** The lessons of every run on a bench of that title, oldest first. */
    public synchronized List<Lesson> lessons(String bench) {
        List<Lesson> lessons = new ArrayList<>();
        for (StreamName stream : journal.streams("run")) {
            Followed run = followed.computeIfAbsent(stream, s -> new Followed());
            run.catchUp(journal, stream);
            if (run.bench.equals(bench)) {
                lessons.addAll(run.lessons.learned());
            }
        }
        return lessons;
    }

    /** One run, as far as it has been read. */
    private static final class Followed {
        private final Lessons lessons = new Lessons();
        private String bench = "";
        private long taken;

        void catchUp(Journal journal, StreamName stream) {
            List<Entry> page;
            do {
                page = journal.read(stream, taken, PAGE);
                page.forEach(this::take);
            } while (page.size() == PAGE);
        }

        private void take(Entry entry) {
            taken = entry.number();
            if (RunNotation.observes(entry.fact())) {
                return;
            }
            RunFact fact = RunNotation.decode(entry.fact());
            if (fact instanceof RunFact.Started started) {
                bench = started.bench();
            }
            lessons.take(entry.at(), fact);
        }
    }
}
