// SPDX-License-Identifier: Apache-2.0
package isohume.station.rehearsal;

import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import isohume.run.Ending;
import isohume.run.Order;
import isohume.run.Phase;
import isohume.run.Run;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.station.Program;
import isohume.station.bench.Overheard;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/** The run of a rehearsal, as fast as it can, with nobody beside it: when a person is asked, the same order
 * is given, and displays that a person is to read are read by an {@linkplain Reader invented one}. */
public final class Unattended {
    private static final String NOBODY = "nobody";

    private final Order whenHeld;
    private final BiConsumer<Entry, RunFact> listener;
    private final TrueErrors truth;
    private final Reader reader;
    private final List<String> held = new ArrayList<>();
    private final Run run;

    /**
     * A run that has begun, with its first fact in the journal.
     *
     * @param whenHeld the answer to every question: skip the point, or stop
     * @param listener is told of every fact once it is kept
     */
    public Unattended(
            Rehearsal rehearsal,
            Journal journal,
            StreamName stream,
            Order whenHeld,
            BiConsumer<Entry, RunFact> listener) {
        this.whenHeld = whenHeld;
        this.listener = listener;
        truth = new TrueErrors(
                rehearsal.simulated(), rehearsal.worksheet().job().items());
        reader = new Reader(rehearsal.simulated());
        run = Run.begin(
                new Overheard(journal, this::hear),
                stream,
                rehearsal.worksheet().started(rehearsal.worksheet().job().operator(), Program.title()),
                rehearsal.open().bench(),
                SimulatedTime.asFastAsItCan(rehearsal.simulated()));
    }

    /** Works until the plan is done or an order has ended it. */
    public Ending carryOut() {
        return run.carryOut();
    }

    /** Why a person was asked, each time; empty when nobody was missed. */
    public List<String> held() {
        return List.copyOf(held);
    }

    /** What the recorded points should have found. */
    public TrueErrors truth() {
        return truth;
    }

    private void hear(Entry entry) {
        RunFact fact = RunNotation.decode(entry.fact());
        truth.take(entry, fact);
        reader.see(entry, fact, run);
        if (fact instanceof RunFact.Entered entered && entered.phase() == Phase.HELD) {
            held.add("point " + entered.point() + ": " + entered.why());
            run.order(whenHeld, NOBODY, entered.why());
        }
        listener.accept(entry, fact);
    }
}
