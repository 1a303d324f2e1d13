// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Setpoint;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** By fixed limits over a window. */
final class FixedSettling implements Settling {
    private final List<Signal> signals;

    FixedSettling(SettlingRule.Fixed rule, Duration interval, Roles roles) {
        signals = Watched.all(roles).stream()
                .map(watched -> new Signal(watched, limits(rule, watched), new Window(rule.window(), interval)))
                .toList();
    }

    private static Limits limits(SettlingRule.Fixed rule, Watched watched) {
        if (watched.difference()) {
            return watched.thermal() ? rule.temperatureDifference() : rule.humidityDifference();
        }
        return switch (watched.quantity()) {
            case TEMPERATURE -> rule.temperature();
            case DEW_POINT -> rule.dewPoint();
            case RELATIVE_HUMIDITY, PRESSURE, DEPOSIT, WATER_LEVEL -> rule.humidity();
        };
    }

    @Override
    public void take(Moment moment) {
        signals.forEach(signal -> signal.take(moment));
    }

    @Override
    public void restart(int point, Instant at) {
        signals.forEach(Signal::restart);
    }

    @Override
    public List<Waiting> waiting(@Nullable Setpoint target) {
        return signals.stream().map(signal -> signal.waiting(target)).toList();
    }
}
