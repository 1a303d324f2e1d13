// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import isohume.moistair.MoistAir;
import isohume.quantity.Phase;
import isohume.result.Evaluation;
import isohume.result.Recording;
import isohume.result.Results;
import isohume.result.StillToCome;
import isohume.run.Course;
import isohume.run.Moment;
import isohume.run.Roles;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.station.job.Worksheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A run as the journal holds it: its course and what its readings mean. */
public final class RecordedRun {
    private static final int PAGE = 500; // entries read at a time

    private final Journal journal;
    private final StreamName stream;

    public RecordedRun(Journal journal, StreamName stream) {
        this.journal = journal;
        this.stream = stream;
    }

    /** Where the run stands by its facts. */
    public Course course() {
        Course course = new Course();
        catchUp(course);
        return course;
    }

    /** Brings a course up to the journal. */
    public void catchUp(Course course) {
        List<Entry> page;
        do {
            page = journal.read(stream, course.taken(), PAGE);
            page.forEach(course::take);
        } while (page.size() == PAGE);
    }

    /** What the whole points mean, by the worksheet that the run was begun with; in the order of time. */
    public Results results() {
        return results(course());
    }

    /** As {@link #results()}, by a course of this run that was followed already. */
    public Results results(Course course) {
        Worksheet worksheet = Worksheet.keptIn(course.started().job());
        List<Recording> recordings = new ArrayList<>();
        course.recorded().stream() // a point that was taken again comes after those that were recorded before it
                .sorted(Comparator.comparingLong(RunFact.Recorded::first))
                .forEach(recorded -> recordings.add(recording(course, worksheet.readChannels(), recorded)));
        return Evaluation.of(worksheet.job(), recordings);
    }

    private Recording recording(Course course, List<String> channels, RunFact.Recorded recorded) {
        MoistAir air = MoistAir.by(course.started().formulation());
        int count = Math.toIntExact(recorded.last() - recorded.first() + 1);
        List<Recording.Row> rows = new ArrayList<>();
        Optional<Phase> deposit = Optional.empty();
        for (Entry entry : journal.read(stream, recorded.first() - 1, count)) {
            if (RunNotation.decode(entry.fact()) instanceof RunFact.Observed observed) {
                Moment moment = Moment.of(observed, course.roles(), air);
                if (moment.referencesWhole()) {
                    deposit = oneOf(deposit, moment, recorded.point());
                    rows.add(row(
                            moment, course.roles(), channels, course.entries().besides(entry.number())));
                }
            }
        }
        return new Recording(
                course.plan().point(recorded.point()),
                deposit.orElseThrow(),
                "reported by the mirror",
                rows,
                toCome(recorded));
    }

    private static Map<String, StillToCome> toCome(RunFact.Recorded recorded) {
        return recorded.toCome().stream()
                .collect(Collectors.toMap(
                        RunFact.ToCome::channel, t -> new StillToCome(t.value(), t.standardUncertainty())));
    }

    private static Optional<Phase> oneOf(Optional<Phase> before, Moment moment, int point) {
        if (before.isPresent() && !before.equals(moment.deposit())) {
            throw new IllegalStateException(
                    "point " + point + ": the deposit changed from " + before.get() + " during the record");
        }
        return moment.deposit();
    }

    private static Recording.Row row(Moment moment, Roles roles, List<String> channels, Map<String, Double> read) {
        Map<String, Double> shown = new LinkedHashMap<>(read);
        for (String channel : channels) {
            Double value = moment.shown().get(channel);
            if (value != null) {
                shown.put(channel, value);
            }
        }
        return new Recording.Row(
                moment.at(),
                shown(moment, roles.dewPoint()),
                shown(moment, roles.temperature()),
                shown(moment, roles.pressure()),
                shown(moment, roles.mirrorPressure()),
                shown);
    }

    private static double shown(Moment moment, String channel) {
        Double value = moment.shown().get(channel);
        if (value == null) {
            throw new IllegalStateException(channel + " is missing from a whole moment");
        }
        return value;
    }
}
