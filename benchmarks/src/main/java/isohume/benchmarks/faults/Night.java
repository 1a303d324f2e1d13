// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.faults;

import isohume.device.Setpoint;
import isohume.journal.Entry;
import isohume.journal.JournalLost;
import isohume.journal.SqliteJournal;
import isohume.journal.StreamName;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.Ending;
import isohume.run.Order;
import isohume.run.Phase;
import isohume.run.Run;
import isohume.run.RunFact;
import isohume.simulator.BenchParameters;
import isohume.simulator.SimulatedBench;
import isohume.station.bench.OpenBench;
import isohume.station.job.Worksheet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;

/**
 * One run in which something goes wrong. A person comes by ten minutes after a hold, puts everything right and says to
 * go on, and comes again in the morning for what was stopped.
 */
final class Night implements AutoCloseable {
    static final StreamName STREAM = new StreamName("run", "night");
    static final Instant START = Instant.parse("2026-03-02T18:00:00Z");

    private static final Duration PERSON = Duration.ofMinutes(10);
    private static final int MOST_VISITS = 4;

    private final Trouble trouble;
    private final Dice dice;
    private final SimulatedBench bench;
    private final NightTime time;
    private final Worksheet worksheet;
    private final OpenBench open;
    private final LongConsumer acknowledged;
    private Path folder;
    private SqliteJournal journal;
    private Witness witness;
    private @Nullable Run run;
    private int visits;

    /** @param acknowledged hears the number of each fact that is on disk */
    Night(Trouble trouble, long seed, Instant start, Path folder, LongConsumer acknowledged) {
        this.trouble = trouble;
        this.folder = folder;
        this.acknowledged = acknowledged;
        dice = new Dice(seed);
        bench = SimulatedBench.start(BenchParameters.portable(), seed, start, 0);
        time = new NightTime(bench);
        worksheet = Documents.worksheet(trouble.points(dice));
        open = Documents.open(worksheet, bench, time, trouble != Trouble.DOOR_WITHOUT_CONTACT);
        journal = SqliteJournal.open(folder.resolve("journal.db"), time);
        witness = new Witness(journal, bench, this::hear);
    }

    SimulatedBench bench() {
        return bench;
    }

    NightTime time() {
        return time;
    }

    Witness witness() {
        return witness;
    }

    Path file() {
        return folder.resolve("journal.db");
    }

    Worksheet worksheet() {
        return worksheet;
    }

    /** From the evening to the morning. */
    void pass() {
        evening();
        mornings();
    }

    private void evening() {
        Duration begin = Duration.ofSeconds(dice.whole(60, 40 * 60));
        Duration length = Duration.ofSeconds(
                Math.round(dice.logarithmic(20, (double) trouble.longest().toSeconds())));
        time.at(begin, () -> trouble.begin(this, dice));
        time.at(begin.plus(length), () -> trouble.end(this));
        Run first = Run.begin(witness, STREAM, worksheet.started("Evening", "faults"), open.bench(), time);
        try {
            carryOut(first);
        } catch (PowerCut cut) {
            startAgain();
        }
    }

    /** The program is started again after an end that it had no part in; the chamber may be anywhere. */
    void startAgain() {
        boolean ignored = Run.closeIfCutOff(witness, STREAM, open.bench(), time);
    }

    void mornings() {
        for (int morning = 0; morning < 2 && canGoOn(); morning++) {
            repair();
            visits = 0;
            carryOut(Run.resume(witness, STREAM, "Morning", open.bench(), time));
        }
    }

    private void carryOut(Run next) {
        run = next;
        try {
            next.carryOut();
        } catch (JournalLost lost) {
            repair();
            boolean ignored = Run.closeIfCutOff(witness, STREAM, open.bench(), time);
        }
    }

    private boolean canGoOn() {
        Ending ending = new Verdict(this).course().ending().orElse(Ending.ABANDONED);
        return ending == Ending.STOPPED || ending == Ending.INTERRUPTED;
    }

    private void repair() {
        trouble.end(this);
        bench.service();
    }

    private void hear(Entry entry, RunFact fact) {
        acknowledged.accept(entry.number());
        if (fact instanceof RunFact.Entered entered && entered.phase() == Phase.HELD && run != null) {
            Run held = run;
            visits++;
            Order order = visits > MOST_VISITS ? Order.STOP : Order.RESUME;
            time.after(PERSON, () -> {
                repair();
                held.order(order, "Night watch", "put right");
            });
        }
    }

    /** The power goes: what is on the disk now is all that there will be, and the chamber comes back at rest. */
    void cutPower() {
        try {
            Path after = Files.createDirectories(folder.resolve("after"));
            for (String part : new String[] {"journal.db", "journal.db-wal"}) {
                if (Files.exists(folder.resolve(part))) {
                    Path ignored = Files.copy(folder.resolve(part), after.resolve(part));
                }
            }
            List<Entry> before = witness.acknowledged();
            Set<Long> falsePolls = witness.falsePolls();
            journal.close(); // nothing of what the dying program still does counts
            folder = after;
            journal = SqliteJournal.open(file(), time);
            witness = new Witness(journal, bench, this::hear);
            witness.remember(before, falsePolls);
            bench.restartChamber();
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        throw new PowerCut();
    }

    /** How the program that was running ends. */
    static final class PowerCut extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /** The chamber still follows what it was told by a program that is no more. */
    void drive() {
        var ignored =
                open.bench().chamber().request(new Setpoint(Temperature.ofCelsius(24), RelativeHumidity.ofPercent(50)));
    }

    String chamber() {
        return "127.0.0.1:" + bench.port() + " unit 1";
    }

    @Override
    public void close() {
        open.close();
        journal.close();
        bench.close();
    }
}
