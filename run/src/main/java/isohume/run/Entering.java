// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.run.entry.Appraisal;
import isohume.run.entry.DisplayEntry;
import isohume.run.entry.DisplayedChannel;
import isohume.run.entry.EntrySheet;
import isohume.run.entry.Plausibility;
import isohume.run.entry.Word;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What becomes of a person's word about a display. The engine decides so, and whoever passes a word on can tell before
 * by the same course of facts.
 */
public final class Entering {
    private final Course course;
    private final EntrySheet sheet;

    public Entering(Course course) {
        this.course = course;
        this.sheet = course.entries();
    }

    /** What is to be said of a word as the run stands; a question that the person has answered is not asked again. */
    public Appraisal appraise(Word word) {
        if (course.phase() != Phase.RECORD) {
            return new Appraisal.Refused("Nothing is read now: the run is in "
                    + course.phase().word() + ". Wait until the page asks for the reading.");
        }
        return switch (word) {
            case Word.Shown shown -> shown(shown);
            case Word.Mistaken mistaken -> mistaken(mistaken);
            case Word.Omitted omitted -> omitted(omitted);
        };
    }

    private Appraisal shown(Word.Shown shown) {
        Optional<DisplayedChannel> channel = sheet.channel(shown.channel());
        if (channel.isEmpty() || !sheet.wanted(course.point()).contains(channel.get())) {
            return new Appraisal.Refused(shown.channel() + " is not asked for now; everything wanted of it is there.");
        }
        Appraisal found = plausibility(channel.get()).of(shown.text(), shown.at());
        return found instanceof Appraisal.Questioned && shown.confirmed() ? new Appraisal.Accepted() : found;
    }

    private Plausibility plausibility(DisplayedChannel channel) {
        return new Plausibility(channel, reference(course, channel), sheet.of(channel));
    }

    private Appraisal mistaken(Word.Mistaken mistaken) {
        boolean stands =
                sheet.current().stream().filter(DisplayEntry::stands).anyMatch(e -> e.number() == mistaken.entry());
        return stands
                ? new Appraisal.Accepted()
                : new Appraisal.Refused("Entry " + mistaken.entry()
                        + " is none that can be taken back: its record is closed, or it was taken back already.");
    }

    private Appraisal omitted(Word.Omitted omitted) {
        if (omitted.reason().isBlank()) {
            return new Appraisal.Refused("Write down why it is left out.");
        }
        boolean wanted = sheet.wanted(course.point()).stream().anyMatch(c -> c.id().equals(omitted.channel()));
        return wanted ? new Appraisal.Accepted() : new Appraisal.Refused(omitted.channel() + " is not asked for now.");
    }

    /**
     * The fact that follows from a word; none where nothing was left to be done about it.
     *
     * @param observed number of the observation that was made for it
     */
    Optional<RunFact> answer(Word word, long observed) {
        Appraisal found = appraise(word);
        boolean accepted = found instanceof Appraisal.Accepted;
        return switch (word) {
            case Word.Shown shown -> Optional.of(accepted ? typed(shown, observed) : declined(shown, found));
            case Word.Mistaken m ->
                accepted ? Optional.of(new RunFact.TakenBack(m.entry(), m.operator(), m.reason())) : Optional.empty();
            case Word.Omitted o ->
                accepted
                        ? Optional.of(new RunFact.LeftOut(course.point(), o.channel(), o.operator(), o.reason()))
                        : Optional.empty();
        };
    }

    private RunFact typed(Word.Shown shown, long observed) {
        DisplayedChannel channel = sheet.channel(shown.channel()).orElseThrow();
        if (course.latest().filter(m -> m.whole(course.roles())).isEmpty()) {
            String why = "A reference or another instrument gave no reading at that instant. Read the display again.";
            return declined(shown, new Appraisal.Refused(why));
        }
        return new RunFact.Typed(
                course.point(),
                shown.channel(),
                shown.text(),
                shown.at(),
                shown.operator(),
                observed,
                remark(shown, plausibility(channel)),
                shown.photo());
    }

    private static OptionalDouble reference(Course course, DisplayedChannel channel) {
        return course.latest()
                .map(m -> m.reference(channel.quantity(), course.roles()))
                .orElse(OptionalDouble.empty());
    }

    /** The sheet of a course with one more fact on it. */
    static EntrySheet after(RunFact.OfDisplay fact, long number, Course course) {
        EntrySheet sheet = course.entries();
        return switch (fact) {
            case RunFact.Typed t -> sheet.with(entry(t, number, course));
            case RunFact.TakenBack t -> sheet.without(t.entry(), t.operator() + ": " + t.reason());
            case RunFact.LeftOut l ->
                sheet.with(new EntrySheet.Omission(l.point(), l.channel(), l.operator(), l.reason()));
            case RunFact.Wanted w -> sheet;
            case RunFact.Declined d -> sheet;
        };
    }

    private static DisplayEntry entry(RunFact.Typed t, long number, Course course) {
        DisplayedChannel channel = course.entries().channel(t.channel()).orElseThrow();
        return new DisplayEntry(
                number,
                t.channel(),
                t.shown(),
                t.at(),
                t.operator(),
                t.observed(),
                reference(course, channel),
                t.remark(),
                t.photo(),
                Optional.empty());
    }

    private static String remark(Word.Shown shown, Plausibility plausibility) {
        String first = shown.first().isEmpty() ? "" : shown.first() + " was typed at first; ";
        return plausibility.of(shown.text(), shown.at()) instanceof Appraisal.Questioned q
                ? first + "confirmed when asked: " + q.why()
                : first.isEmpty() ? "" : first + "corrected when asked";
    }

    private static RunFact declined(Word.Shown shown, Appraisal found) {
        String why = switch (found) {
            case Appraisal.Refused refused -> refused.why();
            case Appraisal.Questioned questioned -> questioned.why() + " Nobody was asked about it yet; type it again.";
            case Appraisal.Accepted accepted -> throw new IllegalStateException("what was accepted is not declined");
        };
        return new RunFact.Declined(shown.channel(), shown.text(), shown.at(), shown.operator(), why);
    }
}
