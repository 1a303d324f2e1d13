// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import isohume.device.Chamber;
import isohume.device.Instrument;
import isohume.device.driver.Abreast;
import isohume.device.driver.DeviceDescription;
import isohume.device.driver.Devices;
import isohume.run.Bench;
import isohume.station.job.Worksheet;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A worksheet's bench with its lines open. Closing it lets go of them and leaves the chamber as it is. */
public record OpenBench(Bench bench, Devices devices, Abreast others) implements AutoCloseable {
    /**
     * Opens every device that the worksheet names.
     *
     * @param descriptions the description of each name
     * @param patience how long a poll waits for the slowest of them; what is later is taken by the next poll
     * @throws IllegalArgumentException when the first device is no chamber
     */
    public static OpenBench of(
            Worksheet worksheet,
            Function<String, DeviceDescription> descriptions,
            Duration patience,
            InstantSource clock) {
        Devices devices = new Devices();
        List<Instrument> opened = new ArrayList<>();
        for (String name : worksheet.devices()) {
            opened.add(devices.open(descriptions.apply(name), clock));
        }
        if (opened.isEmpty() || !(opened.getFirst() instanceof Chamber chamber)) {
            devices.close();
            throw new IllegalArgumentException(
                    "the bench names no chamber that can be told where to go; its description needs a chamber section");
        }
        Abreast others = new Abreast(opened.subList(1, opened.size()), patience, clock);
        Bench bench = new Bench(chamber, List.of(others)).watched(worksheet.bounds(), worksheet.policies());
        return new OpenBench(bench, devices, others);
    }

    @Override
    public void close() {
        others.close();
        devices.close();
    }
}
