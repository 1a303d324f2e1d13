// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import com.digitalpetri.modbus.ExceptionCode;
import com.digitalpetri.modbus.FunctionCode;
import com.digitalpetri.modbus.exceptions.ModbusResponseException;
import com.digitalpetri.modbus.exceptions.UnknownUnitIdException;
import com.digitalpetri.modbus.pdu.ReadHoldingRegistersRequest;
import com.digitalpetri.modbus.pdu.ReadHoldingRegistersResponse;
import com.digitalpetri.modbus.pdu.ReadInputRegistersRequest;
import com.digitalpetri.modbus.pdu.ReadInputRegistersResponse;
import com.digitalpetri.modbus.pdu.WriteMultipleRegistersRequest;
import com.digitalpetri.modbus.pdu.WriteMultipleRegistersResponse;
import com.digitalpetri.modbus.pdu.WriteSingleRegisterRequest;
import com.digitalpetri.modbus.pdu.WriteSingleRegisterResponse;
import com.digitalpetri.modbus.server.ModbusRequestContext;
import com.digitalpetri.modbus.server.ModbusServices;
import java.nio.ByteBuffer;
import java.util.Map;
import java.util.concurrent.locks.Lock;

/** Answers Modbus requests from the registers, one at a time and never in the middle of a step. */
final class BenchServices implements ModbusServices {
    private final Map<Integer, Registers> units;
    private final Faults faults;
    private final Lock lock;

    BenchServices(Map<Integer, Registers> units, Faults faults, Lock lock) {
        this.units = units;
        this.faults = faults;
        this.lock = lock;
    }

    @Override
    public ReadInputRegistersResponse readInputRegisters(
            ModbusRequestContext context, int unit, ReadInputRegistersRequest request)
            throws ModbusResponseException, UnknownUnitIdException {
        Registers registers = willing(unit, FunctionCode.READ_INPUT_REGISTERS);
        lock.lock();
        try {
            return new ReadInputRegistersResponse(registers.readInput(request.address(), request.quantity()));
        } finally {
            lock.unlock();
        }
    }

    @Override
    public ReadHoldingRegistersResponse readHoldingRegisters(
            ModbusRequestContext context, int unit, ReadHoldingRegistersRequest request)
            throws ModbusResponseException, UnknownUnitIdException {
        Registers registers = willing(unit, FunctionCode.READ_HOLDING_REGISTERS);
        lock.lock();
        try {
            return new ReadHoldingRegistersResponse(registers.readHolding(request.address(), request.quantity()));
        } finally {
            lock.unlock();
        }
    }

    @Override
    public WriteSingleRegisterResponse writeSingleRegister(
            ModbusRequestContext context, int unit, WriteSingleRegisterRequest request)
            throws ModbusResponseException, UnknownUnitIdException {
        write(unit, FunctionCode.WRITE_SINGLE_REGISTER, request.address(), (short) request.value());
        return new WriteSingleRegisterResponse(request.address(), request.value());
    }

    @Override
    public WriteMultipleRegistersResponse writeMultipleRegisters(
            ModbusRequestContext context, int unit, WriteMultipleRegistersRequest request)
            throws ModbusResponseException, UnknownUnitIdException {
        short[] words = new short[request.quantity()];
        if (request.values().length != 2 * words.length) {
            throw new ModbusResponseException(FunctionCode.WRITE_MULTIPLE_REGISTERS, ExceptionCode.ILLEGAL_DATA_VALUE);
        }
        ByteBuffer.wrap(request.values()).asShortBuffer().get(words);
        write(unit, FunctionCode.WRITE_MULTIPLE_REGISTERS, request.address(), words);
        return new WriteMultipleRegistersResponse(request.address(), request.quantity());
    }

    private void write(int unit, FunctionCode function, int address, short... words)
            throws ModbusResponseException, UnknownUnitIdException {
        Registers registers = willing(unit, function);
        lock.lock();
        try {
            registers.write(function, address, words);
        } finally {
            lock.unlock();
        }
    }

    private Registers willing(int unit, FunctionCode function) throws ModbusResponseException, UnknownUnitIdException {
        Registers registers = units.get(unit);
        if (registers == null) {
            throw new UnknownUnitIdException(unit);
        }
        if (faults.of(unit) == Fault.REFUSING) {
            throw new ModbusResponseException(function, ExceptionCode.SLAVE_DEVICE_FAILURE);
        }
        return registers;
    }
}
