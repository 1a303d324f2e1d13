// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import com.digitalpetri.modbus.MbapHeader;
import com.digitalpetri.modbus.ModbusTcpFrame;
import io.netty.channel.ChannelHandler.Sharable;
import io.netty.channel.ChannelHandlerContext;
import io.netty.channel.SimpleChannelInboundHandler;
import java.nio.ByteBuffer;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Sits on the wire between the frames and the services, and spoils what goes to a unit with a fault. */
@Sharable
final class Faults extends SimpleChannelInboundHandler<ModbusTcpFrame> {
    private static final byte[] NONSENSE = {0x7f, 0x03}; // says that 127 bytes follow; one does

    private final Map<Integer, Fault> faults = new ConcurrentHashMap<>();

    Fault of(int unit) {
        return faults.getOrDefault(unit, Fault.NONE);
    }

    void put(int unit, Fault fault) {
        faults.put(unit, fault);
    }

    @Override
    protected void channelRead0(ChannelHandlerContext context, ModbusTcpFrame frame) {
        switch (of(frame.header().unitId())) {
            case NONE, REFUSING, FROZEN -> context.fireChannelRead(frame);
            case SILENT -> {}
            case GARBLED -> {
                var unused = context.writeAndFlush(garbled(frame));
            }
            case UNPLUGGED -> {
                var unused = context.close();
            }
        }
    }

    /** The frame of an answer to this request, with its function code, and nonsense behind that. */
    private static ModbusTcpFrame garbled(ModbusTcpFrame request) {
        MbapHeader header = request.header();
        byte function = request.pdu().get(request.pdu().position());
        ByteBuffer pdu = ByteBuffer.allocate(1 + NONSENSE.length);
        pdu.put(function).put(NONSENSE).flip();
        int length = 1 + pdu.remaining();
        return new ModbusTcpFrame(
                new MbapHeader(header.transactionId(), header.protocolId(), length, header.unitId()), pdu);
    }
}
