// SPDX-License-Identifier: Apache-2.0
package isohume.device.driver;

import isohume.device.Answer;
import isohume.device.Chamber;
import isohume.device.Channel;
import isohume.device.Reading;
import isohume.device.Setpoint;
import java.util.List;

/** A chamber that is told where to go here, and is read elsewhere. Its line keeps the two apart. */
public record Commanded(Chamber chamber) implements Chamber {
    @Override
    public String id() {
        return chamber.id();
    }

    @Override
    public List<Channel> channels() {
        return List.of();
    }

    @Override
    public List<Reading> read() {
        return List.of();
    }

    @Override
    public Answer request(Setpoint target) {
        return chamber.request(target);
    }

    @Override
    public Answer holds() {
        return chamber.holds();
    }

    @Override
    public Answer rest() {
        return chamber.rest();
    }

    @Override
    public void close() {
        chamber.close();
    }
}
