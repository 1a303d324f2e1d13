// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import io.quarkus.qute.TemplateData;
import isohume.run.Course;
import isohume.run.Incident;
import isohume.run.RunFact;
import isohume.station.web.Clockface;
import java.util.Comparator;
import java.util.List;

/**
 * What went wrong in a run: the faults that are there, then the latest that were.
 *
 * @param whole points that are recorded
 */
@TemplateData
public record Happenings(List<Row> rows, int whole, int points) {
    private static final int MOST = 8;

    public Happenings {
        rows = List.copyOf(rows);
    }

    /**
     * One fault.
     *
     * @param what what happened, with its evidence
     * @param from when it was noticed
     * @param until when it was over; empty while it is there
     * @param done what the run did about it; may be empty
     * @param next what a person can do; empty once it is over and nobody is waited for
     */
    @TemplateData
    public record Row(String what, String from, String until, String done, String next) {
        public boolean present() {
            return until.isEmpty();
        }
    }

    static Happenings of(Course course, Clockface clock) {
        List<Row> rows = course.incidents().stream()
                .sorted(Comparator.comparing((Incident i) -> i.over().isPresent())
                        .thenComparing(Comparator.comparing(Incident::at).reversed()))
                .limit(MOST)
                .map(incident -> row(incident, clock))
                .toList();
        return new Happenings(
                rows, course.recorded().size(), course.plan().points().size());
    }

    private static Row row(Incident incident, Clockface clock) {
        boolean settled = incident.over().isPresent() && incident.acted().isEmpty();
        return new Row(
                incident.words(),
                clock.time(incident.at()),
                incident.over().map(clock::time).orElse(""),
                incident.acted().map(Happenings::done).orElse(""),
                settled ? "" : incident.noticed().fault().remedy());
    }

    private static String done(RunFact.Acted acted) {
        return switch (acted.measure()) {
            case GO_ON -> "";
            case STOP_AFTER_POINT -> "The run ends after the point at work.";
            case SKIP -> "Point " + acted.point() + " was left out.";
            case HOLD -> "The run was held.";
            case STOP -> "The chamber was brought to rest.";
        };
    }
}
