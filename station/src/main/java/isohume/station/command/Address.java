// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Where pages are served. */
@SuppressWarnings("NullAway.Init") // picocli fills the fields
final class Address {
    private static final int MOST_PORTS = 65_535;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    private int port;

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            description = "address to listen on: ${DEFAULT-VALUE}, this machine only. There is no login yet: name"
                    + " another one only on a network that you trust.")
    private String host;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "8640",
            description = "port of the pages, 0 for any that is free: ${DEFAULT-VALUE}")
    void port(int number) {
        port = port(spec, number);
    }

    int port() {
        return port;
    }

    /** The number, if a port can have it; anything else is wrong use of the command. */
    static int port(CommandSpec spec, int number) {
        if (number < 0 || number > MOST_PORTS) {
            throw new ParameterException(spec.commandLine(), "a port is from 0 to 65535, was " + number);
        }
        return number;
    }

    /**
     * Makes sure that pages can be served there, before anything else is begun.
     *
     * @throws IOException when they cannot
     */
    void checkFree() throws IOException {
        try (ServerSocket tried = new ServerSocket()) {
            tried.bind(new InetSocketAddress(host, port));
        } catch (IOException taken) {
            throw new IOException(
                    "pages cannot be served at port " + port + " of " + host + " (" + taken.getMessage()
                            + "); perhaps the program runs already: open http://" + host + ":" + port
                            + "/ in a browser, or choose another port with --port. Nothing was begun.",
                    taken);
        }
    }

    String host() {
        return host;
    }
}
