// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Reading;
import isohume.device.Trouble;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Registers to readings. Pure: the same registers always give the same readings, digit for digit. */
final class ReadingCodec {
    private final List<Register> registers;
    private final Optional<StatusWord> status;

    ReadingCodec(ModbusDescription description) {
        this.registers = description.registers();
        this.status = description.status();
    }

    /** All registers that the readings need. */
    List<Span> spans() {
        List<Span> spans = new ArrayList<>();
        registers.forEach(one -> spans.add(one.field().span()));
        status.ifPresent(s -> spans.add(s.span()));
        return spans;
    }

    /** One reading for each channel, in the description's order. */
    List<Reading> readings(Image image, Instant at) {
        List<String> flags = status.map(word -> flags(word, image)).orElse(List.of());
        return registers.stream().map(one -> reading(one, image, flags, at)).toList();
    }

    /** The same trouble on every channel. */
    List<Reading> absent(Reply.No no, Instant at) {
        return registers.stream()
                .map(one -> one.shown().absent(at, no.trouble(), no.detail()))
                .toList();
    }

    private static List<String> flags(StatusWord status, Image image) {
        return switch (image.of(status.span())) {
            case Reply.Words(List<Integer> words) -> status.flags(words.getFirst());
            case Reply.No no -> List.of("the status register could not be read: " + no.detail());
        };
    }

    private static Reading reading(Register one, Image image, List<String> flags, Instant at) {
        return switch (image.of(one.field().span())) {
            case Reply.Words(List<Integer> words) -> reading(one, words, flags, at);
            case Reply.No no -> one.shown().absent(at, no.trouble(), no.detail());
        };
    }

    private static Reading reading(Register one, List<Integer> words, List<String> flags, Instant at) {
        String raw = hex(words);
        return one.field()
                .value(words)
                .map(value -> one.shown().reading(value, raw, flags, at, "the registers hold"))
                .orElseGet(() -> one.shown().absent(at, Trouble.GARBLED, "the registers hold no number (" + raw + ")"));
    }

    private static String hex(List<Integer> words) {
        return words.stream().map(w -> String.format(Locale.ROOT, "%04X", w)).collect(Collectors.joining(" "));
    }
}
