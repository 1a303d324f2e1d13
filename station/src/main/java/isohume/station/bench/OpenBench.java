// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import isohume.device.Chamber;
import isohume.device.Instrument;
import isohume.device.modbus.DeviceDescription;
import isohume.device.modbus.Devices;
import isohume.moistair.MoistAir;
import isohume.run.Bench;
import isohume.run.reach.Way;
import isohume.station.job.Worksheet;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A worksheet's bench with its lines open. Closing it lets go of them and leaves the chamber as it is. */
public record OpenBench(Bench bench, Devices devices) implements AutoCloseable {
    /**
     * Opens every device that the worksheet names.
     *
     * @param descriptions the description of each name
     * @throws IllegalArgumentException when the first device is no chamber
     */
    public static OpenBench of(
            Worksheet worksheet, Function<String, DeviceDescription> descriptions, InstantSource clock) {
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
        Bench bench = new Bench(chamber, opened.subList(1, opened.size()))
                .watched(worksheet.bounds(), worksheet.policies())
                .going(new Way(
                        worksheet.capacity().reach(),
                        MoistAir.by(worksheet.job().formulation())));
        return new OpenBench(bench, devices);
    }

    @Override
    public void close() {
        devices.close();
    }
}
