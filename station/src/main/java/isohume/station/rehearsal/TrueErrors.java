// SPDX-License-Identifier: Apache-2.0
package isohume.station.rehearsal;

import isohume.journal.Entry;
import isohume.quantity.Quantity;
import isohume.result.Item;
import isohume.result.Specification;
import isohume.run.RunFact;
import isohume.simulator.SimulatedBench;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * What the simulated instruments' errors really are where a run took its readings; nothing in the program reads it.
 *
 * <p>The true error of a point is the mean, over the readings that its record holds, of
 * {@link SimulatedBench#trueError}: what the instrument would show beyond the air at its sensor once lag and creep are
 * done, with the hysteresis of the way on which it came.
 */
public final class TrueErrors {
    private final SimulatedBench bench;
    private final List<Channel> channels = new ArrayList<>();
    private final NavigableMap<Long, List<Double>> observed = new TreeMap<>();
    private final List<TrueError> recorded = new ArrayList<>();

    private record Channel(String instrument, Quantity quantity) {}

    /**
     * One channel's error at one point.
     *
     * @param error in the quantity's {@link Quantity#differenceUnit}
     */
    public record TrueError(int point, String instrument, Quantity quantity, double error) {}

    public TrueErrors(SimulatedBench bench, List<Item> items) {
        this.bench = bench;
        for (Item item : items) {
            for (Specification channel : item.channels()) {
                channels.add(new Channel(item.id(), channel.quantity()));
            }
        }
    }

    /** Takes the next fact of the run, while the bench still stands at the instant at which it was written. */
    public void take(Entry entry, RunFact fact) {
        switch (fact) {
            case RunFact.Observed o -> observed.put(entry.number(), now());
            case RunFact.Recorded record -> close(record);
            case RunFact.Entered e -> observed.clear();
            case RunFact.Asked a -> observed.clear();
            case RunFact.Detoured d -> observed.clear();
            case RunFact.Withdrawn w -> recorded.removeIf(truth -> truth.point() == w.point());
            case RunFact.Guarded g -> {}
            case RunFact.Noticed n -> {}
            case RunFact.Over o -> {}
            case RunFact.Acted a -> {}
            case RunFact.Started s -> {}
            case RunFact.Resumed r -> {}
            case RunFact.Answered a -> {}
            case RunFact.Ordered o -> {}
            case RunFact.Rested r -> {}
            case RunFact.Finished f -> {}
            case RunFact.OfDisplay d -> {}
        }
    }

    private List<Double> now() {
        return channels.stream()
                .map(channel -> bench.trueError(channel.instrument(), channel.quantity()))
                .toList();
    }

    private void close(RunFact.Recorded record) {
        var readings =
                observed.subMap(record.first(), true, record.last(), true).values();
        for (int i = 0; i < channels.size(); i++) {
            int channel = i;
            double mean = readings.stream()
                    .mapToDouble(at -> at.get(channel))
                    .average()
                    .orElseThrow();
            recorded.add(new TrueError(
                    record.point(),
                    channels.get(i).instrument(),
                    channels.get(i).quantity(),
                    mean));
        }
    }

    /** In the order in which the points were recorded. */
    public List<TrueError> all() {
        return List.copyOf(recorded);
    }
}
