// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.export.Question.Choice;
import isohume.device.export.Survey.Seen;
import isohume.device.export.TimeColumns.Counting;
import java.nio.charset.Charset;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** From a survey of a file to a profile. */
final class Recognition {
    private final String source;
    private final Layout layout;
    private final TimeColumns times;
    private final Survey survey;
    private final Doubts doubts;

    Recognition(String source, Layout layout, TimeColumns times, Survey survey, Doubts doubts) {
        this.source = source;
        this.layout = layout;
        this.times = times;
        this.survey = survey;
        this.doubts = doubts;
    }

    /** Which columns have the time, unless that is in doubt. */
    static Optional<TimeColumns> times(Layout layout, Doubts doubts) {
        if (layout.times().size() == 1) {
            return Optional.of(layout.times().getFirst());
        }
        List<Choice> choices = layout.times().stream()
                .map(t -> new Choice(
                        name(t),
                        layout.name(t.date()) + (t.clock() == t.date() ? "" : " with " + layout.name(t.clock()))))
                .toList();
        return doubts.ask("time-columns", "Which columns have the time of the reading?", choices, List.of())
                .flatMap(word -> layout.times().stream()
                        .filter(t -> name(t).equals(word))
                        .findFirst());
    }

    private static String name(TimeColumns t) {
        return t.clock() == t.date() ? String.valueOf(t.date()) : t.date() + "+" + t.clock();
    }

    /** The profile, unless something is in doubt. All doubts are collected first. */
    Optional<Profile> profile(Charset encoding) {
        doubts.find(
                Finding.Kind.LAYOUT,
                layout.first(),
                "readings begin here: " + layout.width() + " cells a row, " + Doubts.word(layout.delimiter())
                        + " between them");
        Optional<DateOrder> order = times.counting() == Counting.CALENDAR
                ? survey.dates().order(doubts)
                : Optional.of(DateOrder.YEAR_FIRST);
        boolean zoned = times.counting() == Counting.CALENDAR
                ? survey.dates().statesZone()
                : times.counting() != Counting.SPREADSHEET_DAYS;
        Optional<ZoneId> zone = zoned ? Optional.empty() : zone();
        List<LoggedColumn> columns = columns();
        Optional<DecimalSign> sign = decimalSign(columns);
        if (doubts.open() || doubts.broken() || sign.isEmpty() || order.isEmpty()) {
            return Optional.empty();
        }
        List<String> headings = List.of(layout.name(times.date()), layout.name(times.clock()));
        return Optional.of(new Profile(
                doubts.answer("title").orElse(source),
                encoding,
                layout.delimiter(),
                sign.get(),
                columns.stream().anyMatch(c -> survey.column(c.number()).grouped()),
                layout.headings(),
                new Profile.Times(times, headings, order.get(), zone, clock()),
                columns,
                gaps(),
                doubts.answer("doubled-rows")
                        .flatMap(w -> Doubts.ofWord(Doubled.class, w))
                        .orElse(Doubled.ASK)));
    }

    private Optional<ClockHabit> clock() {
        return doubts.answer("clock").flatMap(word -> Doubts.ofWord(ClockHabit.class, word));
    }

    private Set<String> gaps() {
        Set<String> gaps = new HashSet<>();
        doubts.answer("gaps").ifPresent(text -> {
            for (String one : text.split("\\|", -1)) {
                gaps.add(one.strip());
            }
        });
        gaps.remove("");
        return gaps;
    }

    private Optional<DecimalSign> decimalSign(List<LoggedColumn> used) {
        Map<DecimalSign, Long> proofs = new EnumMap<>(DecimalSign.class);
        List<String> evidence = new ArrayList<>();
        List<String> signs = new ArrayList<>();
        for (int column = 1; column <= layout.width(); column++) {
            int number = column;
            if (!used.isEmpty() && used.stream().noneMatch(c -> c.number() == number)) {
                continue;
            }
            Seen seen = survey.column(column);
            seen.proofs().forEach((sign, proof) -> proofs.merge(sign, proof.count(), Long::sum));
            seen.proofs().values().forEach(p -> signs.add("line " + p.line() + ", column " + number + ": " + p.cell()));
            seen.ambiguous().ifPresent(a -> evidence.add("line " + a.line() + ", column " + number + ": " + a.cell()));
        }
        long points = proofs.getOrDefault(DecimalSign.POINT, 0L);
        long commas = proofs.getOrDefault(DecimalSign.COMMA, 0L);
        if (Math.max(points, commas) > 9 * Math.min(points, commas)) { // the few others are faults, and told as such
            DecimalSign sign = points > commas ? DecimalSign.POINT : DecimalSign.COMMA;
            doubts.find(Finding.Kind.LAYOUT, 0, "numbers have a decimal " + Doubts.word(sign));
            return Optional.of(sign);
        }
        if (points == 0 && evidence.isEmpty()) {
            return Optional.of(DecimalSign.POINT); // whole numbers only
        }
        return doubts.ask(
                DecimalSign.class,
                "decimal-sign",
                "Which is the decimal sign?",
                List.of(new Choice("point", "as in 21.500"), new Choice("comma", "as in 21,500")),
                evidence.isEmpty() ? signs : evidence);
    }

    private Optional<ZoneId> zone() {
        Optional<ZoneSaid> said = ZoneSaid.in(layout, times);
        Optional<String> answer = doubts.answer("zone");
        if (answer.isPresent()) {
            said.filter(s -> !s.zone().getId().equals(answer.get()))
                    .ifPresent(s -> doubts.find(
                            Finding.Kind.TIME,
                            s.line(),
                            "the file says \"" + s.text() + "\"; by the answer the zone is " + answer.get()));
            try {
                return Optional.of(ZoneId.of(answer.get()));
            } catch (DateTimeException unknown) {
                // asked again below
            }
        } else if (said.isPresent() && said.get().sure()) {
            doubts.find(
                    Finding.Kind.TIME,
                    said.get().line(),
                    "the zone is " + said.get().zone() + ", by \"" + said.get().text() + "\"");
            return Optional.of(said.get().zone());
        }
        List<Choice> choices = new ArrayList<>();
        said.ifPresent(s -> choices.add(new Choice(s.zone().getId(), "as \"" + s.text() + "\" may mean")));
        choices.add(new Choice("UTC", "coordinated universal time"));
        choices.add(new Choice("+01:00", "a fixed distance from UTC"));
        choices.add(new Choice("Europe/Berlin", "a place, with its daylight saving"));
        doubts.askFreely(
                "zone",
                "In which time zone was the logger's clock?",
                choices,
                said.map(s -> List.of("line " + s.line() + ": " + s.text()))
                        .orElse(List.of("nothing in the file says it")));
        return Optional.empty();
    }

    private List<LoggedColumn> columns() {
        List<LoggedColumn> columns = new ArrayList<>();
        List<ColumnSaid> others = new ArrayList<>();
        for (int number = 1; number <= layout.width(); number++) {
            if (!times.has(number)) {
                ColumnSaid said = new ColumnSaid(layout, survey.column(number), number, doubts);
                said.column(columns).ifPresentOrElse(columns::add, () -> others.add(said));
            }
        }
        List<ColumnSaid> usable = others.stream().filter(ColumnSaid::mayBeUsed).toList();
        if (columns.isEmpty() && usable.isEmpty()) {
            doubts.wrong(layout.first(), 0, "no column has numbers", "a column of readings is needed");
        } else if (columns.isEmpty() && others.stream().noneMatch(ColumnSaid::asked)) {
            usable.forEach(said -> said.ask(columns));
        } else {
            others.stream().filter(said -> !said.asked()).forEach(ColumnSaid::leaveOut);
        }
        return columns;
    }
}
