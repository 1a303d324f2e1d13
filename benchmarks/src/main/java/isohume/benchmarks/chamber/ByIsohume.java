// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.chamber;

import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.MemoryJournal;
import isohume.journal.StreamName;
import isohume.run.Course;
import isohume.run.Order;
import isohume.run.RunFact;
import isohume.run.order.FromLessons;
import isohume.run.order.Lessons;
import isohume.station.bench.RecordedRun;
import isohume.station.job.Worksheet;
import isohume.station.plan.Prospect;
import isohume.station.plan.Rearranged;
import isohume.station.rehearsal.Rehearsal;
import isohume.station.rehearsal.Unattended;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** Isohume: its engine, its rules, its order. A point that it would ask a person about is skipped, and so has no result. */
final class ByIsohume implements Way {
    private static final StreamName STREAM = new StreamName("run", "isohume");

    @Override
    public Outcome work(Job job) {
        Worksheet worksheet = ordered(job).worksheet();
        try (Rehearsal bench = job.rehearse(worksheet);
                Journal journal = new MemoryJournal(bench.simulated()::now)) {
            Halfway halfway = new Halfway(worksheet);
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

    /**
     * The points in the order that takes least, by what is known of a bench before its first run. The order given has wet
     * points before dry ones of other temperatures, so this one may too; at one temperature dry ones come first.
     */
    private static Job ordered(Job job) {
        Rearranged orders = Rearranged.of(job.worksheet(), List.of());
        return job.with(orders.relaxed().orElse(orders.shortest()).points());
    }

    /** Follows the run as a page does, and notes its forecast when half of the points are done. */
    private static final class Halfway {
        private final Course course = new Course();
        private final Lessons lessons = new Lessons();
        private final Worksheet worksheet;
        private Duration foretold = Duration.ZERO;

        Halfway(Worksheet worksheet) {
            this.worksheet = worksheet;
        }

        void hear(Entry entry, RunFact fact) {
            course.take(entry, fact);
            lessons.take(entry.at(), fact);
            int done = course.recorded().size() + course.skipped().size();
            if (foretold.isZero() && 2 * done >= course.plan().points().size()) {
                foretold = whole(entry.at());
            }
        }

        private Duration whole(Instant now) {
            return new FromLessons(Prospect.times(worksheet, lessons.learned()))
                    .ofRun(course, now)
                    .map(left -> Duration.between(course.began(), now).plus(left.expected()))
                    .orElse(Duration.ZERO);
        }
    }
}
