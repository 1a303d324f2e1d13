// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** What to do about each fault: what the plan or the bench says, else the usual. Immutable. */
public record Policies(Map<Fault, Policy> given) {
    private static final Policy AT_ONCE_HOLD = new Policy(Duration.ZERO, Measure.HOLD);

    public Policies {
        given = Map.copyOf(given);
    }

    /** Nothing but the usual. */
    public static Policies usual() {
        return new Policies(Map.of());
    }

    /** These, with others in their place where there are any. */
    public Policies with(Policies others) {
        Map<Fault, Policy> both = new EnumMap<>(Fault.class);
        both.putAll(given);
        both.putAll(others.given);
        return new Policies(both);
    }

    /**
     * The policy for a fault.
     *
     * @param patience how long the plan lets a channel be silent
     */
    public Policy of(Fault fault, Duration patience) {
        return Optional.ofNullable(given.get(fault)).orElseGet(() -> usual(fault, patience));
    }

    /** Common practice, no source: readings are never used, hardware comes before the plan, the plan before waiting. */
    private static Policy usual(Fault fault, Duration patience) {
        return switch (fault) {
            case SILENT, GARBLED, REFUSED, UNPLUGGED -> new Policy(patience, Measure.HOLD);
            case FROZEN, OUT_OF_RANGE, DOOR_OPEN -> minutes(10, Measure.HOLD);
            case DOUBTFUL, TEMPERATURE_OFF -> minutes(30, Measure.HOLD);
            case DISAGREEING, NOT_SETTLED, UNREAD, TARGET_LOST -> AT_ONCE_HOLD;
            case WATER_LOW, DISK_LOW -> minutes(0, Measure.STOP_AFTER_POINT);
            case DRY_AIR, WET_AIR, DEPOSIT_UNDECIDED -> minutes(20, Measure.SKIP);
            case OVER_TEMPERATURE -> minutes(0, Measure.STOP);
            case CLOCK_STEPPED -> minutes(0, Measure.GO_ON);
        };
    }

    private static Policy minutes(int wait, Measure then) {
        return new Policy(Duration.ofMinutes(wait), then);
    }
}
