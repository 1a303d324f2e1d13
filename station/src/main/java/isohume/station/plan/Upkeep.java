// SPDX-License-Identifier: Apache-2.0
package isohume.station.plan;

import isohume.run.reach.Supplies;
import isohume.run.reach.Use;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Whether what a plan uses up is there. */
public record Upkeep(List<Line> lines, boolean flowStated) {
    private static final double TIGHT = 0.8; // of what is left; common practice, no source

    public Upkeep {
        lines = List.copyOf(lines);
    }

    /** Whether it is enough. */
    public enum Lasts {
        YES,
        /** Enough, and not much more. */
        BARELY,
        NO,
        /** The bench does not state how much there is. */
        NOT_STATED
    }

    /** One supply, g. */
    public record Line(String key, String title, double needed, OptionalDouble left) {
        public Lasts lasts() {
            if (left.isEmpty()) {
                return Lasts.NOT_STATED;
            }
            double amount = left.getAsDouble();
            if (needed > amount) {
                return Lasts.NO;
            }
            return needed > TIGHT * amount ? Lasts.BARELY : Lasts.YES;
        }

        /** As a sentence. */
        public String inWords() {
            String amount = String.format(Locale.ROOT, "%s: about %.1f g", title, needed);
            return switch (lasts()) {
                case YES -> amount + String.format(Locale.ROOT, " of %.0f g left, which lasts", left.getAsDouble());
                case BARELY ->
                    amount + String.format(Locale.ROOT, " of %.0f g left, which only just lasts", left.getAsDouble());
                case NO ->
                    amount
                            + String.format(
                                    Locale.ROOT,
                                    " and only %.0f g left: it will not last; refill before the run",
                                    left.getAsDouble());
                case NOT_STATED -> amount + "; the bench does not state how much is left (supplies)";
            };
        }
    }

    /** Of the plan of a prospect. */
    public static Upkeep of(Prospect prospect) {
        Use use = prospect.use();
        Supplies supplies = prospect.worksheet().capacity().supplies();
        return new Upkeep(
                List.of(
                        new Line("water", "water", use.water(), supplies.water()),
                        new Line(
                                "drying_agent",
                                "drying agent, water taken up",
                                use.dryingAgent(),
                                supplies.dryingAgent())),
                prospect.worksheet().capacity().flowStated());
    }
}
