// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Channel;
import isohume.device.Unit;
import isohume.device.modbus.DeviceDescription.Address;
import isohume.device.sheet.Sheet;
import isohume.quantity.Quantity;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A device description from its document. */
final class DescriptionReader {
    private static final int LAST_ADDRESS = 0xFFFF;
    private static final int TIMEOUT_MS = 1000;

    private final Sheet sheet;
    private final String id;
    private final WordOrder order;

    DescriptionReader(Sheet sheet) {
        this.sheet = sheet;
        this.id = word(sheet, "device");
        this.order = sheet.oneOfOr("word-order", WordOrder.class, WordOrder.BIG);
    }

    DeviceDescription description() {
        String title = sheet.text("title");
        Sheet line = sheet.section("line");
        Address address = address(line.section("modbus-tcp"));
        Duration limit = Duration.ofMillis(line.wholeOr("timeout-ms", 10, 60_000, TIMEOUT_MS));
        line.refuseOthers();
        List<Shown> channels = channels();
        Optional<StatusWord> status = sheet.optional("status").map(DescriptionReader::status);
        Optional<Controls> controls = sheet.optional("chamber").map(this::controls);
        sheet.refuseOthers();
        return new DeviceDescription(id, title, address, limit, channels, status, controls);
    }

    /** An id or a name: it is part of file names, columns and addresses, so only plain characters. */
    private static String word(Sheet sheet, String key) {
        String word = sheet.text(key);
        if (!word.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,63}")) {
            throw sheet.wrong(key, "letters, digits, dots, dashes and underscores are possible here, 64 at most");
        }
        return word;
    }

    private static Address address(Sheet sheet) {
        String host = sheet.text("host");
        if (!host.matches("[A-Za-z0-9._:-]{1,253}")) {
            throw sheet.wrong("host", "a name such as mirror.lab or an address such as 192.168.1.20 is needed here");
        }
        Address address = new Address(host, sheet.whole("port", 1, 65_535), sheet.whole("unit", 0, 255));
        sheet.refuseOthers();
        return address;
    }

    private List<Shown> channels() {
        List<Shown> channels = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Sheet one : sheet.list("channels")) {
            Shown shown = channel(one);
            if (!names.add(shown.channel().name())) {
                throw one.wrong("name", "another channel has this name; each needs its own");
            }
            channels.add(shown);
        }
        return channels;
    }

    private Shown channel(Sheet one) {
        String name = word(one, "name");
        Quantity quantity = one.oneOf("quantity", Quantity.class);
        Table table = one.oneOf("table", Table.class);
        Field field = field(one, table, quantity);
        BigDecimal resolution = quantity == Quantity.DEPOSIT
                ? one.numberOr("resolution", "", BigDecimal.ONE)
                : one.number("resolution", quantity.unit());
        if (resolution.signum() <= 0) {
            throw one.wrong("resolution", "a step above zero is needed here");
        }
        Optional<Limits> limits = one.has("limits") ? Optional.of(limits(one, quantity)) : Optional.empty();
        one.refuseOthers();
        return new Shown(new Channel(id, name, quantity), field, resolution, limits);
    }

    private Field field(Sheet one, Table table, Quantity quantity) {
        int address = one.whole("address", 0, LAST_ADDRESS);
        NumberType type = one.oneOf("type", NumberType.class);
        if (address + type.words() - 1 > LAST_ADDRESS) {
            throw one.wrong("address", "a number of two registers has to begin at 65534 or before");
        }
        BigDecimal scale = one.numberOr("scale", "", BigDecimal.ONE);
        if (scale.signum() == 0) {
            throw one.wrong("scale", "a number other than zero is needed here");
        }
        BigDecimal offset = one.numberOr("offset", "", BigDecimal.ZERO);
        return new Field(table, address, type, order, scale, offset, unit(one, quantity));
    }

    private static Unit unit(Sheet one, Quantity quantity) {
        if (quantity == Quantity.DEPOSIT) {
            if (!one.textOr("unit", "1").equals("1")) {
                throw one.wrong("unit", "a deposit has no unit; remove the line");
            }
            return Unit.NONE;
        }
        List<Unit> units = Unit.of(quantity);
        String symbols = units.stream()
                .map(unit -> unit == Unit.FRACTION ? "\"1\"" : unit.symbol())
                .collect(Collectors.joining(" or "));
        return Unit.of(one.text("unit"), quantity)
                .orElseThrow(() -> one.wrong("unit", symbols + " is needed here for " + quantity.key()));
    }

    private static Limits limits(Sheet one, Quantity quantity) {
        List<BigDecimal> numbers = one.numbers("limits", quantity.unit());
        if (numbers.size() != 2 || numbers.getFirst().compareTo(numbers.getLast()) >= 0) {
            throw one.wrong(
                    "limits",
                    "limits are " + numbers,
                    "two numbers are needed here, the lower one first; a decimal comma would split a number in two");
        }
        return new Limits(numbers.getFirst(), numbers.getLast());
    }

    private static StatusWord status(Sheet sheet) {
        Table table = sheet.oneOf("table", Table.class);
        int address = sheet.whole("address", 0, LAST_ADDRESS);
        Sheet bits = sheet.section("bits");
        sheet.refuseOthers();
        SortedMap<Integer, String> meanings = new TreeMap<>();
        for (String bit : bits.keys()) {
            if (!bit.matches("\\d|1[0-5]")) {
                throw bits.wrongKey(bit, "a bit from 0 to 15 is needed here, 0 the lowest");
            }
            meanings.put(Integer.valueOf(bit), bits.text(bit));
        }
        return new StatusWord(new Span(table, address, 1), meanings);
    }

    private Controls controls(Sheet sheet) {
        Sheet temperature = sheet.section("temperature");
        Sheet humidity = sheet.section("humidity");
        Sheet run = sheet.section("run");
        sheet.refuseOthers();
        int address = run.whole("address", 0, LAST_ADDRESS);
        int on = run.whole("on", 0, 0xFFFF);
        int off = run.whole("off", 0, 0xFFFF);
        if (on == off) {
            throw run.wrong("off", "another number than for on is needed here");
        }
        run.refuseOthers();
        Limits temperatures = limits(temperature, Quantity.TEMPERATURE);
        Limits humidities = limits(humidity, Quantity.RELATIVE_HUMIDITY);
        Field warmth = control(temperature, Quantity.TEMPERATURE);
        Field moisture = control(humidity, Quantity.RELATIVE_HUMIDITY);
        return new Controls(warmth, temperatures, moisture, humidities, address, on, off);
    }

    private Field control(Sheet sheet, Quantity quantity) {
        Field field = field(sheet, Table.HOLDING, quantity);
        sheet.refuseOthers();
        return field;
    }
}
