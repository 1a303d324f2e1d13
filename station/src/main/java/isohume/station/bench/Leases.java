// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import isohume.device.modbus.DeviceDescription;
import isohume.journal.Journal;
import isohume.run.lease.Holder;
import isohume.run.lease.Lease;
import isohume.station.Program;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;

/** Takes the right to a chamber for this program. */
public final class Leases {
    private static final Path LOCKS = Path.of(System.getProperty("java.io.tmpdir"), "isohume-chambers");

    private Leases() {}

    /**
     * The lease of the chamber that a description leads to.
     *
     * @throws isohume.run.lease.LeaseRefused when another program has it
     */
    public static Lease of(DeviceDescription chamber, Journal journal, InstantSource clock) {
        String address = numeric(chamber.host()) + ":" + chamber.port() + " unit " + chamber.unit();
        return Lease.take(journal, address, holder(), LOCKS, clock);
    }

    /** One chamber has one address, however it is called. */
    private static String numeric(String host) {
        try {
            return InetAddress.getByName(host).getHostAddress();
        } catch (UnknownHostException unknown) {
            return host;
        }
    }

    /** The start tells two programs apart that had the same number, one after the other. */
    private static Holder holder() {
        ProcessHandle own = ProcessHandle.current();
        String since = own.info().startInstant().map(Instant::toString).orElse("an unknown time");
        return new Holder(Program.title() + ", process " + own.pid() + " since " + since, machine());
    }

    private static String machine() {
        try {
            return InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException nameless) {
            return "a machine without a name";
        }
    }
}
