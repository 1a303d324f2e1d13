// SPDX-License-Identifier: Apache-2.0
package isohume.station;

import io.quarkus.runtime.annotations.QuarkusMain;
import isohume.station.web.Desk;
import isohume.station.web.Web;
import java.time.InstantSource;

/** Where the program begins. */
@QuarkusMain
public final class Main {
    private Main() {}

    public static void main(String... arguments) {
        if (arguments.length == 1 && arguments[0].equals("serve")) {
            Web.serve(new Empty(), "127.0.0.1", 8640, address -> System.err.println("Isohume is at " + address));
        } else {
            System.err.println("usage: isohume serve");
            System.exit(2);
        }
    }

    /** A house with nothing in it yet. */
    private record Empty() implements Desk {
        @Override
        public String program() {
            return "Isohume 0.1.0";
        }

        @Override
        public InstantSource clock() {
            return InstantSource.system();
        }
    }
}
