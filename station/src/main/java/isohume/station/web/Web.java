// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.QuarkusApplication;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.eclipse.microprofile.config.ConfigProvider;

/** Serves a desk over HTTP. */
public final class Web {
    private Web() {}

    /**
     * Serves until the program is told to end, and then returns. To be called once.
     *
     * @param host the address to listen on
     * @param port the port to listen on, or 0 for any that is free
     * @param ready told the address of the first page as soon as pages are served
     */
    public static void serve(Desk desk, String host, int port, Consumer<String> ready) {
        System.setProperty("quarkus.http.host", host);
        System.setProperty("quarkus.http.port", Integer.toString(port));
        Front.open(desk, ready);
        Quarkus.run(Serving.class);
    }

    /** What the container runs once it is up. */
    public static final class Serving implements QuarkusApplication {
        @Override
        public int run(String... arguments) {
            var config = ConfigProvider.getConfig();
            Front.ready("http://" + config.getValue("quarkus.http.host", String.class) + ":"
                    + config.getValue("quarkus.http.port", Integer.class) + "/");
            Quarkus.waitForExit();
            return 0;
        }
    }

    /** The one place where what {@code main} built is handed over to what the container builds. */
    static final class Front {
        private static final AtomicReference<Front> OPEN = new AtomicReference<>();
        private final Desk desk;
        private final Consumer<String> ready;

        private Front(Desk desk, Consumer<String> ready) {
            this.desk = desk;
            this.ready = ready;
        }

        static void open(Desk desk, Consumer<String> ready) {
            OPEN.set(new Front(desk, ready));
        }

        static Desk desk() {
            return open().desk;
        }

        private static void ready(String address) {
            open().ready.accept(address);
        }

        private static Front open() {
            Front front = OPEN.get();
            if (front == null) {
                throw new IllegalStateException("pages were asked for before a desk was handed in");
            }
            return front;
        }
    }
}
