// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.faults;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.device.Reading;
import isohume.journal.Entry;
import isohume.journal.Fact;
import isohume.journal.Journal;
import isohume.journal.JournalLost;
import isohume.journal.Relay;
import isohume.journal.StreamName;
import isohume.quantity.Quantity;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.simulator.SimulatedBench;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;

/**
 * Stands between a run and its journal: remembers every fact that was acknowledged, notes which polls held a false
 * reading by what the simulator knows, and has no room left when told so.
 *
 * <p>A reading is false when it is away from what the instrument would have shown by more than three of its last digits,
 * or 0.25 % RH, or 0.1 K, whichever is most; a display that stands still in still air is not. Every reading is, while the
 * door is open or was since the poll before.
 */
final class Witness extends Relay {
    private static final double DIGITS = 3.001;

    private final SimulatedBench bench;
    private final List<Entry> acknowledged = new ArrayList<>();
    private final Set<Long> falsePolls = new TreeSet<>();
    private final BiConsumer<Entry, RunFact> listener;
    private boolean full;
    private boolean doorWasOpen;

    Witness(Journal journal, SimulatedBench bench, BiConsumer<Entry, RunFact> listener) {
        super(journal);
        this.bench = bench;
        this.listener = listener;
    }

    void fill(boolean now) {
        full = now;
    }

    @Override
    @CanIgnoreReturnValue
    public Entry append(StreamName stream, Fact fact) {
        if (full) {
            throw new JournalLost("The disk is full: no room for the journal.");
        }
        Entry entry = super.append(stream, fact);
        acknowledged.add(entry);
        if (stream.kind().equals("run")) {
            RunFact told = RunNotation.decode(fact);
            if (told instanceof RunFact.Observed observed) {
                judge(entry, observed);
            }
            listener.accept(entry, told);
        }
        return entry;
    }

    private void judge(Entry entry, RunFact.Observed observed) {
        boolean doorOpen = bench.isDoorOpen();
        boolean anyFalse = doorOpen || doorWasOpen;
        doorWasOpen = doorOpen;
        for (Reading reading : observed.readings()) {
            if (reading instanceof Reading.Value value && isKnown(value)) {
                double would = bench.wouldShow(
                        value.channel().instrument(), value.channel().quantity());
                double away = Math.abs(value.shown().doubleValue() - would);
                anyFalse |= away > slack(value);
            }
        }
        if (anyFalse) {
            falsePolls.add(entry.number());
        }
    }

    private static boolean isKnown(Reading.Value value) {
        return switch (value.channel().quantity()) {
            case RELATIVE_HUMIDITY, TEMPERATURE, DEW_POINT ->
                !value.channel().instrument().equals("chamber"); // no reference, and never in a result
            case PRESSURE, DEPOSIT, WATER_LEVEL -> false;
        };
    }

    private static double slack(Reading.Value value) {
        double least = value.channel().quantity() == Quantity.RELATIVE_HUMIDITY ? 0.25 : 0.1;
        return Math.max(DIGITS * value.shown().ulp().doubleValue(), least);
    }

    /** What another witness saw before. */
    void remember(List<Entry> entries, Set<Long> polls) {
        acknowledged.addAll(entries);
        falsePolls.addAll(polls);
    }

    List<Entry> acknowledged() {
        return List.copyOf(acknowledged);
    }

    Set<Long> falsePolls() {
        return Set.copyOf(falsePolls);
    }
}
