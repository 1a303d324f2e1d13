// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import isohume.device.Channel;
import isohume.device.Instrument;
import java.util.List;

/** An instrument that is called, and shows, what its description says. */
public abstract class Described implements Instrument {
    private final DeviceDescription description;

    /** By its description. */
    protected Described(DeviceDescription description) {
        this.description = description;
    }

    @Override
    public final String id() {
        return description.id();
    }

    @Override
    public final List<Channel> channels() {
        return description.channels();
    }
}
