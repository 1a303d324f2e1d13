// SPDX-License-Identifier: Apache-2.0
package isohume.station.bench;

import isohume.device.line.Tap;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Those who look at the bytes on a bench's lines for a while. Safe for any thread. */
public final class Ears implements Tap {
    private final List<Tap> listening = new CopyOnWriteArrayList<>();

    /** Lets one listen until the result is run. */
    public Runnable lend(Tap one) {
        listening.add(one);
        return () -> listening.remove(one);
    }

    @Override
    public void moved(String place, boolean sent, byte[] bytes) {
        listening.forEach(one -> one.moved(place, sent, bytes));
    }
}
