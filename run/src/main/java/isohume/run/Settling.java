// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Setpoint;
import isohume.quantity.Quantity;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Judges, over a window, the references and the difference of each instrument from them: both may move together and the
 * error still be settled, or the reference be flat and the instrument still creep.
 */
final class Settling {
    private static final double LOSING = 2; // a settled signal may come this far back before it counts as lost

    private static final int MOST_GAPS = 2;

    private final List<Signal> signals = new ArrayList<>();

    Settling(Rules rules, Roles roles) {
        add(
                "air temperature",
                Quantity.TEMPERATURE,
                false,
                rules.temperature(),
                rules,
                m -> m.value(roles.temperature()));
        add("dew point", Quantity.DEW_POINT, false, rules.dewPoint(), rules, m -> m.value(roles.dewPoint()));
        add("relative humidity", Quantity.RELATIVE_HUMIDITY, false, rules.humidity(), rules, Moment::humidity);
        for (String id : roles.instruments()) {
            addDifference(id, roles, rules);
        }
    }

    private void addDifference(String id, Roles roles, Rules rules) {
        String instrument = id.substring(0, id.indexOf('/'));
        Quantity quantity = Quantity.ofKey(id.substring(id.indexOf('/') + 1));
        String name = instrument + " " + quantity.key().replace('_', ' ') + " − reference";
        if (quantity == Quantity.TEMPERATURE) {
            add(
                    name,
                    quantity,
                    true,
                    rules.temperatureDifference(),
                    rules,
                    m -> minus(m.value(id), m.value(roles.temperature())));
        } else {
            add(name, quantity, true, rules.humidityDifference(), rules, m -> minus(m.value(id), m.humidity()));
        }
    }

    private void add(
            String name,
            Quantity quantity,
            boolean difference,
            Limits limits,
            Rules rules,
            Function<Moment, OptionalDouble> of) {
        signals.add(new Signal(name, quantity, difference, limits, new Window(rules.window(), rules.interval()), of));
    }

    private static OptionalDouble minus(OptionalDouble a, OptionalDouble b) {
        return a.isPresent() && b.isPresent()
                ? OptionalDouble.of(a.getAsDouble() - b.getAsDouble())
                : OptionalDouble.empty();
    }

    void take(Moment moment) {
        signals.forEach(signal -> signal.take(moment));
    }

    /** Forgets what was seen on the way to another target. */
    void restart() {
        signals.forEach(Signal::restart);
    }

    List<Waiting> waiting(@Nullable Setpoint target) {
        return signals.stream().map(signal -> signal.waiting(target)).toList();
    }

    static boolean settled(List<Waiting> waiting) {
        return waiting.stream().allMatch(Waiting::settled);
    }

    static boolean kept(List<Waiting> waiting) {
        return waiting.stream().allMatch(w -> w.settled(LOSING));
    }

    /** The signal to name when somebody asks what is being waited for. */
    static Optional<Waiting> furthest(List<Waiting> waiting) {
        return waiting.stream()
                .max((a, b) -> Double.compare(
                        a.worst().map(Waiting.Criterion::ratio).orElse(Double.MAX_VALUE),
                        b.worst().map(Waiting.Criterion::ratio).orElse(Double.MAX_VALUE)));
    }

    static String inWords(Waiting waiting) {
        return waiting.worst()
                .map(c -> String.format(
                        Locale.ROOT,
                        "%s: %s %.3g, limit %.3g %s",
                        waiting.signal(),
                        c.kind().name().toLowerCase(Locale.ROOT),
                        c.measured(),
                        c.limit(),
                        waiting.quantity().differenceUnit() + (c.kind() == Waiting.Kind.DRIFT ? "/min" : "")))
                .orElse(waiting.signal() + ": too few good readings");
    }

    /** One judged signal with its window. */
    private static final class Signal {
        private final String name;
        private final Quantity quantity;
        private final boolean difference;
        private final Limits limits;
        private final Window window;
        private final Function<Moment, OptionalDouble> of;
        private OptionalDouble latest = OptionalDouble.empty();
        private int gaps;

        Signal(
                String name,
                Quantity quantity,
                boolean difference,
                Limits limits,
                Window window,
                Function<Moment, OptionalDouble> of) {
            this.name = name;
            this.quantity = quantity;
            this.difference = difference;
            this.limits = limits;
            this.window = window;
            this.of = of;
        }

        void take(Moment moment) {
            latest = of.apply(moment);
            gaps = latest.isPresent() ? 0 : gaps + 1;
            if (gaps > MOST_GAPS) {
                window.clear(); // what was still before a silence says nothing about what comes after it
            }
            latest.ifPresent(value -> window.add(moment.at(), value));
        }

        void restart() {
            window.clear();
        }

        Waiting waiting(@Nullable Setpoint target) {
            Duration unfilled = window.unfilled();
            if (!unfilled.isZero()) {
                return new Waiting(name, quantity, difference, latest, List.of(), Optional.of(unfilled));
            }
            Window.Line line = window.line();
            List<Waiting.Criterion> criteria = new ArrayList<>();
            distance(line, target)
                    .ifPresent(d -> criteria.add(new Waiting.Criterion(Waiting.Kind.BAND, d, limits.band())));
            criteria.add(new Waiting.Criterion(Waiting.Kind.SPREAD, line.spread(), limits.spread()));
            criteria.add(new Waiting.Criterion(Waiting.Kind.DRIFT, Math.abs(line.perMinute()), limits.drift()));
            return new Waiting(name, quantity, difference, latest, criteria, left(line));
        }

        private OptionalDouble distance(Window.Line line, @Nullable Setpoint target) {
            if (difference || target == null || Double.isInfinite(limits.band())) {
                return OptionalDouble.empty();
            }
            double wanted = quantity == Quantity.TEMPERATURE
                    ? target.temperature().celsius()
                    : target.humidity().percent();
            return OptionalDouble.of(Math.abs(line.mean() - wanted));
        }

        /** The drift dies away exponentially: its two halves give the time constant, and that the crossing. */
        private Optional<Duration> left(Window.Line line) {
            double drift = Math.abs(line.perMinute());
            if (drift <= limits.drift()) {
                return Optional.of(Duration.ZERO);
            }
            double[] halves = window.halves();
            double ratio = halves[1] / halves[0];
            if (!(ratio > 0.05 && ratio < 0.98)) {
                return Optional.empty(); // still turning round, or not dying away
            }
            double halfMinutes = window.length.toMillis() / 120_000.0;
            double minutes = halfMinutes / -Math.log(ratio) * Math.log(drift / limits.drift());
            return Optional.of(Duration.ofSeconds(Math.round(minutes * 60)));
        }
    }
}
