// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.Unit;
import isohume.device.export.Question.Choice;
import isohume.device.export.Survey.Seen;
import isohume.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What one column is, by its heading, its unit and an answer. */
final class ColumnSaid {
    private static final Pattern ANSWER = Pattern.compile("([a-z][a-z0-9_]*)(?: ?\\[?([^\\[\\]]*)]?)?");
    private static final String UNUSED = "unused";

    private final Seen seen;
    private final int number;
    private final Doubts doubts;
    private final Heading heading;
    private boolean asked;

    ColumnSaid(Layout layout, Seen seen, int number, Doubts doubts) {
        this.seen = seen;
        this.number = number;
        this.doubts = doubts;
        String elsewhere = layout.unit(number).isBlank() ? seen.unit() : layout.unit(number);
        heading = Heading.of(layout.name(number), elsewhere);
    }

    /** Whether it has numbers that a person may say more about. */
    boolean mayBeUsed() {
        return seen.hasNumbers() && !seen.isOrdinal();
    }

    /** The column, if it is one of readings; a doubt is asked, and what is left out is told. */
    Optional<LoggedColumn> column(List<LoggedColumn> before) {
        Optional<String> answer = doubts.answer(key());
        if (answer.isPresent()) {
            return answered(answer.get(), before);
        }
        boolean deposit = heading.text().toLowerCase(Locale.ROOT).matches("deposit|belag|phase");
        if (deposit) {
            return Optional.of(new LoggedColumn(number, heading.text(), "deposit", Quantity.DEPOSIT, Unit.NONE));
        }
        if (heading.clear() && seen.hasNumbers()) {
            return Optional.of(
                    made(heading.quantity().orElseThrow(), heading.unit().orElseThrow(), before));
        }
        boolean half = heading.quantity().isPresent()
                || heading.unit().filter(u -> u != Unit.PERCENT).isPresent();
        if (half && mayBeUsed()) {
            ask(before);
        }
        return Optional.empty();
    }

    /** Tells that the column is not used. */
    void leaveOut() {
        if (!seen.hasNumbers() && seen.words().isEmpty()) {
            return;
        }
        String name = heading.text().isEmpty() ? "" : " \"" + heading.text() + "\"";
        String why = seen.isOrdinal()
                ? " numbers the rows"
                : " is not used; if it should be, answer " + key() + " with what it is, as in \"temperature [°C]\"";
        doubts.find(Finding.Kind.LEFT_OUT, 0, "column " + number + name + why);
    }

    private String key() {
        return "column." + number;
    }

    private Optional<LoggedColumn> answered(String answer, List<LoggedColumn> before) {
        if (answer.equals(UNUSED)) {
            return Optional.empty();
        }
        Matcher matcher = ANSWER.matcher(answer);
        Optional<Quantity> quantity = matcher.matches() ? Channels.quantity(matcher.group(1)) : Optional.empty();
        Optional<Unit> unit = quantity.flatMap(q -> unit(matcher.group(2), q));
        if (quantity.isEmpty() || unit.isEmpty()) {
            ask(before);
            return Optional.empty();
        }
        return Optional.of(new LoggedColumn(number, heading.text(), matcher.group(1), quantity.get(), unit.get()));
    }

    private Optional<Unit> unit(@Nullable String said, Quantity quantity) {
        if (quantity == Quantity.DEPOSIT) {
            return Optional.of(Unit.NONE);
        }
        return said == null || said.isBlank()
                ? heading.unit().filter(u -> Unit.of(quantity).contains(u))
                : Unit.of(said.strip(), quantity)
                        .or(() ->
                                Heading.unit(said).filter(u -> Unit.of(quantity).contains(u)));
    }

    /** Whether the column was asked about. */
    boolean asked() {
        return asked;
    }

    /** Asks what the column is. */
    void ask(List<LoggedColumn> before) {
        asked = true;
        List<Choice> choices = new ArrayList<>();
        for (Quantity quantity : heading.possible()) {
            units(quantity)
                    .forEach(unit ->
                            choices.add(new Choice(made(quantity, unit, before).title(), "")));
        }
        choices.add(new Choice(UNUSED, "the column is left out"));
        doubts.askFreely(
                key(),
                "What is column " + number + (heading.text().isEmpty() ? "" : ", \"" + heading.text() + "\"") + "?",
                choices,
                List.of("its numbers are " + seen.range()));
    }

    /** The unit that is said; all where only the quantity is said; the usual one where nothing is. */
    private List<Unit> units(Quantity quantity) {
        List<Unit> all = Unit.of(quantity);
        if (heading.unit().isPresent()) {
            return heading.unit().filter(all::contains).map(List::of).orElse(all.subList(0, 1));
        }
        return heading.quantity().isPresent() ? all : all.subList(0, 1);
    }

    private LoggedColumn made(Quantity quantity, Unit unit, List<LoggedColumn> before) {
        String plain = quantity == Quantity.PRESSURE && heading.mirror() ? Channels.MIRROR_PRESSURE : quantity.key();
        String name = plain;
        for (int i = 2; taken(name, before); i++) {
            name = plain + "_" + i;
        }
        return new LoggedColumn(number, heading.text(), name, quantity, unit);
    }

    private static boolean taken(String name, List<LoggedColumn> before) {
        return before.stream().anyMatch(c -> c.channel().equals(name));
    }
}
