// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import isohume.journal.Entry;
import isohume.result.Results;
import isohume.run.Foresight;
import isohume.run.Order;
import isohume.run.Phase;
import isohume.run.SeenSoFar;
import isohume.run.entry.Appraisal;
import isohume.run.entry.Word;
import isohume.station.imported.Intake;
import isohume.station.imported.Photos;
import isohume.station.plan.Shelf;
import isohume.station.trial.Tryouts;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * All that pages know of the house behind them; built by {@code main} and handed to {@link Web#serve}. Everything is
 * read back from the journal; {@link #order} and
 * {@link #say} are the only ways in. Called from many threads at once.
 */
public interface Desk {
    /** The program and its version, as records and the foot of a page name it. */
    String program();

    /** The clock that the runs go by; in a demonstration it may be faster than the one on the wall. */
    InstantSource clock();

    /** The zone in which a person reads times. */
    ZoneId zone();

    /** What everybody who looks at the bench has to know, for example that it is simulated; empty when nothing. */
    String remark();

    /** The run at work, or else the last one; empty before the first. */
    Optional<String> current();

    /** Every run, newest first. */
    List<Summary> runs();

    /** Facts of a run with a number above {@code after}, in order, at most {@code most}; none for an unknown run. */
    List<Entry> facts(String run, long after, int most);

    /** What the points recorded so far come to; empty before the first and for an unknown run. */
    Optional<Results> results(String run);

    /** Certificates and files of a run. */
    List<Document> documents(String run);

    /** A document's bytes by its name; empty when there is none. */
    Optional<byte[]> document(String run, String name);

    /**
     * Passes a person's order to a run. Returns at once; the run takes it up between two acts, and its facts show it.
     *
     * @param reason may be empty
     */
    Told order(String run, Order order, String operator, String reason);

    /**
     * Passes on what a person read on a display, or did about it, if it can be taken; returns once the run has written it
     * down, or after a few seconds.
     */
    default Appraisal say(String run, Word word) {
        return new Appraisal.Refused("No bench is connected; start the program with the plan of one.");
    }

    /** Where photos of displays are kept; empty where no data folder keeps them. */
    default Optional<Photos> photos() {
        return Optional.empty();
    }

    /** How long points take that lie ahead on a bench of that title. */
    default Foresight foresight(String bench) {
        return new SeenSoFar();
    }

    /** Plans that can be looked at, and where new ones are kept. */
    Shelf plans();

    /** The title of the plan that can be begun on the bench; empty when no bench is connected. */
    Optional<String> ready();

    /** Begins that plan. Returns once its first fact is on disk. */
    Told begin(String operator);

    /** Where exported files come in; empty where no data folder keeps them. */
    default Optional<Intake> intake() {
        return Optional.empty();
    }

    /** Trials of devices; empty where none can be tried. */
    default Optional<Tryouts> tryouts() {
        return Optional.empty();
    }

    /**
     * A run in the list of runs.
     *
     * @param plan the plan's title
     * @param done points that are recorded or skipped
     */
    record Summary(
            String run, String plan, String bench, String operator, Instant began, Phase phase, int done, int points) {}

    /**
     * A file that can be fetched.
     *
     * @param name the last part of its address, unique within the run
     * @param title what it is, in words
     */
    record Document(String name, String title, String mediaType) {}

    /** What became of an order. */
    sealed interface Told {
        /** It was passed on. */
        record PassedOn() implements Told {}

        /** It was not; {@code why} says what to do instead. */
        record Refused(String why) implements Told {}
    }
}
