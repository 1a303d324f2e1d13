// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Channel;
import isohume.device.Reading;
import isohume.device.Trouble;
import isohume.device.Unit;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Registers to readings. Pure: the same registers always give the same readings, digit for digit. */
final class ReadingCodec {
    private final List<Shown> shown;
    private final Optional<StatusWord> status;

    ReadingCodec(DeviceDescription description) {
        this.shown = description.shown();
        this.status = description.status();
    }

    /** All registers that the readings need. */
    List<Span> spans() {
        List<Span> spans = new ArrayList<>();
        shown.forEach(s -> spans.add(s.field().span()));
        status.ifPresent(s -> spans.add(s.span()));
        return spans;
    }

    /** One reading for each channel, in the description's order. */
    List<Reading> readings(Image image, Instant at) {
        List<String> flags = status.map(word -> flags(word, image)).orElse(List.of());
        return shown.stream().map(s -> reading(s, image, flags, at)).toList();
    }

    /** The same trouble on every channel. */
    List<Reading> absent(Reply.No no, Instant at) {
        return shown.stream()
                .<Reading>map(s -> new Reading.Absent(s.channel(), at, no.trouble(), no.detail()))
                .toList();
    }

    private static List<String> flags(StatusWord status, Image image) {
        return switch (image.of(status.span())) {
            case Reply.Words(List<Integer> words) -> status.flags(words.getFirst());
            case Reply.No no -> List.of("the status register could not be read: " + no.detail());
        };
    }

    private static Reading reading(Shown shown, Image image, List<String> flags, Instant at) {
        return switch (image.of(shown.field().span())) {
            case Reply.Words(List<Integer> words) -> reading(shown, words, flags, at);
            case Reply.No no -> new Reading.Absent(shown.channel(), at, no.trouble(), no.detail());
        };
    }

    private static Reading reading(Shown shown, List<Integer> words, List<String> flags, Instant at) {
        Channel channel = shown.channel();
        String raw = hex(words);
        Optional<BigDecimal> value = shown.field().value(words);
        if (value.isEmpty()) {
            return garbled(channel, at, "the registers hold no number (" + raw + ")");
        }
        BigDecimal rounded = shown.rounded(value.get());
        String text = rounded.toPlainString() + " " + channel.quantity().unit();
        if (!Unit.possible(channel.quantity(), rounded)) {
            return garbled(channel, at, "the registers hold " + text + ", which nothing can have (" + raw + ")");
        }
        List<String> doubts = new ArrayList<>(flags);
        shown.limits()
                .filter(limits -> !limits.hold(value.get()))
                .ifPresent(limits ->
                        doubts.add("outside " + limits.in(channel.quantity().unit())));
        return doubts.isEmpty()
                ? new Reading.Value(channel, at, rounded, raw)
                : new Reading.Doubtful(channel, at, rounded, raw, String.join("; ", doubts));
    }

    private static Reading garbled(Channel channel, Instant at, String detail) {
        return new Reading.Absent(channel, at, Trouble.GARBLED, detail);
    }

    private static String hex(List<Integer> words) {
        return words.stream().map(w -> String.format(Locale.ROOT, "%04X", w)).collect(Collectors.joining(" "));
    }
}
