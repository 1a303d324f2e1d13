// SPDX-License-Identifier: Apache-2.0
package isohume.device.text;

import com.google.re2j.PatternSyntaxException;
import isohume.device.Unit;
import isohume.device.driver.Common;
import isohume.device.driver.LineSheet;
import isohume.device.driver.Meaning;
import isohume.device.driver.Shown;
import isohume.device.line.Place;
import isohume.device.sheet.Sheet;
import isohume.quantity.Quantity;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** A description from its document. */
final class TextReader {
    private static final Map<String, Charset> ENCODINGS = Map.of(
            "ascii", StandardCharsets.US_ASCII,
            "latin-1", StandardCharsets.ISO_8859_1,
            "utf-8", StandardCharsets.UTF_8);
    private static final int AGE_MS = 2000;

    private final Sheet sheet;
    private final Set<String> groups = new TreeSet<>();

    TextReader(Sheet sheet) {
        this.sheet = sheet;
    }

    TextDescription description() {
        Sheet line = sheet.section("line");
        Common common = Common.of(sheet, line);
        Place place = LineSheet.place(line);
        LineQuestion.Manner manner = manner(line);
        line.refuseOthers();
        List<Exchange> exchanges = exchanges(manner.charset());
        Duration mostAge = Duration.ofMillis(sheet.wholeOr("max-age-ms", 0, 3_600_000, AGE_MS));
        List<Word> words = common.channels(sheet, one -> word(common, one), Word::shown);
        Optional<StatusText> status = sheet.optional("status").map(this::status);
        sheet.refuseOthers();
        return new TextDescription(common, place, manner, exchanges, words, status, mostAge);
    }

    private static LineQuestion.Manner manner(Sheet line) {
        String encoding =
                line.has("encoding") ? line.oneOf("encoding", List.copyOf(new TreeSet<>(ENCODINGS.keySet()))) : "ascii";
        Charset charset = ENCODINGS.getOrDefault(encoding, StandardCharsets.US_ASCII);
        return new LineQuestion.Manner(
                charset, end(line, "ask-end"), end(line, "reply-end"), line.truthOr("echo", false));
    }

    /** {@code cr}, {@code lf} or {@code crlf}. */
    private static String end(Sheet line, String key) {
        String word = line.has(key) ? line.oneOf(key, List.of("cr", "lf", "crlf")) : "crlf";
        return word.replace("cr", "\r").replace("lf", "\n");
    }

    private List<Exchange> exchanges(Charset charset) {
        List<Exchange> exchanges = new ArrayList<>();
        List<Sheet> sections = sheet.list("exchanges");
        for (Sheet one : sections) {
            String ask = one.textOr("ask", "");
            if (ask.isEmpty() && sections.size() > 1) {
                throw one.wrongHere("ask is missing", "a device that talks by itself has one exchange only");
            }
            exchanges.add(new Exchange(ask, pattern(one, charset)));
            one.refuseOthers();
        }
        return exchanges;
    }

    private Pattern pattern(Sheet one, Charset charset) {
        com.google.re2j.Pattern reply = compiled(one, "reply");
        Optional<com.google.re2j.Pattern> refusal =
                one.has("refusal") ? Optional.of(compiled(one, "refusal")) : Optional.empty();
        Checksum checksum = one.oneOfOr("checksum", Checksum.class, Checksum.NONE);
        Set<String> named = reply.namedGroups().keySet();
        if (checksum != Checksum.NONE && !named.containsAll(Set.of(Pattern.CHECKED, Pattern.CHECKSUM))) {
            throw one.wrong("reply", "a checksum needs the groups (?<checked>…) and (?<checksum>…) here");
        }
        for (String name : named) {
            boolean free = name.equals(Pattern.CHECKED) || name.equals(Pattern.CHECKSUM) || groups.add(name);
            if (!free) {
                throw one.wrong("reply", "the group " + name + " is in another reply already; each needs its own name");
            }
        }
        return new Pattern(reply, refusal, checksum, charset);
    }

    private static com.google.re2j.Pattern compiled(Sheet one, String key) {
        try {
            return com.google.re2j.Pattern.compile(one.text(key));
        } catch (PatternSyntaxException e) {
            throw one.wrong(key, "it is no pattern: " + e.getDescription() + ": " + e.getPattern());
        }
    }

    private Word word(Common common, Sheet one) {
        Shown shown = common.shown(one);
        Quantity quantity = shown.channel().quantity();
        String group = group(one);
        boolean comma = one.truthOr("decimal-comma", false);
        Optional<Word.Units> units = one.optional("units").map(section -> units(section, quantity));
        Meaning meaning = units.isPresent()
                ? new Meaning.Scaled(
                        BigDecimal.ONE, BigDecimal.ZERO, Unit.of(quantity).getFirst())
                : Meaning.read(one, quantity);
        return new Word(shown, group, meaning, units, comma);
    }

    private Word.Units units(Sheet section, Quantity quantity) {
        String group = group(section);
        Sheet words = section.section("words");
        section.refuseOthers();
        Map<String, Unit> units = new HashMap<>();
        for (String word : words.keys()) {
            units.put(
                    word,
                    Unit.of(words.text(word), quantity)
                            .orElseThrow(() -> words.wrong(
                                    word,
                                    "a unit of " + quantity.key() + " is needed here, such as "
                                            + Unit.of(quantity).getFirst().symbol())));
        }
        return new Word.Units(group, Map.copyOf(units));
    }

    private StatusText status(Sheet section) {
        String group = group(section);
        List<String> good = section.texts("good");
        Map<String, String> words = new HashMap<>();
        section.optional("words").ifPresent(list -> list.keys().forEach(word -> words.put(word, list.text(word))));
        section.refuseOthers();
        return new StatusText(group, Set.copyOf(good), Map.copyOf(words));
    }

    private String group(Sheet one) {
        String group = one.text("group");
        if (!groups.contains(group)) {
            throw one.wrong("group", "a group of a reply is needed here; there are " + String.join(", ", groups));
        }
        return group;
    }
}
