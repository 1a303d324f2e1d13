// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Channel;
import isohume.device.Instrument;
import isohume.device.driver.Common;
import isohume.device.driver.DeviceDescription;
import isohume.device.driver.Shown;
import isohume.device.line.Line;
import isohume.device.line.Lines;
import isohume.device.line.Place;
import isohume.device.sheet.Sheet;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;

/**
 * A Modbus device as a person describes it: where it is, which registers mean what, and, for a chamber, how it is told
 * where to go. Immutable.
 */
public final class ModbusDescription implements DeviceDescription {
    private final Common common;
    private final Address address;
    private final List<Register> registers;
    private final Optional<StatusWord> status;
    private final Optional<Controls> controls;

    /** @param unit the device's number behind the place, 0 to 255 */
    record Address(Place place, Framing framing, int unit) {}

    ModbusDescription(
            Common common,
            Address address,
            List<Register> registers,
            Optional<StatusWord> status,
            Optional<Controls> controls) {
        this.common = common;
        this.address = address;
        this.registers = List.copyOf(registers);
        this.status = status;
        this.controls = controls;
    }

    /**
     * The description in a document of Modbus TCP.
     *
     * @throws isohume.device.sheet.SheetError with line and column, if it is not valid
     */
    public static ModbusDescription tcp(Sheet sheet) {
        return new ModbusReader(sheet, Framing.TCP).description();
    }

    /**
     * The description in a document of Modbus RTU.
     *
     * @throws isohume.device.sheet.SheetError with line and column, if it is not valid
     */
    public static ModbusDescription rtu(Sheet sheet) {
        return new ModbusReader(sheet, Framing.RTU).description();
    }

    /** The same device at another address. */
    public ModbusDescription withAddress(String host, int port) {
        Address there = new Address(new Place.Tcp(host, port), address.framing(), address.unit());
        return new ModbusDescription(common, there, registers, status, controls);
    }

    @Override
    public String id() {
        return common.id();
    }

    @Override
    public String title() {
        return common.title();
    }

    @Override
    public String place() {
        return address.place().toString();
    }

    @Override
    public Duration timeLimit() {
        return common.limit();
    }

    @Override
    public List<Channel> channels() {
        return registers.stream().map(one -> one.shown().channel()).toList();
    }

    @Override
    public Optional<BigDecimal> resolution(String channel) {
        return Shown.resolution(registers.stream().map(Register::shown), channel);
    }

    @Override
    public boolean isChamber() {
        return controls.isPresent();
    }

    @Override
    public Instrument open(Lines lines, InstantSource clock) {
        Lines.Share share = lines.share(address.place(), id());
        Line line = share.line();
        ModbusInstrument instrument = new ModbusInstrument(this, line, clock, share.release());
        return controls.<Instrument>map(found -> new ModbusChamber(this, found, instrument, line))
                .orElse(instrument);
    }

    /** The Modbus unit under which it answers. */
    public int unit() {
        return address.unit();
    }

    Framing framing() {
        return address.framing();
    }

    List<Register> registers() {
        return registers;
    }

    Optional<StatusWord> status() {
        return status;
    }
}
