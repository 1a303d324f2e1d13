// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.faults;

import isohume.journal.Entry;
import isohume.journal.SqliteJournal;
import isohume.journal.Verification;
import isohume.moistair.MoistAir;
import isohume.run.Course;
import isohume.run.Ending;
import isohume.run.Moment;
import isohume.run.Phase;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.station.bench.RecordedRun;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;

/** Judges a night by its journal, opened afresh, and by what the simulator and the witness know. */
final class Verdict {
    private final Night night;
    private final Course course = new Course();
    private final Map<Long, Entry> entries = new HashMap<>();
    private final List<RunFact> facts = new ArrayList<>();

    Verdict(Night night) {
        this.night = night;
        try (SqliteJournal journal = SqliteJournal.open(night.file(), night.time())) {
            for (Entry entry : journal.read(Night.STREAM, 0, Integer.MAX_VALUE)) {
                entries.put(entry.number(), entry);
                RunFact fact = RunNotation.decode(entry.fact());
                facts.add(fact);
                course.take(entry, fact);
            }
        }
    }

    Course course() {
        return course;
    }

    Outcome outcome(long seed, Trouble trouble) {
        List<String> objections = new ArrayList<>();
        boolean safe = safe(objections);
        explain(objections);
        return new Outcome(
                trouble,
                seed,
                course.ending().orElse(Ending.INTERRUPTED),
                course.recorded().size(),
                course.skipped().size(),
                (int) facts.stream()
                        .filter(f -> f instanceof RunFact.Entered e && e.phase() == Phase.HELD)
                        .count(),
                (int) facts.stream().filter(RunFact.Noticed.class::isInstance).count(),
                (int) facts.stream().filter(RunFact.Withdrawn.class::isInstance).count(),
                falseReadings(objections),
                lost(objections),
                safe,
                objections,
                story());
    }

    /** The night in a few lines, for whoever wants to know why. */
    String story() {
        StringBuilder story = new StringBuilder();
        for (Map.Entry<Long, Entry> each : new TreeMap<>(entries).entrySet()) {
            String line = switch (RunNotation.decode(each.getValue().fact())) {
                case RunFact.Noticed n -> "noticed " + n.fault().key() + ", " + n.channel() + ": " + n.evidence();
                case RunFact.Over o -> "over " + o.fault().key() + ", " + o.channel();
                case RunFact.Acted a -> "acted " + a.measure().key() + ": " + a.why();
                case RunFact.Withdrawn w -> "withdrawn " + w.point() + ": " + w.why();
                case RunFact.Entered e -> e.phase().word() + " " + e.point() + ": " + e.why();
                case RunFact.Recorded r -> "recorded " + r.point() + ", " + r.first() + " to " + r.last();
                case RunFact.Ordered o -> "ordered " + o.order() + " by " + o.operator();
                case RunFact.Finished f -> "finished " + f.ending() + ": " + f.why();
                default -> "";
            };
            if (!line.isEmpty()) {
                story.append(String.format(
                        Locale.ROOT,
                        "%n  %5d %s %s",
                        each.getKey(),
                        each.getValue().at(),
                        line));
            }
        }
        return story.toString();
    }

    /** At rest; or, where the chamber could not be reached, said so. */
    private boolean safe(List<String> objections) {
        boolean told = last() instanceof RunFact.Finished f && f.why().contains("did not confirm");
        boolean safe = !night.bench().isRunning() || told;
        if (!safe) {
            objections.add("the chamber still drives, and nobody was told");
        }
        return safe;
    }

    private RunFact last() {
        return facts.getLast();
    }

    private void explain(List<String> objections) {
        if (!(last() instanceof RunFact.Finished f) || f.why().isBlank()) {
            objections.add("the run has no ending that says why");
        }
        for (RunFact fact : facts) {
            if (fact instanceof RunFact.Entered e
                    && e.phase() == Phase.HELD
                    && e.why().isBlank()) {
                objections.add("held for no reason");
            }
        }
        TreeSet<Integer> done = new TreeSet<>(course.skipped());
        course.recorded().forEach(r -> done.add(r.point()));
        boolean completed = course.ending().orElse(Ending.INTERRUPTED) == Ending.COMPLETED;
        if (completed && done.size() < course.plan().points().size()) {
            objections.add("completed without all of its points");
        }
    }

    private long falseReadings(List<String> objections) {
        MoistAir air = MoistAir.by(course.started().formulation());
        long count = 0;
        for (RunFact.Recorded recorded : course.recorded()) {
            for (long number = recorded.first(); number <= recorded.last(); number++) {
                if (night.witness().falsePolls().contains(number)
                        && RunNotation.decode(entry(number).fact()) instanceof RunFact.Observed observed
                        && Moment.of(observed, course.roles(), air).referencesWhole()) {
                    count++;
                    objections.add("point " + recorded.point() + " holds a false reading, fact " + number);
                }
            }
        }
        return count + unreckoned(objections);
    }

    private Entry entry(long number) {
        return Objects.requireNonNull(entries.get(number), "a record names facts that are there");
    }

    /** Results must follow from what was recorded. */
    private int unreckoned(List<String> objections) {
        try (SqliteJournal journal = SqliteJournal.open(night.file(), night.time())) {
            var unused = new RecordedRun(journal, Night.STREAM).results(course);
            return 0;
        } catch (IllegalStateException | IllegalArgumentException unusable) {
            objections.add("results cannot be reckoned: " + unusable.getMessage());
            return 1;
        }
    }

    private long lost(List<String> objections) {
        long lost = night.witness().acknowledged().stream()
                .filter(e -> e.stream().equals(Night.STREAM))
                .filter(e -> !e.equals(entries.get(e.number())))
                .count();
        if (lost > 0) {
            objections.add(lost + " acknowledged facts are not there");
        }
        if (Verification.of(night.file()) instanceof Verification.Broken broken) {
            objections.add("the journal is broken: " + broken.findings().getFirst());
            lost++;
        }
        return lost;
    }
}
