// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Setpoint;
import isohume.quantity.Quantity;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** One signal judged by fixed limits over a window. */
final class Signal {
    private static final int MOST_GAPS = 2;
    private static final double SINGLE_STEP = 1.5; // slope of one step in the middle of a window, in steps per window

    private final Watched watched;
    private final Limits limits;
    private final Window window;
    private OptionalDouble latest = OptionalDouble.empty();
    private double step;
    private int gaps;

    Signal(Watched watched, Limits limits, Window window) {
        this.watched = watched;
        this.limits = limits;
        this.window = window;
    }

    void take(Moment moment) {
        latest = watched.source().in(moment);
        step = Math.max(step, moment.step(watched.display()));
        gaps = latest.isPresent() ? 0 : gaps + 1;
        if (gaps > MOST_GAPS) {
            window.clear(); // what was still before a silence says nothing about what comes after it
        }
        latest.ifPresent(value -> window.add(moment.at(), value));
    }

    void restart() {
        window.clear();
        step = 0;
    }

    Waiting waiting(@Nullable Setpoint target) {
        Duration unfilled = window.unfilled();
        if (!unfilled.isZero()) {
            return Waiting.by(watched, latest, List.of(), Optional.of(unfilled));
        }
        Window.Line line = window.line();
        double drift = visible(line.perMinute());
        List<Waiting.Criterion> criteria = new ArrayList<>();
        distance(line, target).ifPresent(d -> criteria.add(new Waiting.Criterion(Waiting.Kind.BAND, d, limits.band())));
        criteria.add(new Waiting.Criterion(Waiting.Kind.SPREAD, line.spread(), limits.spread()));
        criteria.add(new Waiting.Criterion(Waiting.Kind.DRIFT, drift, limits.drift()));
        return Waiting.by(watched, latest, criteria, left(drift));
    }

    /** A slope less what a single step of the last digit can make of a steady value. */
    private double visible(double perMinute) {
        return Math.max(0, Math.abs(perMinute) - SINGLE_STEP * step / window.minutes());
    }

    private OptionalDouble distance(Window.Line line, @Nullable Setpoint target) {
        if (watched.difference() || target == null || Double.isInfinite(limits.band())) {
            return OptionalDouble.empty();
        }
        double wanted = watched.quantity() == Quantity.TEMPERATURE
                ? target.temperature().celsius()
                : target.humidity().percent();
        return OptionalDouble.of(Math.abs(line.mean() - wanted));
    }

    /** The drift dies away exponentially: its two halves give the time constant, and that the crossing. */
    private Optional<Duration> left(double drift) {
        if (drift <= limits.drift()) {
            return Optional.of(Duration.ZERO);
        }
        double[] halves = window.halves();
        double ratio = halves[1] / halves[0];
        if (!(ratio > 0.05 && ratio < 0.98)) {
            return Optional.empty(); // still turning round, or not dying away
        }
        double minutes = window.minutes() / 2 / -Math.log(ratio) * Math.log(drift / limits.drift());
        return Optional.of(Duration.ofSeconds(Math.round(minutes * 60)));
    }
}
