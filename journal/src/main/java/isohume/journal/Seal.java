// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A hash over the heads of all streams. A seal is an entry of the stream {@code seal/journal} that lists the head of
 * each stream that has grown since the seal before it; as that stream is chained itself, the hash of a seal stands for
 * all heads listed up to it. Written outside the file (printed on a certificate, say), it shows later that nothing
 * before it was removed or rewritten.
 *
 * @param number of the seal, from 1
 * @param at when it was set
 * @param hash SHA-256 in lower-case hexadecimal
 */
public record Seal(long number, Instant at, String hash) {
    static final StreamName STREAM = new StreamName("seal", "journal");
    static final int FORM = 1;
    /** Heads listed in one seal; a journal with more new ones gets several seals in a row. */
    static final int MOST_HEADS = 1_000;

    private static final int PAGE = 100; // seals read at a time
    private static final String BEFORE = "{\"heads\":[";
    private static final String BEHIND = "]}";
    private static final Pattern HEAD = Pattern.compile(
            "\\G,?\\[\"([a-z]{1,20})/([A-Za-z0-9._-]{1,80})\",([1-9][0-9]{0,17}),\"([0-9a-f]{64})\"\\]");

    static Seal of(Entry entry) {
        return new Seal(entry.number(), entry.at(), entry.hash());
    }

    /** What the next seals have to list: nothing when all heads are sealed, one empty list for a journal without facts. */
    static List<List<Tables.Head>> due(List<Tables.Head> heads, Journal journal) {
        Map<StreamName, Long> sealed = new HashMap<>();
        long number = 0;
        for (List<Entry> page = journal.read(STREAM, 0, PAGE);
                !page.isEmpty();
                page = journal.read(STREAM, number, PAGE)) {
            for (Entry seal : page) {
                heads(seal.fact().text()).orElse(List.of()).forEach(head -> sealed.put(head.stream(), head.number()));
                number = seal.number();
            }
        }
        List<List<Tables.Head>> due = new ArrayList<>();
        for (Tables.Head head : heads) {
            if (head.stream().equals(STREAM) || head.number() <= sealed.getOrDefault(head.stream(), 0L)) {
                continue;
            }
            if (due.isEmpty() || due.getLast().size() == MOST_HEADS) {
                due.add(new ArrayList<>());
            }
            due.getLast().add(head);
        }
        return due.isEmpty() && number == 0 ? List.of(List.of()) : due;
    }

    static Fact fact(List<Tables.Head> heads) {
        return new Fact(FORM, text(heads));
    }

    private static String text(List<Tables.Head> heads) {
        return heads.stream()
                .map(head -> "[\"" + head.stream() + "\"," + head.number() + ",\"" + head.hash() + "\"]")
                .collect(Collectors.joining(",", BEFORE, BEHIND));
    }

    /** The heads in a seal's text; nothing when it is not one. */
    static Optional<List<Tables.Head>> heads(String text) {
        List<Tables.Head> heads = new ArrayList<>();
        if (text.startsWith(BEFORE)) {
            Matcher head = HEAD.matcher(text).region(BEFORE.length(), text.length());
            while (head.find()) {
                StreamName stream = new StreamName(head.group(1), head.group(2));
                heads.add(new Tables.Head(stream, Long.parseLong(head.group(3)), head.group(4)));
            }
        }
        return text(heads).equals(text) ? Optional.of(heads) : Optional.empty();
    }
}
