// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.export.Question.Choice;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Puts raw rows in the order of time; finds rows that are missing, there twice or out of order. */
final class Timeline {
    private static final int MOST_TOLD = 10;
    private static final long HOUR = 3_600_000;

    private final RawRows rows;
    private final Doubts doubts;
    private final int[] order;
    private final long interval;
    private long doubles;

    Timeline(RawRows rows, Doubts doubts) {
        this.rows = rows;
        this.doubts = doubts;
        this.order = order();
        this.interval = usual();
    }

    /** The rows as recorded; a file that begins with the newest row is turned round. */
    private int[] order() {
        long up = IntStream.range(1, rows.size())
                .filter(i -> rows.local(i) > rows.local(i - 1))
                .count();
        long down = IntStream.range(1, rows.size())
                .filter(i -> rows.local(i) < rows.local(i - 1))
                .count();
        boolean newestFirst = down > up;
        if (newestFirst) {
            doubts.find(Finding.Kind.TIME, 0, "the newest row stands first; the rows are turned round");
        }
        int last = rows.size() - 1;
        return IntStream.rangeClosed(0, last)
                .map(i -> newestFirst ? last - i : i)
                .toArray();
    }

    /** The step in the middle of those forward. */
    private long usual() {
        long[] steps = IntStream.range(1, order.length)
                .mapToLong(i -> rows.local(order[i]) - rows.local(order[i - 1]))
                .filter(step -> step > 0)
                .sorted()
                .toArray();
        return steps.length == 0 ? 1000 : steps[steps.length / 2];
    }

    /** The profile with what the rows showed of the clock, and the instants; nothing where that is in doubt. */
    Optional<Profile> settled(Profile profile) {
        Profile.Times times = profile.times();
        if (times.zone().isEmpty() || rows.size() == 0) {
            return Optional.of(profile);
        }
        LocalClock clock = clock(times);
        return clock.showsAStep() ? clock.habit(times.clock()).map(profile::with) : Optional.of(profile);
    }

    private LocalClock clock(Profile.Times times) {
        return new LocalClock(rows, order, interval, times.zone().orElseThrow(), doubts);
    }

    /** The rows that are used, with their instants. The doubts say if some cannot be. */
    Instants instants(Profile profile, boolean seconds) {
        Profile.Times times = profile.times();
        long[] at = times.zone().isEmpty()
                ? IntStream.range(0, order.length)
                        .mapToLong(i -> rows.local(order[i]))
                        .toArray()
                : clock(times).instants(times.clock().orElse(ClockHabit.FOLLOWS));
        refuseBackwards(at);
        Doubled doubled = doubled(profile, at, seconds);
        Instants used = new Instants(order.length);
        for (int from = 0; from < order.length; ) {
            int to = from + 1;
            while (to < order.length && at[to] == at[from]) {
                to++;
            }
            use(from, to, at, doubled, used);
            from = to;
        }
        used.trim();
        if (doubles > MOST_TOLD) {
            doubts.find(Finding.Kind.DOUBLED_ROWS, 0, "in all " + doubles + " times are there more than once");
        }
        tellMissing(used, used.interval().toMillis());
        return used;
    }

    private void refuseBackwards(long[] at) {
        for (int i = 1; i < at.length; i++) {
            if (at[i] < at[i - 1]) {
                boolean hour = Math.abs(at[i - 1] - at[i] + interval - HOUR) <= interval / 2;
                doubts.wrong(
                        rows.line(order[i]),
                        0,
                        "the time goes back from " + text(at[i - 1]) + " to " + text(at[i]),
                        hour
                                ? "if this is the end of daylight saving, answer zone with a place, as in"
                                        + " zone=Europe/Berlin"
                                : "was the clock set? split the file here");
            }
        }
    }

    private Doubled doubled(Profile profile, long[] at, boolean seconds) {
        List<String> evidence = new ArrayList<>();
        long count = 0;
        for (int i = 1; i < at.length; i++) {
            if (at[i] == at[i - 1] && !rows.same(order[i], order[i - 1])) {
                count++;
                if (evidence.size() < MOST_TOLD) {
                    evidence.add(
                            "lines " + rows.line(order[i - 1]) + " and " + rows.line(order[i]) + ": " + text(at[i]));
                }
            }
        }
        if (count == 0 || profile.doubled() != Doubled.ASK) {
            return profile.doubled();
        }
        List<Choice> choices = new ArrayList<>();
        if (!seconds && count > at.length / 4) {
            choices.add(new Choice("spread", "their seconds are missing: spread them evenly over the minute"));
        }
        choices.add(new Choice("first", "use the first of them"));
        choices.add(new Choice("last", "use the last of them"));
        choices.add(new Choice("neither", "use none of them"));
        return doubts.ask(
                        Doubled.class,
                        "doubled-rows",
                        count + " rows have the time of the row before and other values. Which is used?",
                        choices,
                        evidence)
                .orElse(Doubled.ASK);
    }

    private void use(int from, int to, long[] at, Doubled doubled, Instants used) {
        if (doubled == Doubled.ASK && !alike(from, to)) {
            used.add(order[from], at[from]); // only until the question is answered
            return;
        }
        if (to == from + 1) {
            used.add(order[from], at[from]);
            return;
        }
        if (doubled == Doubled.SPREAD) {
            for (int i = from; i < to; i++) {
                used.add(order[i], at[i] + (i - from) * 60_000L / (to - from));
            }
            return;
        }
        String lines = "lines " + rows.line(order[from]) + " to " + rows.line(order[to - 1]) + " have one time, "
                + text(at[from]);
        boolean alike = alike(from, to);
        if (alike || doubled == Doubled.FIRST) {
            used.add(order[from], at[from]);
        } else if (doubled == Doubled.LAST) {
            used.add(order[to - 1], at[from]);
        }
        if (doubles++ < MOST_TOLD) {
            String what = alike ? "and the same values: one is used" : "and other values: " + used(doubled);
            doubts.find(Finding.Kind.DOUBLED_ROWS, rows.line(order[from]), lines + ", " + what);
        }
    }

    private boolean alike(int from, int to) {
        return IntStream.range(from + 1, to).allMatch(i -> rows.same(order[i], order[from]));
    }

    private static String used(Doubled doubled) {
        return doubled == Doubled.NEITHER ? "none is used" : "the " + Doubts.word(doubled) + " is used";
    }

    private void tellMissing(Instants used, long interval) {
        long regular = 0;
        int told = 0;
        long missing = 0;
        for (int i = 1; i < used.size(); i++) {
            long step = used.millis(i) - used.millis(i - 1);
            long absent = Math.round((double) step / interval) - 1;
            regular += Math.abs(step - interval) * 10 <= interval ? 1 : 0;
            if (absent >= 1) {
                missing += absent;
                if (told++ < MOST_TOLD) {
                    doubts.find(
                            Finding.Kind.MISSING_ROWS,
                            rows.line(used.row(i)),
                            absent + (absent == 1 ? " row is" : " rows are") + " missing between "
                                    + text(used.millis(i - 1)) + " and " + text(used.millis(i)));
                }
            }
        }
        if (told > MOST_TOLD) {
            doubts.find(Finding.Kind.MISSING_ROWS, 0, "in all " + missing + " rows are missing in " + told + " places");
        }
        if (used.size() > 2 && regular * 2 < used.size()) {
            doubts.find(Finding.Kind.TIME, 0, "the rows come at no regular interval");
        }
    }

    private static String text(long millis) {
        return Instant.ofEpochMilli(millis).toString();
    }
}
