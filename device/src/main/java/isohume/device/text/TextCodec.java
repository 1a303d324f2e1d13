// SPDX-License-Identifier: Apache-2.0
package isohume.device.text;

import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.Unit;
import isohume.device.driver.Meaning;
import isohume.device.driver.Meaning.Sense;
import isohume.device.line.Heard;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was heard, to readings. Pure: the same lines always give the same readings, digit for digit. */
final class TextCodec {
    private final List<Word> words;
    private final Optional<StatusText> status;

    TextCodec(List<Word> words, Optional<StatusText> status) {
        this.words = words;
        this.status = status;
    }

    /**
     * One reading for each channel, in the description's order.
     *
     * @param heard what came of the question whose reply has the group
     */
    List<Reading> readings(Map<String, Heard<Spoken>> heard, Instant at) {
        List<String> flags =
                status.map(one -> flags(one, said(heard, one.group()))).orElse(List.of());
        return words.stream()
                .map(word -> reading(word, said(heard, word.group()), flags, at))
                .toList();
    }

    private static Heard<Spoken> said(Map<String, Heard<Spoken>> heard, String group) {
        Heard<Spoken> found = heard.get(group);
        return found == null ? new Heard.Nothing<>(Trouble.SILENCE, "no time was left to ask for it") : found;
    }

    private static List<String> flags(StatusText status, Heard<Spoken> heard) {
        return switch (heard) {
            case Heard.Said<Spoken>(Spoken.Values values) ->
                Optional.ofNullable(values.groups().get(status.group()))
                        .map(status::flags)
                        .orElse(List.of("it did not tell its status"));
            case Heard.Said<Spoken>(Spoken.Refused refused) -> List.of("the status could not be read");
            case Heard.Nothing<Spoken>(Trouble trouble, String detail) ->
                List.of("the status could not be read: " + detail);
        };
    }

    private static Reading reading(Word word, Heard<Spoken> heard, List<String> flags, Instant at) {
        return switch (heard) {
            case Heard.Said<Spoken>(Spoken.Values values) -> reading(word, values, flags, at);
            case Heard.Said<Spoken>(Spoken.Refused(String line)) ->
                word.shown().absent(at, Trouble.REFUSED, "the device refused: \"" + LineQuestion.shown(line) + "\"");
            case Heard.Nothing<Spoken>(Trouble trouble, String detail) ->
                word.shown().absent(at, trouble, detail);
        };
    }

    private static Reading reading(Word word, Spoken.Values values, List<String> flags, Instant at) {
        String raw = LineQuestion.shown(values.line());
        String text = values.groups().getOrDefault(word.group(), "");
        Optional<BigDecimal> number = Meaning.number(word.decimalComma() ? text.replace(',', '.') : text);
        if (number.isEmpty()) {
            return garbled(word, at, "\"" + LineQuestion.shown(text) + "\" stands where a number should (" + raw + ")");
        }
        Optional<Meaning> meaning = meaning(word, values);
        if (meaning.isEmpty()) {
            return garbled(word, at, "its unit is none that the description knows (" + raw + ")");
        }
        return switch (meaning.get().of(number.get())) {
            case Sense.Value(BigDecimal value, List<String> doubts) -> {
                List<String> all = new ArrayList<>(flags);
                all.addAll(doubts);
                yield word.shown().reading(value, raw, all, at, "the line says");
            }
            case Sense.None(String why) -> garbled(word, at, why + " (" + raw + ")");
        };
    }

    private static Optional<Meaning> meaning(Word word, Spoken.Values values) {
        if (word.units().isEmpty()) {
            return Optional.of(word.meaning());
        }
        Word.Units units = word.units().get();
        String name = values.groups().getOrDefault(units.group(), "");
        Optional<Unit> unit = Optional.ofNullable(units.words().get(name));
        return unit.map(one -> new Meaning.Scaled(BigDecimal.ONE, BigDecimal.ZERO, one));
    }

    private static Reading garbled(Word word, Instant at, String detail) {
        return word.shown().absent(at, Trouble.GARBLED, detail);
    }
}
