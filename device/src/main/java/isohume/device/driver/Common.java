// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import isohume.device.Channel;
import isohume.device.Unit;
import isohume.device.sheet.Sheet;
import isohume.quantity.Quantity;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What every description says, and how it is read from its document.
 *
 * @param limit how long a read or a request may take in all
 */
public record Common(String id, String title, Duration limit) {
    private static final int TIMEOUT_MS = 1000;

    /**
     * The head of a document: {@code device}, {@code title} and the time limit.
     *
     * @param line its section {@code line}
     */
    public static Common of(Sheet sheet, Sheet line) {
        boolean ignored = sheet.has("protocol"); // by which this reader was chosen
        Duration limit = Duration.ofMillis(line.wholeOr("timeout-ms", 10, 60_000, TIMEOUT_MS));
        return new Common(word(sheet, "device"), sheet.text("title"), limit);
    }

    /** An id or a name: it is part of file names, columns and addresses, so only plain characters. */
    public static String word(Sheet sheet, String key) {
        String word = sheet.text(key);
        if (!word.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,63}")) {
            throw sheet.wrong(key, "letters, digits, dots, dashes and underscores are possible here, 64 at most");
        }
        return word;
    }

    /** The name or address of a machine. */
    public static String host(Sheet sheet) {
        String host = sheet.text("host");
        if (!host.matches("[A-Za-z0-9._:-]{1,253}")) {
            throw sheet.wrong("host", "a name such as mirror.lab or an address such as 192.168.1.20 is needed here");
        }
        return host;
    }

    /** Each of the device's channels, as {@code channel} reads one, with names of their own. */
    public <C> List<C> channels(Sheet sheet, Function<Sheet, C> channel, Function<C, Shown> shown) {
        List<C> channels = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Sheet one : sheet.list("channels")) {
            C next = channel.apply(one);
            one.refuseOthers();
            if (!names.add(shown.apply(next).channel().name())) {
                throw one.wrong("name", "another channel has this name; each needs its own");
            }
            channels.add(next);
        }
        return List.copyOf(channels);
    }

    /** The part of a channel that all protocols have: its name, quantity, resolution and limits. */
    public Shown shown(Sheet one) {
        String name = word(one, "name");
        Quantity quantity = one.oneOf("quantity", Quantity.class);
        BigDecimal resolution = quantity == Quantity.DEPOSIT
                ? one.numberOr("resolution", "", BigDecimal.ONE)
                : one.number("resolution", quantity.unit());
        if (resolution.signum() <= 0) {
            throw one.wrong("resolution", "a step above zero is needed here");
        }
        Optional<Limits> limits = one.has("limits") ? Optional.of(limits(one, quantity)) : Optional.empty();
        return new Shown(new Channel(id, name, quantity), resolution, limits);
    }

    /** Two numbers under {@code limits}, in the quantity's unit. */
    public static Limits limits(Sheet one, Quantity quantity) {
        return limits(one, "limits", quantity.unit());
    }

    /** Two numbers under a key. */
    public static Limits limits(Sheet one, String key, String unit) {
        List<BigDecimal> numbers = one.numbers(key, unit);
        if (numbers.size() != 2 || numbers.getFirst().compareTo(numbers.getLast()) >= 0) {
            throw one.wrong(
                    key,
                    key + " are " + numbers,
                    "two numbers are needed here, the lower one first; a decimal comma would split a number in two");
        }
        return new Limits(numbers.getFirst(), numbers.getLast());
    }

    /** The unit under {@code unit}, one that fits the quantity. */
    public static Unit unit(Sheet one, Quantity quantity) {
        if (quantity == Quantity.DEPOSIT) {
            if (!one.textOr("unit", "1").equals("1")) {
                throw one.wrong("unit", "a deposit has no unit; remove the line");
            }
            return Unit.NONE;
        }
        String symbols = Unit.of(quantity).stream()
                .map(unit -> unit == Unit.FRACTION ? "\"1\"" : unit.symbol())
                .collect(Collectors.joining(" or "));
        return Unit.of(one.text("unit"), quantity)
                .orElseThrow(() -> one.wrong("unit", symbols + " is needed here for " + quantity.key()));
    }

    /** A number under {@code scale} that is not zero; 1 if there is none. */
    public static BigDecimal scale(Sheet one) {
        BigDecimal scale = one.numberOr("scale", "", BigDecimal.ONE);
        if (scale.signum() == 0) {
            throw one.wrong("scale", "a number other than zero is needed here");
        }
        return scale;
    }
}
