// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.driver.Common;
import isohume.device.driver.Limits;
import isohume.device.driver.LineSheet;
import isohume.device.driver.Shown;
import isohume.device.line.Place;
import isohume.device.modbus.ModbusDescription.Address;
import isohume.device.sheet.Sheet;
import isohume.quantity.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** A description from its document. */
final class ModbusReader {
    private static final int LAST_ADDRESS = 0xFFFF;

    private final Sheet sheet;
    private final Framing framing;
    private final WordOrder order;

    ModbusReader(Sheet sheet, Framing framing) {
        this.sheet = sheet;
        this.framing = framing;
        this.order = sheet.oneOfOr("word-order", WordOrder.class, WordOrder.BIG);
    }

    ModbusDescription description() {
        Sheet line = sheet.section("line");
        Common common = Common.of(sheet, line);
        Address address = framing == Framing.TCP ? tcp(line.section("modbus-tcp")) : rtu(line);
        line.refuseOthers();
        List<Register> registers = common.channels(sheet, one -> register(common, one), Register::shown);
        Optional<StatusWord> status = sheet.optional("status").map(ModbusReader::status);
        Optional<Controls> controls = sheet.optional("chamber").map(this::controls);
        sheet.refuseOthers();
        return new ModbusDescription(common, address, registers, status, controls);
    }

    private static Address tcp(Sheet sheet) {
        Place place = new Place.Tcp(Common.host(sheet), sheet.whole("port", 1, 65_535));
        Address address = new Address(place, Framing.TCP, sheet.whole("unit", 0, 255));
        sheet.refuseOthers();
        return address;
    }

    private static Address rtu(Sheet line) {
        return new Address(LineSheet.place(line), Framing.RTU, line.whole("unit", 1, 247));
    }

    private Register register(Common common, Sheet one) {
        Shown shown = common.shown(one);
        Table table = one.oneOf("table", Table.class);
        return new Register(shown, field(one, table, shown.channel().quantity()));
    }

    private Field field(Sheet one, Table table, Quantity quantity) {
        int address = one.whole("address", 0, LAST_ADDRESS);
        NumberType type = one.oneOf("type", NumberType.class);
        if (address + type.words() - 1 > LAST_ADDRESS) {
            throw one.wrong("address", "a number of two registers has to begin at 65534 or before");
        }
        BigDecimal scale = Common.scale(one);
        BigDecimal offset = one.numberOr("offset", "", BigDecimal.ZERO);
        return new Field(table, address, type, order, scale, offset, Common.unit(one, quantity));
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
        Limits temperatures = Common.limits(temperature, Quantity.TEMPERATURE);
        Limits humidities = Common.limits(humidity, Quantity.RELATIVE_HUMIDITY);
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
