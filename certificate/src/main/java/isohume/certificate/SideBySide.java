// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Places along a line, moved apart where they would hide each other. Only the drawing moves; the order of neighbours
 * that are told apart by their value stays.
 */
final class SideBySide {
    private static final double SHARE = 0.8; // of the way to the next heap that a heap may fill

    private SideBySide() {}

    /**
     * Puts the members of a heap beside each other around the heap's middle.
     *
     * @param wanted places in any order
     * @param rank order inside a heap, lower to the left
     * @param apart distance inside a heap, less where the next heap is near; what is closer than this belongs to one
     *     heap
     * @return places in the order of {@code wanted}
     */
    static double[] spread(double[] wanted, Comparator<Integer> rank, double apart) {
        double[] places = wanted.clone();
        List<List<Integer>> heaps = heaps(wanted, apart);
        double[] middles = heaps.stream()
                .mapToDouble(
                        h -> h.stream().mapToDouble(i -> wanted[i]).average().orElseThrow())
                .toArray();
        for (int h = 0; h < middles.length; h++) {
            List<Integer> ordered = heaps.get(h).stream().sorted(rank).toList();
            double step = Math.min(apart, SHARE * room(middles, h) / ordered.size());
            for (int i = 0; i < ordered.size() && ordered.size() > 1; i++) {
                places[ordered.get(i)] = middles[h] + (i - (ordered.size() - 1) / 2.0) * step;
            }
        }
        return places;
    }

    /** The least moves downwards and then upwards that keep labels apart between two ends. */
    static double[] stack(double[] wanted, double apart, double end) {
        List<Integer> order = IntStream.range(0, wanted.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> wanted[i]))
                .toList();
        double[] places = wanted.clone();
        for (int i = 1; i < order.size(); i++) {
            places[order.get(i)] = Math.max(places[order.get(i)], places[order.get(i - 1)] + apart);
        }
        double limit = end;
        for (int i = order.size() - 1; i >= 0; i--) {
            places[order.get(i)] = Math.min(places[order.get(i)], limit);
            limit = places[order.get(i)] - apart;
        }
        return places;
    }

    /** From a heap to the nearest other one. */
    private static double room(double[] rising, int heap) {
        double before = heap == 0 ? Double.POSITIVE_INFINITY : rising[heap] - rising[heap - 1];
        double after = heap == rising.length - 1 ? Double.POSITIVE_INFINITY : rising[heap + 1] - rising[heap];
        return Math.min(before, after);
    }

    private static List<List<Integer>> heaps(double[] wanted, double apart) {
        List<Integer> order = IntStream.range(0, wanted.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> wanted[i]))
                .toList();
        List<List<Integer>> heaps = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (int i : order) {
            if (heaps.isEmpty() || wanted[i] - last >= apart) {
                heaps.add(new ArrayList<>());
            }
            heaps.getLast().add(i);
            last = wanted[i];
        }
        return heaps;
    }
}
