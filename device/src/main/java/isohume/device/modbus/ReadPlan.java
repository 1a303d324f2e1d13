// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Which spans to ask for so that every wanted one is read in few requests. */
final class ReadPlan {
    private static final int MOST = 125; // Application Protocol V1.1b3, 6.3 and 6.4

    private ReadPlan() {}

    /**
     * Joins wanted spans of one table where at most {@code gap} unwanted registers lie between them.
     *
     * @return in the order of table and address; each wanted span lies in one of them
     */
    static List<Span> of(Collection<Span> wanted, int gap) {
        List<Span> sorted = wanted.stream()
                .distinct()
                .sorted(Comparator.comparing(Span::table).thenComparingInt(Span::address))
                .toList();
        List<Span> plan = new ArrayList<>();
        for (Span next : sorted) {
            if (!plan.isEmpty() && joins(plan.getLast(), next, gap)) {
                Span last = plan.removeLast();
                plan.add(new Span(last.table(), last.address(), Math.max(last.end(), next.end()) - last.address()));
            } else {
                plan.add(next);
            }
        }
        return List.copyOf(plan);
    }

    private static boolean joins(Span last, Span next, int gap) {
        return last.table() == next.table()
                && next.address() - last.end() <= gap
                && Math.max(last.end(), next.end()) - last.address() <= MOST;
    }
}
