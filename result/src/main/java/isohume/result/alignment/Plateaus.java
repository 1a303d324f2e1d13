// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Which of a logger's readings belong to which point. At both ends of a window one interval of the logger and what the
 * clocks are uncertain by are left out: on a ramp of 10 % RH/min a minute is 10 % RH, on a plateau it is next to nothing.
 */
public final class Plateaus {
    private Plateaus() {}

    /**
     * A time in which the reference was at rest at a point, in seconds by the reference's clock.
     *
     * @param point the number of the point in the plan
     */
    public record Window(int point, double from, double to) {
        public Window {
            if (!(from < to)) {
                throw new IllegalArgumentException("point " + point + " ends before it begins");
            }
        }
    }

    /** What becomes of one of the logger's readings. */
    public sealed interface Use {
        /** It belongs to a point; {@code seconds} is its time by the reference's clock. */
        record OfPoint(int point, double seconds) implements Use {}

        /** It is not used, and why. */
        record None(double seconds, String why) implements Use {}
    }

    /** What becomes of each reading, by the times of the logger's clock in seconds. */
    public static List<Use> of(List<Window> windows, Alignment.Found clocks, double[] seconds, double interval) {
        List<Use> uses = new ArrayList<>();
        for (double logger : seconds) {
            uses.add(use(windows, clocks.reference(logger), interval, clocks.expandedAt(logger)));
        }
        return uses;
    }

    private static Use use(List<Window> windows, double at, double interval, double doubt) {
        double guard = interval + doubt;
        for (Window window : windows) {
            if (at >= window.from + guard && at <= window.to - guard) {
                return new Use.OfPoint(window.point, at);
            }
        }
        for (Window window : windows) {
            if (at >= window.from && at <= window.to) {
                String end = at < window.from + guard ? "beginning" : "end";
                return new Use.None(
                        at,
                        String.format(
                                Locale.ROOT,
                                "within the guard at the %s of point %d: one interval of %.0f s and %.0f s for the clocks",
                                end,
                                window.point,
                                interval,
                                doubt));
            }
        }
        return new Use.None(at, "at no point: the chamber was on its way, or nothing was recorded");
    }
}
