// SPDX-License-Identifier: Apache-2.0
package isohume.device.sheet;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * A YAML document that a person wrote, or a section of it. The reader asks for each key by its kind, then calls
 * {@link #refuseOthers}, which turns every key it did not ask for into an error.
 *
 * <p>Every method throws {@link SheetError}, with the line and column of the culprit, if a key is missing (unless the
 * name says otherwise) or what stands there is of another kind. A key without a value counts as missing. Numbers have
 * a decimal point and are finite. A sheet remembers what it was asked for, so it belongs to one thread.
 */
public final class Sheet {
    private final String name;
    private final Mark start;
    private final Map<String, NodeTuple> entries = new LinkedHashMap<>();
    private final Set<String> asked = new LinkedHashSet<>();

    private Sheet(String name, MappingNode node, Mark start) {
        this.name = name;
        this.start = start;
        for (NodeTuple entry : node.getValue()) {
            entries.put(((ScalarNode) entry.getKeyNode()).getValue(), entry);
        }
    }

    /**
     * Reads a file in UTF-8 of at most 1 MB. Errors carry the file's name without its folder.
     *
     * @throws SheetError if it cannot be read, is empty or is not well-formed
     */
    public static Sheet read(Path file) {
        return parse(document(file), nameOf(file));
    }

    /**
     * The text of a file, in UTF-8 and of at most 1 MB, for a caller that keeps it before it parses it.
     *
     * @throws SheetError if it cannot be read
     */
    public static String document(Path file) {
        return Source.of(file, nameOf(file));
    }

    private static String nameOf(Path file) {
        Path last = file.getFileName();
        return (last == null ? file : last).toString();
    }

    /**
     * Reads a text of at most 1 MB.
     *
     * @param source the document itself
     * @param name what errors call it, usually a file name
     * @throws SheetError if it is empty or not well-formed
     */
    public static Sheet parse(String source, String name) {
        MappingNode root = Composed.of(source, name);
        return new Sheet(name, root, root.getStartMark());
    }

    /** The document's name, as errors give it. */
    public String source() {
        return name;
    }

    /** Whether the key is there and has a value. Counts as asked for. */
    public boolean has(String key) {
        return value(key) != null;
    }

    /** All keys in the order written, for a section whose keys are free. Counts as asked for each. */
    public List<String> keys() {
        asked.addAll(entries.keySet());
        return List.copyOf(entries.keySet());
    }

    /** The section under a key. */
    public Sheet section(String key) {
        return sectionAt(key, needed(key, "a section"));
    }

    /** The section under a key, if the key is there. */
    public Optional<Sheet> optional(String key) {
        Node node = value(key);
        return node == null ? Optional.empty() : Optional.of(sectionAt(key, node));
    }

    /** The sections of a list with at least one element. */
    public List<Sheet> list(String key) {
        return elements(key, "section").stream()
                .map(node -> sectionAt(key, node))
                .toList();
    }

    /** The sections of a list; none if the key is missing. */
    public List<Sheet> optionalList(String key) {
        return has(key) ? list(key) : List.of();
    }

    /** A text, with its outer blanks removed and never empty. A number or a date written there is taken as its text. */
    public String text(String key) {
        return text(key, scalar(key, "a text"));
    }

    /** As {@link #text}; {@code fallback} if the key is missing. */
    public String textOr(String key, String fallback) {
        return has(key) ? text(key) : fallback;
    }

    /** The texts of a list with at least one element. */
    public List<String> texts(String key) {
        return scalars(key, "a text").stream().map(node -> text(key, node)).toList();
    }

    /** A number without a unit, digit for digit as written. */
    public BigDecimal number(String key) {
        return number(key, "");
    }

    /** A number in {@code unit}, digit for digit as written; the unit is for the error message. */
    public BigDecimal number(String key, String unit) {
        String needed = aNumber(unit);
        return number(key, scalar(key, needed), needed);
    }

    /** As {@link #number(String, String)}; {@code fallback} if the key is missing. */
    public BigDecimal numberOr(String key, String unit, BigDecimal fallback) {
        return has(key) ? number(key, unit) : fallback;
    }

    /** The numbers, in {@code unit}, of a list with at least one element. */
    public List<BigDecimal> numbers(String key, String unit) {
        String needed = aNumber(unit);
        return scalars(key, needed).stream()
                .map(node -> number(key, node, needed))
                .toList();
    }

    /** A whole number from {@code least} to {@code most}, both included. */
    public int whole(String key, int least, int most) {
        String needed = "a whole number from " + least + " to " + most;
        ScalarNode node = scalar(key, needed);
        String text = node.getValue();
        if (node.getScalarStyle() != ScalarStyle.PLAIN || !Numeral.isWhole(text)) {
            throw unfit(key, node, Numeral.remedy(text, needed));
        }
        long number = Long.parseLong(text);
        if (number < least || number > most) {
            throw unfit(key, node, needed + " is needed here");
        }
        return (int) number;
    }

    /** As {@link #whole}; {@code fallback} if the key is missing. */
    public int wholeOr(String key, int least, int most, int fallback) {
        return has(key) ? whole(key, least, most) : fallback;
    }

    /** {@code true} or {@code false}; {@code fallback} if the key is missing. */
    public boolean truthOr(String key, boolean fallback) {
        return has(key) ? oneOf(key, List.of("true", "false")).equals("true") : fallback;
    }

    /** One of the constants of an enum, written in lower case: {@code DEW_POINT} as {@code dew_point}. */
    public <E extends Enum<E>> E oneOf(String key, Class<E> kind) {
        Map<String, E> constants = new LinkedHashMap<>();
        for (E constant : kind.getEnumConstants()) {
            constants.put(constant.name().toLowerCase(Locale.ROOT), constant);
        }
        return Objects.requireNonNull(constants.get(oneOf(key, List.copyOf(constants.keySet()))));
    }

    /** As {@link #oneOf(String, Class)}; {@code fallback} if the key is missing. */
    public <E extends Enum<E>> E oneOfOr(String key, Class<E> kind, E fallback) {
        return has(key) ? oneOf(key, kind) : fallback;
    }

    /** One of these words. */
    public String oneOf(String key, List<String> words) {
        String needed = words.size() == 1 ? words.getFirst() : "one of " + String.join(", ", words);
        ScalarNode node = scalar(key, needed);
        String text = node.getValue().strip();
        if (!words.contains(text)) {
            String hint = Nearest.to(text, words)
                    .map(near -> "; did you mean " + near + "?")
                    .orElse("");
            throw unfit(key, node, needed + " is needed here" + hint);
        }
        return text;
    }

    /** A day, written {@code 2026-03-31}. */
    public LocalDate date(String key) {
        ScalarNode node = scalar(key, "a date such as 2026-03-31");
        try {
            return LocalDate.parse(node.getValue().strip());
        } catch (DateTimeParseException e) {
            throw unfit(key, node, "a date such as 2026-03-31 is needed here");
        }
    }

    /**
     * Ends the reading of this section: a key that was not asked for is an error that names those that may stand here
     * and the one that was probably meant.
     */
    public void refuseOthers() {
        for (Map.Entry<String, NodeTuple> entry : entries.entrySet()) {
            if (!asked.contains(entry.getKey())) {
                throw unknown(entry.getKey(), entry.getValue());
            }
        }
    }

    /**
     * An error of the caller's own, to be thrown, at the place of a key's value, or at the section's beginning if the
     * key is missing.
     *
     * @param what what was found, for example {@code humidity is 104 % RH}
     * @param remedy what is needed or what to do, for example {@code at most 100 % RH is possible}
     */
    public SheetError wrong(String key, String what, String remedy) {
        NodeTuple entry = entries.get(key);
        return Composed.at(name, entry == null ? start : entry.getValueNode().getStartMark(), what, remedy);
    }

    /** As {@link #wrong(String, String, String)}, with the value there quoted as what was found. */
    public SheetError wrong(String key, String remedy) {
        NodeTuple entry = entries.get(key);
        return entry != null && entry.getValueNode() instanceof ScalarNode node
                ? unfit(key, node, remedy)
                : wrong(key, key + " cannot stay as it is", remedy);
    }

    /** An error of the caller's own about a key itself, to be thrown. */
    public SheetError wrongKey(String key, String remedy) {
        NodeTuple entry = entries.get(key);
        return Composed.at(
                name, entry == null ? start : entry.getKeyNode().getStartMark(), "\"" + key + "\" stands here", remedy);
    }

    /** An error of the caller's own about this section as a whole, to be thrown. */
    public SheetError wrongHere(String what, String remedy) {
        return Composed.at(name, start, what, remedy);
    }

    private @Nullable Node value(String key) {
        asked.add(key);
        NodeTuple entry = entries.get(key);
        return entry == null || entry.getValueNode().getTag().equals(Tag.NULL) ? null : entry.getValueNode();
    }

    private Node needed(String key, String needed) {
        Node node = value(key);
        if (node != null) {
            return node;
        }
        if (entries.containsKey(key)) {
            throw wrongKeyless(key, key + " is empty", needed + " is needed here");
        }
        List<String> strangers =
                entries.keySet().stream().filter(k -> !asked.contains(k)).toList();
        String hint = Nearest.to(key, strangers)
                .map(near -> "; is that what " + near + " was meant to be?")
                .orElse("");
        throw Composed.at(name, start, key + " is missing", "add it to this section: " + needed + hint);
    }

    private SheetError wrongKeyless(String key, String what, String remedy) {
        NodeTuple entry = Objects.requireNonNull(entries.get(key));
        return Composed.at(name, entry.getKeyNode().getStartMark(), what, remedy);
    }

    private Sheet sectionAt(String key, Node node) {
        if (!(node instanceof MappingNode mapping)) {
            throw mismatch(key, node, "a section with \"key: value\" lines");
        }
        return new Sheet(name, mapping, mapping.getStartMark());
    }

    private List<Node> elements(String key, String of) {
        Node node = needed(key, "a list");
        if (!(node instanceof SequenceNode list)) {
            throw mismatch(key, node, "a list, each " + of + " after a dash,");
        }
        if (list.getValue().isEmpty()) {
            throw wrong(key, key + " is an empty list", "at least one " + of + " is needed here");
        }
        return list.getValue();
    }

    private ScalarNode scalar(String key, String needed) {
        return scalar(key, needed(key, needed), needed);
    }

    private ScalarNode scalar(String key, Node node, String needed) {
        if (!(node instanceof ScalarNode scalar)) {
            throw mismatch(key, node, needed);
        }
        return scalar;
    }

    private List<ScalarNode> scalars(String key, String needed) {
        return elements(key, "value").stream()
                .map(node -> scalar(key, node, needed))
                .toList();
    }

    private String text(String key, ScalarNode node) {
        String text = node.getValue().strip();
        if (text.isEmpty()) {
            throw Composed.at(name, node.getStartMark(), key + " is empty", "a text is needed here");
        }
        return text;
    }

    private BigDecimal number(String key, ScalarNode node, String needed) {
        String text = node.getValue();
        if (node.getScalarStyle() != ScalarStyle.PLAIN && Numeral.isNumber(text)) {
            throw unfit(key, node, "write the number without quotation marks");
        }
        if (!Numeral.isNumber(text)) {
            throw unfit(key, node, Numeral.remedy(text, needed));
        }
        return Numeral.number(text);
    }

    private SheetError unknown(String key, NodeTuple entry) {
        Mark mark = entry.getKeyNode().getStartMark();
        if (key.matches("\\d+")
                && entry.getValueNode().getTag().equals(Tag.NULL)) { // {scale: 0,5} is scale 0 and key 5
            return Composed.at(
                    name,
                    mark,
                    "\"" + key + "\" stands alone",
                    "if it belongs to the number before it, write a decimal point, not a comma");
        }
        String hint = Nearest.to(key, asked)
                .map(near -> "did you mean " + near + "? ")
                .orElse("");
        return Composed.at(name, mark, key + " is not known here", hint + "known are " + String.join(", ", asked));
    }

    private SheetError mismatch(String key, Node node, String needed) {
        return Composed.at(name, node.getStartMark(), key + " is a " + Composed.kind(node), needed + " is needed here");
    }

    private SheetError unfit(String key, ScalarNode node, String remedy) {
        String text = node.getValue().length() > 60 ? node.getValue().substring(0, 60) + "…" : node.getValue();
        boolean bare = Numeral.isNumber(text) && node.getScalarStyle() == ScalarStyle.PLAIN;
        return Composed.at(name, node.getStartMark(), key + " is " + (bare ? text : "\"" + text + "\""), remedy);
    }

    private static String aNumber(String unit) {
        return unit.isEmpty() ? "a number" : "a number in " + unit;
    }
}
