// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.export.Question.Choice;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * From the times of a logger's clock to instants. Where the clocks were put forward or back while the logger ran, the
 * rows show whether its own clock followed: after the step forward an hour of times is missing from a clock that did;
 * at the step back an hour of times is there twice. What the rows leave open is asked.
 */
final class LocalClock {
    private static final long HOUR = 3_600_000;

    private final RawRows rows;
    private final int[] order;
    private final long interval;
    private final Doubts doubts;
    private final ZoneRules rules;
    private final ZoneId zone;

    private enum Sign {
        FOLLOWED,
        STAYED,
        UNCLEAR
    }

    /** @param order the rows in the order in which they were recorded */
    LocalClock(RawRows rows, int[] order, long interval, ZoneId zone, Doubts doubts) {
        this.rows = rows;
        this.order = order;
        this.interval = interval;
        this.zone = zone;
        this.rules = zone.getRules();
        this.doubts = doubts;
    }

    /** Whether a step of the clocks lies within the record or next to it. */
    private List<ZoneOffsetTransition> steps() {
        List<ZoneOffsetTransition> steps = new ArrayList<>();
        if (order.length == 0) {
            return steps;
        }
        long first = Long.MAX_VALUE;
        long last = Long.MIN_VALUE;
        for (int row : order) {
            first = Math.min(first, rows.local(row));
            last = Math.max(last, rows.local(row));
        }
        Instant end = local(last).toInstant(rules.getOffset(local(last)));
        Instant from = local(first).toInstant(rules.getOffset(local(first))).minusMillis(HOUR);
        for (ZoneOffsetTransition step = rules.nextTransition(from);
                step != null && !step.getInstant().isAfter(end.plusMillis(HOUR));
                step = rules.nextTransition(step.getInstant())) {
            steps.add(step);
        }
        return steps;
    }

    /** Whether the clocks around the logger were put forward or back while it ran. */
    boolean showsAStep() {
        return steps().stream().anyMatch(this::within);
    }

    /** What the clock did, unless it is in doubt. */
    Optional<ClockHabit> habit(Optional<ClockHabit> known) {
        List<ZoneOffsetTransition> steps = steps().stream().filter(this::within).toList();
        List<String> evidence = new ArrayList<>();
        boolean followed = false;
        boolean stayedInSpring = false;
        boolean stayed = false;
        for (ZoneOffsetTransition step : steps) {
            Sign sign = sign(step);
            evidence.add(told(step, sign));
            followed |= sign == Sign.FOLLOWED;
            stayed |= sign == Sign.STAYED;
            stayedInSpring |= sign == Sign.STAYED && step.isGap();
        }
        evidence.forEach(line -> doubts.find(Finding.Kind.DAYLIGHT_SAVING, 0, line));
        if (known.isPresent()) {
            return known;
        }
        if (followed && !stayed) {
            return Optional.of(ClockHabit.FOLLOWS);
        }
        if (stayedInSpring && !followed) {
            return Optional.of(ClockHabit.STANDARD);
        }
        return ask(evidence);
    }

    private Optional<ClockHabit> ask(List<String> evidence) {
        return doubts.ask(
                ClockHabit.class,
                "clock",
                "Did the logger's clock follow daylight saving in " + zone + "?",
                List.of(
                        new Choice("follows", "it was put forward and back with the clocks around it"),
                        new Choice("standard", "it stayed on standard (winter) time"),
                        new Choice("daylight", "it stayed on daylight-saving (summer) time")),
                evidence);
    }

    /** Whether rows lie on both sides of a step, so that it could show. */
    private boolean within(ZoneOffsetTransition step) {
        long low = Math.min(millis(step.getDateTimeBefore()), millis(step.getDateTimeAfter()));
        long high = Math.max(millis(step.getDateTimeBefore()), millis(step.getDateTimeAfter()));
        boolean before = false;
        boolean after = false;
        for (int row : order) {
            before |= rows.local(row) < high;
            after |= rows.local(row) >= low;
        }
        return before && after;
    }

    private Sign sign(ZoneOffsetTransition step) {
        return step.isGap() ? atStepForward(step) : atStepBack(step);
    }

    private Sign atStepForward(ZoneOffsetTransition step) {
        long from = millis(step.getDateTimeBefore());
        long to = millis(step.getDateTimeAfter());
        for (int i = 0; i < order.length; i++) {
            long at = rows.local(order[i]);
            if (at >= from && at < to) {
                return Sign.STAYED;
            }
            if (i > 0 && rows.local(order[i - 1]) < from && at >= to) {
                return usual(at - rows.local(order[i - 1]) - (to - from)) ? Sign.FOLLOWED : Sign.UNCLEAR;
            }
        }
        return Sign.UNCLEAR;
    }

    private Sign atStepBack(ZoneOffsetTransition step) {
        long from = millis(step.getDateTimeAfter());
        long to = millis(step.getDateTimeBefore());
        for (int i = 1; i < order.length; i++) {
            long before = rows.local(order[i - 1]);
            long at = rows.local(order[i]);
            if (at >= from - interval && before < to + interval && wentBack(before, at, to - from)) {
                return Sign.FOLLOWED;
            }
        }
        return Sign.UNCLEAR;
    }

    /** Whether a step from one row to the next is the usual one only if an hour lies in between that was there before. */
    private boolean wentBack(long before, long at, long by) {
        return !usual(at - before) && usual(at - before + by);
    }

    private boolean usual(long difference) {
        return Math.abs(difference - interval) <= interval / 2;
    }

    private String told(ZoneOffsetTransition step, Sign sign) {
        String which = step.isGap() ? "forward" : "back";
        String what = switch (sign) {
            case FOLLOWED ->
                step.isGap()
                        ? "the rows leave that hour out: the logger's clock followed"
                        : "that hour is there twice: the logger's clock followed";
            case STAYED -> "there are rows in the hour that was left out: the logger's clock stayed as it was";
            case UNCLEAR -> "the rows do not show whether the logger's clock followed";
        };
        return "at " + step.getDateTimeBefore() + " the clocks in " + zone + " were put " + which + " to "
                + step.getDateTimeAfter() + "; " + what;
    }

    /** The rows' instants in the order in which they were recorded, in milliseconds. */
    long[] instants(ClockHabit habit) {
        long[] at = new long[order.length];
        ZoneOffset last = null;
        for (int i = 0; i < order.length; i++) {
            boolean back = i > 0 && wentBack(rows.local(order[i - 1]), rows.local(order[i]), HOUR);
            LocalDateTime local = local(rows.local(order[i]));
            ZoneOffset offset = switch (habit) {
                case FOLLOWS -> following(local, last, back, rows.line(order[i]));
                case STANDARD -> rules.getStandardOffset(local.toInstant(ZoneOffset.UTC));
                case DAYLIGHT -> daylight(local);
            };
            at[i] = rows.local(order[i]) - offset.getTotalSeconds() * 1000L;
            last = offset;
        }
        return at;
    }

    private ZoneOffset daylight(LocalDateTime local) {
        Instant about = local.toInstant(ZoneOffset.UTC);
        Duration saving = Duration.ofHours(1); // the one step in use but for Lord Howe Island
        return ZoneOffset.ofTotalSeconds(
                rules.getStandardOffset(about).getTotalSeconds() + Math.toIntExact(saving.toSeconds()));
    }

    private ZoneOffset following(LocalDateTime local, @Nullable ZoneOffset last, boolean back, long line) {
        List<ZoneOffset> valid = rules.getValidOffsets(local);
        if (valid.isEmpty()) {
            doubts.wrong(
                    line,
                    0,
                    "the time " + local + " was left out in " + zone + " when the clocks were put forward",
                    "if the logger's clock stayed on standard time, answer clock=standard");
            return rules.getOffset(local);
        }
        if (valid.size() == 1) {
            return valid.getFirst();
        }
        return back || valid.get(1).equals(last) ? valid.get(1) : valid.getFirst();
    }

    private static LocalDateTime local(long millis) {
        return LocalDateTime.ofEpochSecond(
                Math.floorDiv(millis, 1000L),
                Math.toIntExact(Math.floorMod(millis, 1000L)) * 1_000_000,
                ZoneOffset.UTC);
    }

    private static long millis(LocalDateTime local) {
        return local.toInstant(ZoneOffset.UTC).toEpochMilli();
    }
}
