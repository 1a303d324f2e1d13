// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import isohume.device.Setpoint;
import java.util.List;
import java.util.Optional;

/** Whether a bench can have a condition. */
public sealed interface Outcome {
    /** It can. */
    record Reachable() implements Outcome {}

    /** It can, but a person should know why it is near an edge. */
    record Marginal(List<String> why) implements Outcome {
        public Marginal {
            why = List.copyOf(why);
        }
    }

    /**
     * It cannot.
     *
     * @param why in words, without the condition itself
     * @param nearest what it can have instead, at the same temperature where there is anything; empty when the bench can
     *     have nothing at all
     */
    record NotReachable(Limit limit, String why, Optional<Setpoint> nearest) implements Outcome {}
}
