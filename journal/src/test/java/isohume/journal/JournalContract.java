// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every journal promises. */
abstract class JournalContract {
    static final StreamName RUN = new StreamName("run", "R-0001");
    static final Instant NEW_YEAR = Instant.parse("2026-01-01T00:00:00Z");

    private final Deque<Instant> instants = new ArrayDeque<>();
    private Journal journal = new MemoryJournal(() -> NEW_YEAR);

    /** A journal without a fact whose clock shows what {@link #now} gives. */
    abstract Journal begin();

    Instant now() {
        synchronized (instants) {
            return instants.size() > 1 ? instants.removeFirst() : instants.getFirst();
        }
    }

    @BeforeEach
    void open() {
        instants.add(NEW_YEAR);
        journal = begin();
    }

    @AfterEach
    void close() {
        journal.close();
    }

    static Fact fact(int k) {
        return new Fact(1, "{\"k\":" + k + "}");
    }

    @Test
    void what_is_appended_is_read_back_in_order() {
        List<Entry> appended = IntStream.range(0, 5)
                .mapToObj(k -> journal.append(RUN, fact(k)))
                .toList();
        assertEquals(appended, journal.read(RUN, 0, 10));
        assertEquals(
                List.of(1L, 2L, 3L, 4L, 5L),
                appended.stream().map(Entry::number).toList());
        assertEquals(fact(3), appended.get(3).fact());
        assertEquals(RUN, appended.getFirst().stream());
    }

    @Test
    void a_long_stream_is_read_in_pages() {
        IntStream.range(0, 25).forEach(k -> journal.append(RUN, fact(k)));
        List<Integer> sizes = new ArrayList<>();
        List<Long> numbers = new ArrayList<>();
        for (List<Entry> page = journal.read(RUN, 0, 10);
                !page.isEmpty();
                page = journal.read(RUN, numbers.getLast(), 10)) {
            sizes.add(page.size());
            page.forEach(entry -> numbers.add(entry.number()));
        }
        assertEquals(List.of(10, 10, 5), sizes);
        assertEquals(LongStream.rangeClosed(1, 25).boxed().toList(), numbers);
    }

    @Test
    void reading_behind_the_end_or_of_nothing_gives_nothing() {
        assertEquals(List.of(), journal.read(RUN, 0, 10));
        journal.append(RUN, fact(1));
        assertEquals(List.of(), journal.read(RUN, 1, 10));
        assertEquals(List.of(), journal.read(RUN, 1_000, 10));
        assertEquals(List.of(), journal.read(RUN, 0, 0));
        assertEquals(1, journal.read(RUN, 0, Integer.MAX_VALUE).size());
    }

    @Test
    void asking_for_less_than_nothing_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> journal.read(RUN, -1, 10));
        assertThrows(IllegalArgumentException.class, () -> journal.read(RUN, 0, -1));
    }

    @Test
    void last_is_the_number_of_the_last_entry() {
        assertEquals(0, journal.last(RUN));
        journal.append(RUN, fact(1));
        journal.append(RUN, fact(2));
        assertEquals(2, journal.last(RUN));
        assertEquals(0, journal.last(new StreamName("run", "R-0002")));
    }

    @Test
    void streams_are_listed_by_kind_in_the_order_in_which_they_began() {
        List<String> ids = List.of("z", "a", "M", "9", "_", "a.b-c");
        for (String id : ids) {
            journal.append(new StreamName("run", id), fact(1));
            journal.append(new StreamName("bench", id), fact(1));
        }
        journal.append(new StreamName("run", "z"), fact(2));
        assertEquals(ids, journal.streams("run").stream().map(StreamName::id).toList());
        assertEquals(ids, journal.streams("bench").stream().map(StreamName::id).toList());
        assertEquals(List.of(), journal.streams("certificate"));
        assertEquals(List.of(), journal.streams("Run"));
    }

    @Test
    void streams_that_differ_only_in_case_are_two() {
        journal.append(new StreamName("run", "a"), fact(1));
        assertEquals(1, journal.append(new StreamName("run", "A"), fact(1)).number());
    }

    @Test
    void equal_facts_at_the_same_instant_in_different_places_have_different_hashes() {
        Entry first = journal.append(RUN, fact(1));
        Entry second = journal.append(RUN, fact(1));
        Entry elsewhere = journal.append(new StreamName("run", "R-0002"), fact(1));
        assertEquals(
                3,
                List.of(first, second, elsewhere).stream()
                        .map(Entry::hash)
                        .distinct()
                        .count());
        assertTrue(first.hash().matches("[0-9a-f]{64}"));
    }

    @Test
    void time_is_kept_in_microseconds() {
        at(Instant.parse("2026-03-04T05:06:07.123456789Z"), Instant.parse("1969-12-31T23:59:59.999999999Z"));
        assertEquals(
                Instant.parse("2026-03-04T05:06:07.123456Z"),
                journal.append(RUN, fact(1)).at());
        assertEquals(
                Instant.parse("1969-12-31T23:59:59.999999Z"),
                journal.append(RUN, fact(2)).at());
        assertEquals(
                Instant.parse("1969-12-31T23:59:59.999999Z"),
                journal.read(RUN, 1, 1).getFirst().at());
    }

    @Test
    void a_clock_that_steps_backwards_is_written_down_as_it_is() {
        at(NEW_YEAR.plusSeconds(10), NEW_YEAR.minusSeconds(3_600), NEW_YEAR);
        List<Entry> appended = IntStream.range(0, 3)
                .mapToObj(k -> journal.append(RUN, fact(k)))
                .toList();
        assertEquals(
                List.of(NEW_YEAR.plusSeconds(10), NEW_YEAR.minusSeconds(3_600), NEW_YEAR),
                appended.stream().map(Entry::at).toList());
        assertEquals(appended, journal.read(RUN, 0, 10));
    }

    private void at(Instant... next) {
        synchronized (instants) {
            instants.clear();
            instants.addAll(List.of(next));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"t\":\"dew point −12,3 °C ± 0,2 K\"}",
                "{\"t\":\"湿度 \uD83C\uDF21 ' ; -- \\u0000 \\n\"}",
                "{\"t\":\"\u2028\u0085\uFEFF\uFFFD\u007F\"}"
            })
    void text_comes_back_as_it_went_in(String text) {
        Entry entry = journal.append(RUN, new Fact(Integer.MAX_VALUE, text));
        assertEquals(text, entry.fact().text());
        assertEquals(List.of(entry), journal.read(RUN, 0, 1));
    }

    @Test
    void a_text_of_the_greatest_length_is_kept() {
        Fact longest = new Fact(1, "{\"t\":\"" + "§".repeat(Fact.MOST_CHARACTERS - 8) + "\"}");
        assertEquals(Fact.MOST_CHARACTERS, longest.text().length());
        journal.append(RUN, longest);
        assertEquals(longest, journal.read(RUN, 0, 1).getFirst().fact());
    }

    @Test
    void seals_are_not_appended_by_hand() {
        assertThrows(IllegalArgumentException.class, () -> journal.append(new StreamName("seal", "journal"), fact(1)));
    }

    @Test
    void four_threads_append_and_nothing_is_lost_or_mixed() throws Exception {
        try (ExecutorService threads = Executors.newFixedThreadPool(4)) {
            List<Future<List<Entry>>> writers = IntStream.range(0, 4)
                    .mapToObj(thread -> threads.submit(() -> IntStream.range(0, 50)
                            .mapToObj(k -> journal.append(
                                    k % 2 == 0 ? RUN : new StreamName("bench", "B" + thread), fact(1000 * thread + k)))
                            .toList()))
                    .toList();
            List<Entry> acknowledged = new ArrayList<>();
            for (Future<List<Entry>> writer : writers) {
                acknowledged.addAll(writer.get());
            }
            List<Entry> run = journal.read(RUN, 0, 1_000);
            assertEquals(100, run.size());
            for (Entry entry : acknowledged) {
                assertEquals(List.of(entry), journal.read(entry.stream(), entry.number() - 1, 1));
            }
        }
    }

    @Test
    void a_closed_journal_answers_nothing_and_may_be_closed_again() {
        journal.append(RUN, fact(1));
        journal.close();
        journal.close();
        assertThrows(IllegalStateException.class, () -> journal.append(RUN, fact(2)));
        assertThrows(IllegalStateException.class, () -> journal.read(RUN, 0, 1));
        assertThrows(IllegalStateException.class, () -> journal.last(RUN));
        assertThrows(IllegalStateException.class, () -> journal.streams("run"));
    }
}
