// SPDX-License-Identifier: Apache-2.0
package isohume.station.desk;

import isohume.journal.Journal;
import isohume.journal.StreamName;
import isohume.result.Results;
import isohume.run.Course;
import isohume.run.RunFact;
import isohume.station.bench.RecordedRun;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The results of runs, kept until a record is added or withdrawn. They take about a second to reckon, and follow courses of
 * their own meanwhile, so that whoever asks where a run stands does not wait for them. Safe for any thread.
 */
final class Evaluations {
    private final Journal journal;
    private final Map<StreamName, Course> courses = new HashMap<>();
    private final Map<StreamName, Evaluated> evaluated = new HashMap<>();

    /** Results of a run by these records; a point that was withdrawn and taken again has another. */
    private record Evaluated(List<RunFact.Recorded> records, Results results) {}

    Evaluations(Journal journal) {
        this.journal = journal;
    }

    /** What the whole points of a run mean; empty while there are none. */
    synchronized Optional<Results> of(StreamName stream) {
        RecordedRun run = new RecordedRun(journal, stream);
        Course course = courses.computeIfAbsent(stream, s -> new Course());
        run.catchUp(course);
        List<RunFact.Recorded> records = course.recorded();
        if (records.isEmpty()) {
            return Optional.empty();
        }
        Evaluated known = evaluated.get(stream);
        if (known == null || !known.records().equals(records)) {
            known = new Evaluated(records, run.results(course));
            evaluated.put(stream, known);
        }
        return Optional.of(known.results());
    }
}
