// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.chamber;

import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.MemoryJournal;
import isohume.journal.StreamName;
import isohume.run.Course;
import isohume.run.Order;
import isohume.run.Foresight;
import isohume.run.RunFact;
import isohume.run.SeenSoFar;
import isohume.station.bench.RecordedRun;
import isohume.station.job.Worksheet;
import isohume.station.rehearsal.Rehearsal;
import isohume.station.rehearsal.Unattended;
import java.time.Duration;
import java.time.Instant;

/** Isohume: its engine, its rules, its order. A point that it would ask a person about is skipped, and so has no result. */
final class ByIsohume implements Way {
    private static final StreamName STREAM = new StreamName("run", "isohume");

    @Override
    public Outcome work(Job job) {
        Worksheet worksheet = ordered(job.worksheet());
        try (Rehearsal bench = job.rehearse(worksheet);
                Journal journal = new MemoryJournal(bench.simulated()::now)) {
            Halfway halfway = new Halfway();
            Unattended run = new Unattended(bench, journal, STREAM, Order.SKIP, halfway::hear);
            var unused = run.carryOut();
            return Outcome.of(
                    Duration.between(job.start(), bench.simulated().now()),
                    new RecordedRun(journal, STREAM).results(),
                    run.truth(),
                    worksheet.plan().points().size(),
                    halfway.foretold,
                    run.held());
        }
    }

    /** The points in the order in which Isohume would visit them. */
    private static Worksheet ordered(Worksheet worksheet) {
        return worksheet; // as given
    }

    /** Follows the run as a page does, and notes its forecast when half of the points are done. */
    private static final class Halfway {
        private final Course course = new Course();
        private final Foresight foresight = new SeenSoFar();
        private Duration foretold = Duration.ZERO;

        void hear(Entry entry, RunFact fact) {
            course.take(entry, fact);
            int done = course.recorded().size() + course.skipped().size();
            if (foretold.isZero() && 2 * done >= course.plan().points().size()) {
                foretold = whole(entry.at());
            }
        }

        private Duration whole(Instant now) {
            return foresight
                    .ofRun(course, now)
                    .map(left -> Duration.between(course.began(), now).plus(left.expected()))
                    .orElse(Duration.ZERO);
        }
    }
}
