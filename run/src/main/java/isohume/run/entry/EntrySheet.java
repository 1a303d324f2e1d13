// SPDX-License-Identifier: Apache-2.0
package isohume.run.entry;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was read of a run's displays so far. Nothing on it is ever crossed out: entries of a record that was broken off,
 * and those that were taken back, stay on it and are not used.
 *
 * @param earlier entries of records that are closed or were broken off
 * @param current entries of the record under way
 */
public record EntrySheet(
        List<DisplayedChannel> channels,
        List<DisplayEntry> earlier,
        List<DisplayEntry> current,
        List<Omission> omitted) {
    /** So long the last entry can be seen and taken back before the run goes on; common practice, no source. */
    private static final Duration TIME_TO_LOOK = Duration.ofSeconds(10);

    /** A channel that a person left out at a point. */
    public record Omission(int point, String channel, String operator, String reason) {}

    public EntrySheet {
        channels = List.copyOf(channels);
        earlier = List.copyOf(earlier);
        current = List.copyOf(current);
        omitted = List.copyOf(omitted);
    }

    /** An empty sheet. */
    public static EntrySheet of(List<DisplayedChannel> channels) {
        return new EntrySheet(channels, List.of(), List.of(), List.of());
    }

    /** A record begins, or begins anew. */
    public EntrySheet begunAnew() {
        return current.isEmpty() ? this : new EntrySheet(channels, and(earlier, current), List.of(), omitted);
    }

    public EntrySheet with(DisplayEntry entry) {
        return new EntrySheet(channels, earlier, and(current, List.of(entry)), omitted);
    }

    public EntrySheet with(Omission omission) {
        return new EntrySheet(channels, earlier, current, and(omitted, List.of(omission)));
    }

    /** With an entry marked as taken back. */
    public EntrySheet without(long number, String reason) {
        return new EntrySheet(channels, earlier, marked(current, number, reason), omitted);
    }

    private static List<DisplayEntry> marked(List<DisplayEntry> entries, long number, String reason) {
        return entries.stream()
                .map(e -> e.number() == number ? e.takenBack(reason) : e)
                .toList();
    }

    private static <T> List<T> and(List<T> some, List<T> more) {
        List<T> all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }

    public Optional<DisplayedChannel> channel(String id) {
        return channels.stream().filter(c -> c.id().equals(id)).findFirst();
    }

    /** Entries of a channel in the record under way, those taken back too. */
    public List<DisplayEntry> of(DisplayedChannel channel) {
        return current.stream().filter(e -> e.channel().equals(channel.id())).toList();
    }

    /** How many of them stand. */
    public int standing(DisplayedChannel channel) {
        return Math.toIntExact(of(channel).stream().filter(DisplayEntry::stands).count());
    }

    public boolean isOmitted(DisplayedChannel channel, int point) {
        return omitted.stream().anyMatch(o -> o.point() == point && o.channel().equals(channel.id()));
    }

    /** Channels of which entries are still wanted at a point, in the order of the load. */
    public List<DisplayedChannel> wanted(int point) {
        return channels.stream()
                .filter(c -> !isOmitted(c, point) && standing(c) < c.entries())
                .toList();
    }

    /** Whether everything was read at a point, and long enough ago for a person to see what was typed. */
    public boolean complete(int point, Instant now) {
        return wanted(point).isEmpty()
                && current.stream().noneMatch(e -> e.at().plus(TIME_TO_LOOK).isAfter(now));
    }

    /** What was read and stands beside an observation, by channel, in the quantity's unit. */
    public Map<String, Double> besides(long observed) {
        Map<String, Double> read = new HashMap<>();
        for (List<DisplayEntry> entries : List.of(earlier, current)) {
            entries.stream()
                    .filter(e -> e.observed() == observed && e.stands())
                    .forEach(e -> read.put(e.channel(), e.value()));
        }
        return read;
    }
}
