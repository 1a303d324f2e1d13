// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import picocli.CommandLine.Option;

/** Where pages are served. */
@SuppressWarnings("NullAway.Init") // picocli fills the fields
final class Address {
    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "8640",
            description = "port of the pages, 0 for any that is free: ${DEFAULT-VALUE}")
    private int port;

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            description = "address to listen on: ${DEFAULT-VALUE}, this machine only. There is no login yet: name"
                    + " another one only on a network that you trust.")
    private String host;

    int port() {
        return port;
    }

    String host() {
        return host;
    }
}
