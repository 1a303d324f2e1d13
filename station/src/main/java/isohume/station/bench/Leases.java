// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import isohume.device.driver.DeviceDescription;
import isohume.device.modbus.ModbusDescription;
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
        String unit = chamber instanceof ModbusDescription modbus ? " unit " + modbus.unit() : "";
        String address = numeric(chamber.place()) + unit;
        return Lease.take(journal, address, holder(), LOCKS, clock);
    }

    /** One place has one address, however it is called; a serial port is called by its path. */
    public static String numeric(String place) {
        int colon = place.lastIndexOf(':');
        if (place.startsWith("/") || colon < 0) {
            return place;
        }
        try {
            return InetAddress.getByName(place.substring(0, colon)).getHostAddress() + place.substring(colon);
        } catch (UnknownHostException unknown) {
            return place;
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
