// SPDX-License-Identifier: Apache-2.0
package isohume.device.sheet;

import java.io.StringReader;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.reader.ReaderException;

/** Text to a tree of nodes that holds only mappings with plain keys, lists and plain values. Builds no objects. */
final class Composed {
    private static final int ALIASES = 10;
    private static final int DEPTH = 20;
    private static final Set<Tag> PLAIN =
            Set.of(Tag.STR, Tag.INT, Tag.FLOAT, Tag.BOOL, Tag.NULL, Tag.TIMESTAMP, Tag.MAP, Tag.SEQ, Tag.MERGE);

    private final String name;
    private final Set<Node> path = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<Node> seen = Collections.newSetFromMap(new IdentityHashMap<>());

    private Composed(String name) {
        this.name = name;
    }

    static MappingNode of(String source, String name) {
        if (source.length() > Source.LIMIT_BYTES) {
            throw Source.tooLarge(name);
        }
        Node root = compose(source.startsWith("\uFEFF") ? source.substring(1) : source, name);
        if (root == null || root.getTag().equals(Tag.NULL)) {
            throw Source.whole(name, "the document is empty", "write at least one \"key: value\" line");
        }
        new Composed(name).check(root);
        if (!(root instanceof MappingNode mapping)) {
            throw at(
                    name,
                    root.getStartMark(),
                    "the document begins with a " + kind(root),
                    "\"key: value\" lines are needed");
        }
        return mapping;
    }

    /** What a node is, in words. */
    static String kind(Node node) {
        return switch (node.getNodeId()) {
            case mapping -> "section";
            case sequence -> "list";
            case scalar, anchor -> "single value";
        };
    }

    static SheetError at(String name, Mark mark, String what, String remedy) {
        return new SheetError(name, mark.getLine() + 1, mark.getColumn() + 1, what, remedy);
    }

    private static @Nullable Node compose(String text, String name) {
        LoaderOptions options = new LoaderOptions();
        options.setMaxAliasesForCollections(ALIASES);
        options.setNestingDepthLimit(DEPTH);
        options.setCodePointLimit(Source.LIMIT_BYTES);
        try {
            return new Yaml(new SafeConstructor(options)).compose(new StringReader(text));
        } catch (MarkedYAMLException e) {
            Mark mark = e.getProblemMark() == null ? e.getContextMark() : e.getProblemMark();
            throw broken(e, mark, name);
        } catch (ReaderException e) {
            throw unreadable(text, e, name);
        } catch (YAMLException e) {
            throw Source.whole(name, "the document is nested or aliased too deeply", "write it out plainly");
        }
    }

    private static SheetError broken(MarkedYAMLException e, @Nullable Mark mark, String name) {
        String problem = e.getProblem() == null ? "the document breaks off" : e.getProblem();
        String remedy = "look at the indentation, colons, quotes and brackets here and on the line before";
        if (problem.contains("TAB")) {
            remedy = "indent with spaces, not with tabs";
        } else if (problem.contains("another document")) {
            remedy = "one file holds one document; remove the line \"---\"";
        } else if (problem.contains("tag")) {
            remedy = "write the value without \"!\"";
        }
        String what = "this is not well-formed YAML (" + problem + ")";
        return mark == null ? Source.whole(name, what, remedy) : at(name, mark, what, remedy);
    }

    private static SheetError unreadable(String text, ReaderException e, String name) {
        String before = text.substring(0, Math.clamp(e.getPosition(), 0, text.length()));
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        int column = before.length() - before.lastIndexOf('\n');
        return new SheetError(
                name,
                line,
                column,
                String.format(Locale.ROOT, "the character U+%04X does not belong into a text", e.getCodePoint()),
                "save the document as plain UTF-8 text");
    }

    private void check(Node node) {
        if (path.contains(node)) {
            throw at(name, node.getStartMark(), "this part contains itself", "write it out without \"*\"");
        }
        if (!seen.add(node)) {
            return;
        }
        if (!PLAIN.contains(node.getTag())) {
            throw at(
                    name,
                    node.getStartMark(),
                    "the tag " + node.getTag().getValue() + " is not known",
                    "write the value without \"!\"");
        }
        path.add(node);
        switch (node) {
            case MappingNode mapping -> checkKeys(mapping);
            case SequenceNode list -> list.getValue().forEach(this::check);
            default -> {} // a single value
        }
        path.remove(node);
    }

    private void checkKeys(MappingNode mapping) {
        Set<String> keys = new HashSet<>();
        for (NodeTuple entry : mapping.getValue()) {
            Node key = entry.getKeyNode();
            if (!(key instanceof ScalarNode scalar)) {
                throw at(
                        name,
                        key.getStartMark(),
                        "a " + kind(key) + " stands where a key should be",
                        "a key is a plain word");
            }
            if (!keys.add(scalar.getValue())) {
                throw at(name, key.getStartMark(), scalar.getValue() + " is given twice", "keep one of the two");
            }
            check(entry.getValueNode());
        }
    }
}
