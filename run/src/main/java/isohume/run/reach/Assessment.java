// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import isohume.device.Setpoint;
import java.util.Locale;
import java.util.Optional;

/**
 * What became of asking for a condition.
 *
 * @param demand empty where no formula vouches for the condition
 */
public record Assessment(Setpoint condition, Optional<Demand> demand, Outcome outcome) {
    /** Why it cannot be had, as a sentence with the nearest that can; empty when it can. */
    public Optional<String> hindrance() {
        return switch (outcome) {
            case Outcome.Reachable yes -> Optional.empty();
            case Outcome.Marginal near -> Optional.empty();
            case Outcome.NotReachable no ->
                Optional.of(String.format(
                        Locale.ROOT,
                        "%.1f %% RH at %.1f °C cannot be reached: %s%s",
                        condition.humidity().percent(),
                        condition.temperature().celsius(),
                        no.why(),
                        no.nearest().map(this::nearest).orElse("")));
        };
    }

    private String nearest(Setpoint near) {
        String humidity = String.format(
                Locale.ROOT, "; the nearest is %.1f %% RH", near.humidity().percent());
        return near.temperature().equals(condition.temperature())
                ? humidity
                : humidity
                        + String.format(
                                Locale.ROOT, " at %.1f °C", near.temperature().celsius());
    }

    public boolean reachable() {
        return switch (outcome) {
            case Outcome.Reachable yes -> true;
            case Outcome.Marginal near -> true;
            case Outcome.NotReachable no -> false;
        };
    }
}
