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
    private SideBySide() {}

    /**
     * Puts the members of a heap beside each other around the heap's middle.
     *
     * @param wanted places in any order
     * @param rank order inside a heap, lower to the left
     * @param apart least distance; what is closer belongs to one heap
     * @return places in the order of {@code wanted}
     */
    static double[] spread(double[] wanted, Comparator<Integer> rank, double apart) {
        double[] places = wanted.clone();
        for (List<Integer> heap : heaps(wanted, apart)) {
            double middle = heap.stream().mapToDouble(i -> wanted[i]).average().orElseThrow();
            List<Integer> ordered = heap.stream().sorted(rank).toList();
            for (int i = 0; i < ordered.size() && ordered.size() > 1; i++) {
                places[ordered.get(i)] = middle + (i - (ordered.size() - 1) / 2.0) * apart;
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
