// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import io.quarkus.runtime.annotations.QuarkusMain;

/** Where the program begins. The web half starts only for commands that show pages. */
@QuarkusMain
public final class Main {
    private Main() {}

    public static void main(String... arguments) {
        // before anything logs: the web half's manager cannot be put in later
        System.setProperty("java.util.logging.manager", "org.jboss.logmanager.LogManager");
        // before anything logs: the web half brings its own manager, which the runtime looks up only once
        System.setProperty("java.util.logging.manager", "org.jboss.logmanager.LogManager");
        System.exit(Isohume.run(arguments));
    }
}
