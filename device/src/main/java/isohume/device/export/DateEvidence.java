// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.export.Question.Choice;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the dates of a file tell about their order. An order that makes one of them impossible is out. Of two that are
 * possible, the one by which the rows go on over midnight at the interval that they have within a day is right: by the
 * other one a month or more would lie between a day and the next.
 */
final class DateEvidence {
    private static final int MOST_NIGHTS = 4096;
    private static final int MOST_STEPS = 64;

    private final Map<DateOrder, Long> before = new EnumMap<>(DateOrder.class);
    private final Map<DateOrder, List<Long>> nights = new EnumMap<>(DateOrder.class);
    private final Map<DateOrder, Long> impossible = new EnumMap<>(DateOrder.class);
    private final Map<Long, Integer> steps = new HashMap<>();
    private Optional<Stamp> last = Optional.empty();
    private Optional<String> first = Optional.empty();
    private long firstLine;
    private long count;
    private boolean seconds;
    private boolean stated = true;

    void add(Stamp stamp, long line, String cell) {
        if (first.isEmpty()) {
            first = Optional.of(cell);
            firstLine = line;
        }
        count++;
        seconds |= stamp.seconds();
        stated &= stamp.offset().isPresent();
        boolean sameDay = last.isPresent() && last.get().date().equals(stamp.date());
        for (DateOrder order : DateOrder.values()) {
            Optional<LocalDateTime> at = stamp.local(order);
            if (at.isEmpty()) {
                impossible.merge(order, 1L, Long::sum);
            } else {
                step(order, at.get().toEpochSecond(ZoneOffset.UTC), sameDay);
            }
        }
        last = Optional.of(stamp);
    }

    private void step(DateOrder order, long at, boolean sameDay) {
        Long previous = before.put(order, at);
        if (previous == null) {
            return;
        }
        if (!sameDay) {
            List<Long> list = nights.computeIfAbsent(order, o -> new ArrayList<>());
            if (list.size() < MOST_NIGHTS) {
                list.add(at - previous);
            }
        } else if (steps.size() < MOST_STEPS || steps.containsKey(at - previous)) {
            steps.merge(at - previous, 1, Integer::sum);
        }
    }

    /** Whether times have seconds. */
    boolean hasSeconds() {
        return seconds;
    }

    /** Whether every time says how far it is from UTC. */
    boolean statesZone() {
        return stated && count > 0;
    }

    /** The order, unless it is in doubt; then the doubts have the question. */
    Optional<DateOrder> order(Doubts doubts) {
        Stamp.Date sample = last.orElseThrow().date().orElseThrow();
        List<DateOrder> possible = possible(sample);
        Optional<String> answer = doubts.answer("date-order");
        if (answer.isEmpty() && sample.yearFirst()) {
            return Optional.of(DateOrder.YEAR_FIRST);
        }
        if (answer.isEmpty() && possible.size() == 1 && !contradicted(possible.getFirst())) {
            return told(doubts, possible.getFirst(), "no other order makes all of them dates");
        }
        if (answer.isEmpty() && sample.separator() == '.' && possible.contains(DateOrder.DAY_FIRST)) {
            return told(
                    doubts, DateOrder.DAY_FIRST, "dates with points begin with the day (DIN 5008, common practice)");
        }
        List<DateOrder> flowing = likely(possible).stream().filter(this::flows).toList();
        if (answer.isEmpty() && flowing.size() == 1) {
            return told(doubts, flowing.getFirst(), "the rows go on over midnight so");
        }
        return doubts.ask(
                DateOrder.class,
                "date-order",
                "Which comes first in the dates?",
                likely(possible).stream().map(this::choice).toList(),
                List.of("line " + firstLine + ": " + first.orElse("") + " may be read as each of these"));
    }

    /** Whether a few dates rule out an order by which all others go on over midnight: those few may be spoilt. */
    private boolean contradicted(DateOrder only) {
        return !flows(only) && Arrays.stream(DateOrder.values()).anyMatch(o -> o != only && nearly(o) && flows(o));
    }

    private boolean nearly(DateOrder order) {
        return impossible.getOrDefault(order, 0L) * 100 < count;
    }

    private List<DateOrder> likely(List<DateOrder> possible) {
        return Arrays.stream(DateOrder.values())
                .filter(o -> possible.contains(o) || nearly(o))
                .toList();
    }

    /** Orders that fit; a few spoilt dates rule out none, as long as another order does not fit them better. */
    private List<DateOrder> possible(Stamp.Date sample) {
        if (sample.yearFirst()) {
            return List.of(DateOrder.YEAR_FIRST);
        }
        long least = Collections.min(Arrays.stream(DateOrder.values())
                .map(o -> impossible.getOrDefault(o, 0L))
                .toList());
        return Arrays.stream(DateOrder.values())
                .filter(o -> impossible.getOrDefault(o, 0L) == least)
                .toList();
    }

    private boolean flows(DateOrder order) {
        long usual = steps.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(0L);
        List<Long> over = nights.getOrDefault(order, List.of());
        return usual != 0
                && over.stream().anyMatch(step -> step == usual)
                && over.stream().filter(step -> Math.abs(step) > 27 * 86_400L).count() * 2 < over.size();
    }

    private Choice choice(DateOrder order) {
        String read = first.flatMap(Stamp::of)
                .or(() -> last)
                .flatMap(s -> s.date().or(() -> last.flatMap(Stamp::date)))
                .flatMap(d -> d.by(order))
                .map(date -> first.orElse("") + " is " + date)
                .orElse("");
        return new Choice(Doubts.word(order), read);
    }

    private Optional<DateOrder> told(Doubts doubts, DateOrder order, String why) {
        String words = Doubts.word(order).replace('_', ' ');
        doubts.find(Finding.Kind.TIME, firstLine, "dates are written " + words + " (" + first.orElse("") + "): " + why);
        return Optional.of(order);
    }
}
