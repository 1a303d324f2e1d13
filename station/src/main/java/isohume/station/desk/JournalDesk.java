// SPDX-License-Identifier: Apache-2.0
package isohume.station.desk;

import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import isohume.result.Item;
import isohume.result.Results;
import isohume.run.Course;
import isohume.run.Entering;
import isohume.run.Foresight;
import isohume.run.Order;
import isohume.run.Phase;
import isohume.run.SeenSoFar;
import isohume.run.entry.Appraisal;
import isohume.run.entry.Word;
import isohume.run.order.FromLessons;
import isohume.station.Program;
import isohume.station.bench.RecordedRun;
import isohume.station.bench.Workplace;
import isohume.station.imported.Intake;
import isohume.station.imported.Photos;
import isohume.station.paper.Papers;
import isohume.station.plan.PastRuns;
import isohume.station.plan.Prospect;
import isohume.station.plan.Shelf;
import isohume.station.trial.Tryouts;
import isohume.station.web.Desk;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** A desk over a journal, with a bench beside it or without. */
public final class JournalDesk implements Desk {
    private static final String PDF = "application/pdf";

    private final Journal journal;
    private final Optional<Workplace> workplace;
    private final PastRuns past;
    private final Shelf shelf;
    private final Tryouts tryouts;
    private final InstantSource clock;
    private final ZoneId zone;
    private final Supplier<String> remark;
    private Optional<Intake> intake = Optional.empty();
    private Optional<Photos> photos = Optional.empty();
    private final Map<StreamName, Course> courses = new HashMap<>();
    private final Evaluations evaluations;

    /**
     * A desk.
     *
     * @param plans folder in which plans are kept
     * @param remark what everybody who looks at the bench has to know; may be empty
     */
    public JournalDesk(
            Journal journal,
            Optional<Workplace> workplace,
            Path plans,
            InstantSource clock,
            ZoneId zone,
            String remark) {
        this(journal, workplace, plans, clock, zone, () -> remark);
    }

    /** As above, with a remark that changes. */
    public JournalDesk(
            Journal journal,
            Optional<Workplace> workplace,
            Path plans,
            InstantSource clock,
            ZoneId zone,
            Supplier<String> remark) {
        this.journal = journal;
        this.evaluations = new Evaluations(journal);
        this.workplace = workplace;
        this.past = new PastRuns(journal);
        this.shelf = new Shelf(plans, workplace.map(Workplace::worksheet), past::lessons);
        this.tryouts = new Tryouts(journal, workplace, InstantSource.system()); // people try devices in their own time
        this.clock = clock;
        this.zone = zone;
        this.remark = remark;
    }

    /** The same with a data folder that keeps photos. */
    public JournalDesk keeping(Photos kept) {
        this.photos = Optional.of(kept);
        return this;
    }

    @Override
    public Optional<Photos> photos() {
        return photos;
    }

    @Override
    public Foresight foresight(String bench) {
        return workplace
                .map(Workplace::worksheet)
                .filter(worksheet -> worksheet.job().benchTitle().equals(bench))
                .<Foresight>map(worksheet -> new FromLessons(Prospect.times(worksheet, past.lessons(bench))))
                .orElseGet(SeenSoFar::new);
    }

    /** The same with a place where exported files come in. */
    public JournalDesk taking(Intake intake) {
        this.intake = Optional.of(intake);
        return this;
    }

    @Override
    public Optional<Intake> intake() {
        return intake;
    }

    @Override
    public String program() {
        return Program.title();
    }

    @Override
    public InstantSource clock() {
        return clock;
    }

    @Override
    public ZoneId zone() {
        return zone;
    }

    @Override
    public String remark() {
        String trouble = workplace.flatMap(Workplace::trouble).orElse("");
        return (remark.get() + " " + trouble).strip();
    }

    @Override
    public Optional<String> current() {
        List<StreamName> runs = journal.streams("run");
        for (StreamName run : runs.reversed()) {
            if (summary(run).phase().underWay()) {
                return Optional.of(run.id());
            }
        }
        return runs.isEmpty() ? Optional.empty() : Optional.of(runs.getLast().id());
    }

    @Override
    public List<Summary> runs() {
        return journal.streams("run").reversed().stream().map(this::summary).toList();
    }

    private Summary summary(StreamName stream) {
        synchronized (courses) {
            Course course = course(stream);
            return new Summary(
                    stream.id(),
                    course.plan().title(),
                    course.started().bench(),
                    course.started().operator(),
                    course.began(),
                    course.phase(),
                    course.recorded().size() + course.skipped().size(),
                    course.plan().points().size());
        }
    }

    /** The course brought up to now; to be read while {@link #courses} is held. */
    private Course course(StreamName stream) {
        synchronized (courses) {
            Course course = courses.computeIfAbsent(stream, s -> new Course());
            new RecordedRun(journal, stream).catchUp(course);
            return course;
        }
    }

    @Override
    public List<Entry> facts(String run, long after, int most) {
        return stream(run).map(s -> journal.read(s, after, most)).orElse(List.of());
    }

    private Optional<StreamName> stream(String run) {
        return journal.streams("run").stream().filter(s -> s.id().equals(run)).findFirst();
    }

    @Override
    public Optional<Results> results(String run) {
        return stream(run).flatMap(evaluations::of);
    }

    @Override
    public List<Document> documents(String run) {
        List<Document> documents = new ArrayList<>();
        results(run).ifPresent(results -> {
            for (Item item : results.job().items()) {
                if (!results.of(item.id()).isEmpty()) {
                    documents.add(new Document(Papers.certificateName(item.id()), "Certificate of " + item.id(), PDF));
                }
            }
        });
        return documents;
    }

    @Override
    public Optional<byte[]> document(String run, String name) {
        boolean known = documents(run).stream().anyMatch(d -> d.name().equals(name));
        return known ? results(run).map(results -> bytes(results, name)) : Optional.empty();
    }

    private byte[] bytes(Results results, String name) {
        try {
            return Papers.pdf(Papers.draft(results, Papers.itemOf(name), clock.instant()));
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    @Override
    public Told order(String run, Order order, String operator, String reason) {
        Optional<StreamName> stream = stream(run);
        if (workplace.isEmpty() || stream.isEmpty()) {
            return new Told.Refused("No bench is connected; start the program with the plan of one to give orders.");
        }
        if (workplace.get().order(stream.get(), order, operator, reason)) {
            return new Told.PassedOn();
        }
        boolean stopped = summary(stream.get()).phase() == Phase.SAFE_STOP;
        if (order == Order.RESUME && stopped) {
            return workplace.get().resume(stream.get(), operator)
                    ? new Told.PassedOn()
                    : new Told.Refused("Another run is at work on the bench; stop it first.");
        }
        return new Told.Refused("The run is over; its record stays as it is.");
    }

    @Override
    public Appraisal say(String run, Word word) {
        Optional<StreamName> stream = stream(run);
        if (workplace.isEmpty() || stream.isEmpty()) {
            return new Appraisal.Refused("No bench is connected; start the program with the plan of one.");
        }
        long before = journal.last(stream.get());
        Appraisal found = appraise(stream.get(), word);
        if (!(found instanceof Appraisal.Accepted)) {
            return found;
        }
        return workplace.get().say(stream.get(), word)
                ? new Answered(journal, stream.get(), word).after(before)
                : new Appraisal.Refused("The run is over; its record stays as it is.");
    }

    private Appraisal appraise(StreamName stream, Word word) {
        synchronized (courses) {
            return new Entering(course(stream)).appraise(word);
        }
    }

    @Override
    public Told begin(String operator) {
        if (workplace.isEmpty()) {
            return new Told.Refused("No bench is connected; start the program with the plan of one.");
        }
        return workplace.get().begin(operator).isPresent()
                ? new Told.PassedOn()
                : new Told.Refused("A run is at work on the bench already.");
    }

    @Override
    public Shelf plans() {
        return shelf;
    }

    @Override
    public Optional<Tryouts> tryouts() {
        return Optional.of(tryouts);
    }

    @Override
    public Optional<String> ready() {
        return workplace.map(place -> place.worksheet().plan().title());
    }
}
