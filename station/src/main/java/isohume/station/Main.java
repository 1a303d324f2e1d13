// SPDX-License-Identifier: Apache-2.0
package isohume.station;

import io.quarkus.runtime.annotations.QuarkusMain;
import isohume.journal.Entry;
import isohume.result.Results;
import isohume.run.Order;
import isohume.station.web.Desk;
import isohume.station.web.Web;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

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

        @Override
        public ZoneId zone() {
            return ZoneId.systemDefault();
        }

        @Override
        public String remark() {
            return "";
        }

        @Override
        public Optional<String> current() {
            return Optional.empty();
        }

        @Override
        public List<Summary> runs() {
            return List.of();
        }

        @Override
        public List<Entry> facts(String run, long after, int most) {
            return List.of();
        }

        @Override
        public Optional<Results> results(String run) {
            return Optional.empty();
        }

        @Override
        public List<Document> documents(String run) {
            return List.of();
        }

        @Override
        public Optional<byte[]> document(String run, String name) {
            return Optional.empty();
        }

        @Override
        public Told order(String run, Order order, String operator, String reason) {
            return new Told.Refused("There is no run on this bench.");
        }
    }
}
