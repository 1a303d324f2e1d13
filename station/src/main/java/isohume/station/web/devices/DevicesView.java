// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.devices;

import io.quarkus.qute.TemplateData;
import isohume.device.Channel;
import isohume.device.driver.DeviceDescription;
import isohume.device.protocol.Protocol;
import isohume.station.trial.Tryout;
import isohume.station.trial.Tryouts;
import isohume.station.web.Clockface;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The page of devices.
 *
 * @param pasting whether devices may be described here
 * @param run the run at work on the bench; empty when there is none
 * @param protocols for which there is an example
 * @param text a description so far
 * @param trouble why no trial was begun; may be empty
 */
@TemplateData
public record DevicesView(
        boolean possible,
        boolean pasting,
        String run,
        List<Device> devices,
        List<Listed> trials,
        List<String> protocols,
        String text,
        String trouble) {
    /** A device of the bench. */
    @TemplateData
    public record Device(String id, String title, String place, String channels) {
        private static Device of(DeviceDescription description) {
            return new Device(
                    description.id(),
                    description.title(),
                    description.place(),
                    description.channels().stream().map(Channel::name).collect(Collectors.joining(", ")));
        }
    }

    /** A trial in the list. */
    @TemplateData
    public record Listed(int number, String title, String begun, Tryout.State state, int reads, int findings) {
        private static Listed of(Tryout tryout, Clockface clock) {
            return new Listed(
                    tryout.number(),
                    tryout.description().title(),
                    clock.full(tryout.begun()),
                    tryout.state(),
                    tryout.report().reads(),
                    tryout.report().findings().size());
        }
    }

    static DevicesView of(Optional<Tryouts> tryouts, boolean pasting, Clockface clock, String text, String trouble) {
        return new DevicesView(
                tryouts.isPresent(),
                pasting,
                tryouts.flatMap(Tryouts::run).orElse(""),
                tryouts.map(Tryouts::ofBench).orElse(List.of()).stream()
                        .map(Device::of)
                        .toList(),
                tryouts.map(Tryouts::all).orElse(List.of()).stream()
                        .map(one -> Listed.of(one, clock))
                        .toList(),
                Protocol.keys(),
                text,
                trouble);
    }
}
