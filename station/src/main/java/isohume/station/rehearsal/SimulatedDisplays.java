// SPDX-License-Identifier: Apache-2.0
package isohume.station.rehearsal;

import isohume.run.entry.DisplayedChannel;
import isohume.simulator.SimulatedBench;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** What the displays of simulated instruments show, to their last digit. */
public final class SimulatedDisplays {
    private final SimulatedBench bench;
    private final List<DisplayedChannel> channels;

    public SimulatedDisplays(SimulatedBench bench, List<DisplayedChannel> channels) {
        this.bench = bench;
        this.channels = List.copyOf(channels);
    }

    /** For somebody who looks at the bench: {@code C-3310 shows 45.3 % RH.}; empty where there is no display. */
    public String inWords() {
        return channels.stream()
                .map(c -> c.instrument() + " shows " + shown(bench, c) + " "
                        + c.quantity().unit() + ".")
                .collect(Collectors.joining(" "));
    }

    static String shown(SimulatedBench bench, DisplayedChannel channel) {
        BigDecimal value = BigDecimal.valueOf(bench.wouldShow(channel.instrument(), channel.quantity()));
        return value.divide(channel.resolution(), 0, RoundingMode.HALF_EVEN)
                .multiply(channel.resolution())
                .setScale(channel.decimals(), RoundingMode.UNNECESSARY)
                .toPlainString();
    }
}
