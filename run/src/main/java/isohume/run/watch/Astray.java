// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.function.Consumer;

/**
 * Air that stays off its target and comes no nearer: drying agent that is spent, water that is out, a drive too weak. The
 * distance is what the plan's own bands leave; whoever is within them has nothing to complain of.
 */
final class Astray implements Detector {
    private static final double PERCENT = 2; // % RH off the target
    private static final double KELVIN = 0.5;
    private static final double NEARER = 0.3; // of that, within the stretch, is progress

    private final Channels channels;
    private final Duration patience;
    private final Recent humidity;
    private final Recent temperature;

    Astray(Channels channels, Bounds bounds) {
        this.channels = channels;
        patience = bounds.astray();
        humidity = new Recent(patience);
        temperature = new Recent(patience);
    }

    @Override
    public void look(Poll poll, Consumer<Sighting> seen) {
        if (poll.target().isEmpty()) {
            return;
        }
        temperature.add(poll.at(), poll.number(channels.temperature()));
        humidity.add(poll.at(), poll.humidity());
        Instant since = poll.at().minus(patience);
        double kelvin = off(temperature, poll.target().get().temperature().celsius(), KELVIN);
        if (kelvin != 0) {
            String evidence = String.format(
                    Locale.ROOT, "%+.2f K from its target, and no nearer for %d min", kelvin, patience.toMinutes());
            seen.accept(new Sighting(Fault.TEMPERATURE_OFF, "air temperature", since, evidence));
            return; // a humidity that is off follows from it
        }
        double percent = off(humidity, poll.target().get().humidity().percent(), PERCENT);
        if (percent != 0) {
            String evidence = String.format(
                    Locale.ROOT,
                    "%+.2f %% RH from its target, and no nearer for %d min",
                    percent,
                    patience.toMinutes());
            seen.accept(new Sighting(percent > 0 ? Fault.DRY_AIR : Fault.WET_AIR, "air humidity", since, evidence));
        }
    }

    private static double off(Recent stretch, double target, double least) {
        if (!stretch.full()) {
            return 0;
        }
        Recent.Halves halves = stretch.halves();
        double then = Math.abs(halves.earlier() - target);
        double now = halves.later() - target;
        boolean nearer = then - Math.abs(now) > NEARER * least;
        return Math.abs(now) > least && !nearer ? now : 0;
    }

    @Override
    public void retarget() {
        humidity.clear();
        temperature.clear();
    }
}
