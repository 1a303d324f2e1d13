// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import isohume.device.Chamber;
import isohume.device.Instrument;
import isohume.device.driver.Abreast;
import isohume.device.driver.Commanded;
import isohume.device.driver.DeviceDescription;
import isohume.device.driver.Devices;
import isohume.moistair.MoistAir;
import isohume.run.Bench;
import isohume.run.reach.Way;
import isohume.station.job.Worksheet;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A worksheet's bench with its lines open. Closing it lets go of them and leaves the chamber as it is.
 *
 * @param connected its devices, the chamber first
 * @param ears who looks at its lines
 */
public record OpenBench(Bench bench, Devices devices, List<Connected> connected, Ears ears) implements AutoCloseable {
    public OpenBench {
        connected = List.copyOf(connected);
    }

    /** A device of the bench, as it is described and as it was opened. */
    public record Connected(DeviceDescription description, Instrument instrument) {}

    /**
     * Opens every device that the worksheet names; they are read one after the other, as suits a bench whose time stands
     * still meanwhile.
     *
     * @param descriptions the description of each name
     * @throws IllegalArgumentException when the first device is no chamber
     */
    public static OpenBench of(
            Worksheet worksheet, Function<String, DeviceDescription> descriptions, InstantSource clock) {
        return of(worksheet, descriptions, clock, Bench::new);
    }

    /**
     * As {@link #of}; all are read at the same time, so that one that is dead delays no other.
     *
     * @param patience how long a poll waits for the slowest of them; what is later is taken by the next poll
     */
    public static OpenBench abreast(
            Worksheet worksheet,
            Function<String, DeviceDescription> descriptions,
            Duration patience,
            InstantSource clock) {
        return of(worksheet, descriptions, clock, (chamber, others) -> {
            List<Instrument> all = new ArrayList<>(List.of(chamber));
            all.addAll(others);
            return new Bench(new Commanded(chamber), List.of(new Abreast(all, patience, clock)));
        });
    }

    private static OpenBench of(
            Worksheet worksheet,
            Function<String, DeviceDescription> descriptions,
            InstantSource clock,
            BiFunction<Chamber, List<Instrument>, Bench> together) {
        Ears ears = new Ears();
        Devices devices = new Devices(ears);
        List<Connected> connected = new ArrayList<>();
        for (String name : worksheet.devices()) {
            DeviceDescription description = descriptions.apply(name);
            connected.add(new Connected(description, devices.open(description, clock)));
        }
        List<Instrument> opened = connected.stream().map(Connected::instrument).toList();
        if (opened.isEmpty() || !(opened.getFirst() instanceof Chamber chamber)) {
            devices.close();
            throw new IllegalArgumentException(
                    "the bench names no chamber that can be told where to go; its description needs a chamber section");
        }
        Bench bench = together.apply(chamber, opened.subList(1, opened.size()))
                .watched(worksheet.bounds(), worksheet.policies())
                .going(new Way(
                        worksheet.capacity().reach(),
                        MoistAir.by(worksheet.job().formulation())));
        return new OpenBench(bench, devices, connected, ears);
    }

    @Override
    public void close() {
        devices.close();
    }
}
