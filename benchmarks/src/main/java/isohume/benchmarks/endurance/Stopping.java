// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.endurance;

import isohume.device.Answer;
import isohume.device.Chamber;
import isohume.device.Channel;
import isohume.device.Reading;
import isohume.device.Setpoint;
import java.util.List;

/** A chamber that tells when it begins to be read. */
record Stopping(Chamber chamber, Runnable begins) implements Chamber {
    @Override
    public String id() {
        return chamber.id();
    }

    @Override
    public List<Channel> channels() {
        return chamber.channels();
    }

    @Override
    public List<Reading> read() {
        begins.run();
        return chamber.read();
    }

    @Override
    public Answer request(Setpoint target) {
        return chamber.request(target);
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
