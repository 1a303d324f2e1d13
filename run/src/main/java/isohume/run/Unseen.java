// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.quantity.Point;
import isohume.quantity.Quantity;
import isohume.run.entry.DisplayEntry;
import isohume.run.entry.DisplayedChannel;
import isohume.run.entry.EntrySheet;
import java.util.ArrayList;
import java.util.List;

/** What may still come of a display that nobody watched on its way: as much as is usually late, and its own last move. */
final class Unseen {
    // Standard uncertainty of what comes late of a change, as a share of it: common practice, no source; as
    // TailSettling
    private static final double LATE_OF_HUMIDITY = 0.004;
    private static final double LATE_OF_TEMPERATURE = 0.002;
    private static final double ROOM_PERCENT = 50; // where instruments were before the first point, nobody recorded it
    private static final double ROOM_CELSIUS = 23;
    private static final double SINGLE_STEP = 1.5; // of the last digit, that a steady value can show from end to end

    private Unseen() {}

    static List<RunFact.ToCome> of(Plan plan, int point, EntrySheet sheet) {
        List<RunFact.ToCome> all = new ArrayList<>();
        for (DisplayedChannel channel : sheet.channels()) {
            List<DisplayEntry> standing =
                    sheet.of(channel).stream().filter(DisplayEntry::stands).toList();
            if (!standing.isEmpty()) {
                double u = StrictMath.hypot(late(plan, point, channel), moved(standing, channel));
                all.add(new RunFact.ToCome(channel.id(), 0, StrictMath.rint(u * 1e6) / 1e6));
            }
        }
        return all;
    }

    private static double late(Plan plan, int number, DisplayedChannel channel) {
        Point point = plan.point(number);
        double percent =
                number == 1 ? ROOM_PERCENT : plan.point(number - 1).humidity().percent();
        double celsius = number == 1
                ? ROOM_CELSIUS
                : plan.point(number - 1).temperature().celsius();
        return channel.quantity() == Quantity.RELATIVE_HUMIDITY
                ? LATE_OF_HUMIDITY * Math.abs(point.humidity().percent() - percent)
                : LATE_OF_TEMPERATURE * Math.abs(point.temperature().celsius() - celsius);
    }

    /** It may go on to change as much again as it did while it was read. */
    private static double moved(List<DisplayEntry> standing, DisplayedChannel channel) {
        double moved = standing.getLast().value() - standing.getFirst().value();
        if (standing.getLast().reference().isPresent()
                && standing.getFirst().reference().isPresent()) {
            moved -= standing.getLast().reference().getAsDouble()
                    - standing.getFirst().reference().getAsDouble();
        }
        return Math.max(0, Math.abs(moved) - SINGLE_STEP * channel.resolution().doubleValue());
    }
}
