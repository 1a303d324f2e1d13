// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import com.digitalpetri.modbus.client.ModbusTcpClient;
import com.digitalpetri.modbus.exceptions.ModbusException;
import com.digitalpetri.modbus.pdu.ReadHoldingRegistersRequest;
import com.digitalpetri.modbus.pdu.ReadInputRegistersRequest;
import com.digitalpetri.modbus.pdu.WriteSingleRegisterRequest;
import com.digitalpetri.modbus.tcp.client.NettyTcpClientTransport;
import java.nio.ByteBuffer;
import java.time.Duration;

/** A Modbus client of another party, to look at the bench from outside. */
final class Wire implements AutoCloseable {
    private final ModbusTcpClient client;

    Wire(SimulatedBench bench) throws ModbusException {
        var transport = NettyTcpClientTransport.create(config -> {
            config.setHostname("127.0.0.1");
            config.setPort(bench.port());
            config.setConnectPersistent(false);
        });
        client = ModbusTcpClient.create(transport, config -> config.setRequestTimeout(Duration.ofMillis(700)));
        client.connect();
    }

    ByteBuffer input(int unit, int address, int count) throws ModbusException {
        return ByteBuffer.wrap(client.readInputRegisters(unit, new ReadInputRegistersRequest(address, count))
                .registers());
    }

    ByteBuffer holding(int unit, int address, int count) throws ModbusException {
        return ByteBuffer.wrap(client.readHoldingRegisters(unit, new ReadHoldingRegistersRequest(address, count))
                .registers());
    }

    void write(int unit, int address, int value) throws ModbusException {
        var unused = client.writeSingleRegister(unit, new WriteSingleRegisterRequest(address, value));
    }

    /** Asks the chamber, as the program would. */
    void ask(double celsius, double percent) throws ModbusException {
        write(Units.CHAMBER, 0, (int) Math.round(celsius * 100));
        write(Units.CHAMBER, 1, (int) Math.round(percent * 100));
        write(Units.CHAMBER, 2, 1);
    }

    @Override
    public void close() throws ModbusException {
        client.disconnect();
    }
}
