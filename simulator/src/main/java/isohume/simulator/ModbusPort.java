// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import com.digitalpetri.modbus.server.ModbusServices;
import com.digitalpetri.modbus.server.ModbusTcpServer;
import com.digitalpetri.modbus.tcp.server.NettyServerTransportConfig;
import com.digitalpetri.modbus.tcp.server.NettyTcpServerTransport;
import io.netty.channel.Channel;
import io.netty.channel.ChannelInitializer;
import io.netty.channel.ChannelPipeline;
import io.netty.channel.EventLoopGroup;
import io.netty.channel.nio.NioEventLoopGroup;
import io.netty.util.concurrent.DefaultThreadFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/** A Modbus TCP server on the loopback, with threads of its own that don't keep the program alive. */
final class ModbusPort implements AutoCloseable {
    static final String LOOPBACK = "127.0.0.1";

    private final EventLoopGroup loop = new NioEventLoopGroup(1, new DefaultThreadFactory("simulator-wire", true));
    private final ExecutorService worker =
            Executors.newSingleThreadExecutor(new DefaultThreadFactory("simulator-answers", true));
    private final CompletableFuture<Channel> bound = new CompletableFuture<>();
    private final ModbusTcpServer server;

    private ModbusPort(ModbusServices services, Faults faults, int port) {
        NettyTcpServerTransport transport = NettyTcpServerTransport.create(config -> configure(config, faults, port));
        server = ModbusTcpServer.create(transport, services);
    }

    /**
     * @param port 0 for any free one
     * @throws UncheckedIOException when the port cannot be had
     */
    static ModbusPort open(ModbusServices services, Faults faults, int port) {
        ModbusPort opened = new ModbusPort(services, faults, port);
        try {
            opened.server.start();
        } catch (ExecutionException refused) {
            opened.close();
            String message = "cannot listen on " + LOOPBACK + " port " + port
                    + "; stop what uses it, or choose another port, or 0 for any free one";
            throw new UncheckedIOException(new IOException(message, refused.getCause()));
        } catch (InterruptedException interrupted) {
            opened.close();
            Thread.currentThread().interrupt();
            throw new UncheckedIOException(new IOException("interrupted while opening a port", interrupted));
        }
        return opened;
    }

    private void configure(NettyServerTransportConfig.Builder config, Faults faults, int port) {
        config.setBindAddress(LOOPBACK);
        config.setPort(port);
        config.setEventLoopGroup(loop);
        config.setExecutor(worker);
        config.setPipelineCustomizer(pipeline -> spoil(pipeline, faults));
        config.setBootstrapCustomizer(bootstrap -> bootstrap.handler(new ChannelInitializer<Channel>() {
            @Override
            protected void initChannel(Channel channel) {
                bound.complete(channel);
            }
        }));
    }

    private static void spoil(ChannelPipeline pipeline, Faults faults) {
        pipeline.addBefore(pipeline.lastContext().name(), "faults", faults);
    }

    int port() {
        return ((InetSocketAddress) bound.join().localAddress()).getPort();
    }

    @Override
    public void close() {
        try {
            server.stop();
        } catch (ExecutionException alreadyGone) {
            // the port is closed either way
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        worker.shutdown();
        var unused = loop.shutdownGracefully(0, 1, TimeUnit.SECONDS);
    }
}
