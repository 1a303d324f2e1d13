// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Setpoint;
import isohume.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Judges, over a window, the references and the difference of each instrument from them: both may move together and the
 * error still be settled, or the reference be flat and the instrument still creep.
 */
final class Settling {
    private static final double LOSING = 2; // a settled signal may come this far back before it counts as lost

    private final List<Signal> signals = new ArrayList<>();

    Settling(Rules rules, Roles roles) {
        String temperature = roles.temperature();
        String dewPoint = roles.dewPoint();
        add(
                rules,
                rules.temperature(),
                "air temperature",
                Quantity.TEMPERATURE,
                temperature,
                m -> m.value(temperature));
        add(rules, rules.dewPoint(), "dew point", Quantity.DEW_POINT, dewPoint, m -> m.value(dewPoint));
        add(rules, rules.humidity(), "relative humidity", Quantity.RELATIVE_HUMIDITY, "", Moment::humidity);
        for (String id : roles.instruments()) {
            addDifference(id, temperature, rules);
        }
    }

    private void addDifference(String id, String temperature, Rules rules) {
        String instrument = id.substring(0, id.indexOf('/'));
        Quantity quantity = Quantity.ofKey(id.substring(id.indexOf('/') + 1));
        String name = instrument + " " + quantity.key().replace('_', ' ') + " − reference";
        boolean thermal = quantity == Quantity.TEMPERATURE;
        Limits limits = thermal ? rules.temperatureDifference() : rules.humidityDifference();
        Signal.Source source =
                thermal ? m -> minus(m.value(id), m.value(temperature)) : m -> minus(m.value(id), m.humidity());
        signals.add(new Signal(name, quantity, true, limits, new Window(rules.window(), rules.interval()), id, source));
    }

    private void add(Rules rules, Limits limits, String name, Quantity quantity, String display, Signal.Source source) {
        Window window = new Window(rules.window(), rules.interval());
        signals.add(new Signal(name, quantity, false, limits, window, display, source));
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
}
