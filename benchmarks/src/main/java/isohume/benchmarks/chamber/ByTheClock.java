// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.chamber;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.device.Setpoint;
import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.MemoryJournal;
import isohume.journal.StreamName;
import isohume.moistair.MoistAir;
import isohume.quantity.Phase;
import isohume.quantity.Point;
import isohume.run.Ending;
import isohume.run.Moment;
import isohume.run.RunFact;
import isohume.run.RunNotation;
import isohume.run.Timekeeper;
import isohume.station.bench.RecordedRun;
import isohume.station.rehearsal.Rehearsal;
import isohume.station.rehearsal.SimulatedTime;
import isohume.station.rehearsal.TrueErrors;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Common practice: an hour at each new temperature, then for each humidity a fixed wait, and readings when the clock says
 * so. The points come in the order given, and nobody judges whether anything has settled.
 *
 * <p>Per point 8 min to settle, 12 min of dwell and 5 min of readings, within the usual 5 to 10, 10 to 20 and 5 to 10;
 * common practice, no source.
 */
final class ByTheClock implements Way {
    private static final Duration SOAK = Duration.ofMinutes(60);
    private static final Duration SETTLE = Duration.ofMinutes(8);
    private static final Duration DWELL = Duration.ofMinutes(12);
    private static final Duration WINDOW = Duration.ofMinutes(5);
    private static final Duration INTERVAL = Duration.ofSeconds(10);
    private static final StreamName STREAM = new StreamName("run", "by-the-clock");

    @Override
    public Outcome work(Job job) {
        try (Rehearsal bench = job.rehearse(job.worksheet());
                Journal journal = new MemoryJournal(bench.simulated()::now)) {
            return new Watch(bench, journal).work(job);
        }
    }

    /** Somebody with a watch and a list of points. */
    private static final class Watch {
        private final Rehearsal bench;
        private final Journal journal;
        private final Timekeeper time;
        private final TrueErrors truth;

        Watch(Rehearsal bench, Journal journal) {
            this.bench = bench;
            this.journal = journal;
            time = SimulatedTime.asFastAsItCan(bench.simulated());
            truth = new TrueErrors(bench.simulated(), bench.worksheet().job().items());
        }

        Outcome work(Job job) {
            write(bench.worksheet().started("nobody", "by the clock"));
            List<Point> points = bench.worksheet().plan().points();
            for (Point point : points) {
                boolean first = point.number() == 1;
                boolean warms = first
                        || !point.temperature()
                                .equals(points.get(point.number() - 2).temperature());
                visit(point, warms ? SOAK : Duration.ZERO);
            }
            Duration passed = Duration.between(job.start(), time.instant());
            write(new RunFact.Finished(Ending.COMPLETED, "every point is done"));
            return Outcome.of(
                    passed, new RecordedRun(journal, STREAM).results(), truth, points.size(), Duration.ZERO, List.of());
        }

        private void visit(Point point, Duration soak) {
            Setpoint target = new Setpoint(point.temperature(), point.humidity());
            write(new RunFact.Asked(point.number(), target));
            write(new RunFact.Answered(bench.open().bench().chamber().request(target)));
            Instant next = time.instant().plus(soak).plus(SETTLE).plus(DWELL);
            Instant end = next.plus(WINDOW);
            List<Long> readings = new ArrayList<>();
            Optional<Phase> deposit = Optional.empty();
            while (next.isBefore(end)) {
                next = next.plus(INTERVAL);
                time.waitUntil(next, () -> false);
                RunFact.Observed observed = new RunFact.Observed(time.instant(), read());
                long number = write(observed).number();
                Optional<Phase> now = deposit(observed);
                if (!now.equals(deposit)) {
                    readings.clear(); // what was read over another deposit is another matter
                }
                deposit = now;
                if (now.isPresent()) {
                    readings.add(number);
                }
            }
            if (readings.size() > 1) {
                write(new RunFact.Recorded(point.number(), readings.getFirst(), readings.getLast()));
            }
        }

        private Optional<Phase> deposit(RunFact.Observed observed) {
            MoistAir air = MoistAir.by(bench.worksheet().job().formulation());
            Moment moment = Moment.of(observed, bench.worksheet().roles(), air);
            return moment.referencesWhole() ? moment.deposit() : Optional.empty();
        }

        private List<Reading> read() {
            List<Reading> readings =
                    new ArrayList<>(bench.open().bench().chamber().read());
            for (Instrument instrument : bench.open().bench().instruments()) {
                readings.addAll(instrument.read());
            }
            return readings;
        }

        @CanIgnoreReturnValue
        private Entry write(RunFact fact) {
            Entry entry = journal.append(STREAM, RunNotation.encode(fact));
            truth.take(entry, fact);
            return entry;
        }
    }
}
