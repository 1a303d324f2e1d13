// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Setpoint;
import isohume.quantity.Quantity;
import isohume.quantity.Temperature;
import isohume.run.settling.Lagged;
import isohume.run.settling.Lateness;
import isohume.run.settling.Outlook;
import isohume.run.settling.Owed;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** By what is still to come, measured by the uncertainty that the results are to have. */
final class TailSettling implements Settling {
    // Standard deviations of what comes late of a change, as a share of it: common practice, no source. Polymer sensors
    // are said to owe up to 0.4 % of a change of humidity, which evenly spread is 0.23 %; makes differ, so it is more.
    private static final double LATE_OF_HUMIDITY = 0.003;
    private static final double LATE_OF_TEMPERATURE = 0.002; // heat along stems and cables

    // Where nobody said what a result is to have: common practice for a dew point reference, no source
    private static final double USUAL_PERCENT = 0.5;
    private static final double USUAL_KELVIN = 0.1;

    private static final double PER_KELVIN = 0.06; // relative change of humidity per kelvin of air or dew point

    private final SettlingRule.Tail rule;
    private final Duration record;
    private final Targets targets;
    private final Lagged humidity = new Lagged();
    private final Lagged temperature = new Lagged();
    private final List<Tailed> signals = new ArrayList<>();
    private final Map<String, Tailed> thermal = new HashMap<>(); // differences of temperature, by channel
    private @Nullable Temperature warmth; // that was asked for
    private int point;
    private Instant askedAt = Instant.MAX;
    private Instant latest = Instant.EPOCH;

    TailSettling(SettlingRule.Tail rule, Rules rules, Roles roles, Targets targets) {
        this.rule = rule;
        this.record = rules.interval().multipliedBy(rules.mostReadings());
        this.targets = targets;
        for (Watched watched : Watched.all(roles)) {
            Lateness lateness = new Lateness();
            Tailed one = new Tailed(watched, owed(watched, lateness), lateness, rules.interval(), signals.size());
            signals.add(one);
            if (watched.difference() && watched.thermal()) {
                thermal.put(watched.display(), one);
            }
        }
    }

    private Owed owed(Watched watched, Lateness lateness) {
        if (!watched.difference()) {
            return Owed.nothing();
        }
        if (watched.thermal()) {
            return Owed.nothing().and(() -> LATE_OF_TEMPERATURE * lateness.scale(), temperature);
        }
        String temperatureOf = watched.display().replaceFirst("/.*", "/" + Quantity.TEMPERATURE.key());
        return Owed.nothing()
                .and(() -> LATE_OF_HUMIDITY * lateness.scale(), humidity)
                .and(
                        () -> LATE_OF_TEMPERATURE * PER_KELVIN * humidity.value(),
                        temperature,
                        () -> PER_KELVIN * humidity.value() * kelvinToCome(temperatureOf));
    }

    /** What is still to come of a temperature, if it is among those that are read. */
    private double kelvinToCome(String channel) {
        return Optional.ofNullable(thermal.get(channel))
                .flatMap(Tailed::outlook)
                .map(shown -> Outlook.size(shown.toCome()))
                .orElse(Double.POSITIVE_INFINITY);
    }

    @Override
    public void take(Moment moment) {
        latest = moment.at();
        OptionalDouble celsius = signals.getFirst().watched().source().in(moment);
        celsius.ifPresent(t -> temperature.take(latest.toEpochMilli() / 1000.0, t));
        moment.humidity().ifPresent(u -> humidity.take(latest.toEpochMilli() / 1000.0, u));
        signals.forEach(s -> s.take(moment, s.watched().thermal() ? temperature : humidity));
    }

    @Override
    public void restart(int asked, Instant at) {
        point = asked;
        askedAt = at;
        signals.forEach(Tailed::restart);
    }

    /** A change of humidity does not end what a temperature is on its way to; its tail is the better known. */
    @Override
    public void asked(int number, Setpoint target, Instant at) {
        boolean warms = !target.temperature().equals(warmth);
        warmth = target.temperature();
        askedAt = at;
        signals.stream()
                .filter(signal -> warms || !signal.watched().thermal())
                .forEach(signal -> signal.begin(LOSING * rule.share() * target(signal.watched())));
        point = number;
    }

    @Override
    public List<Waiting> waiting(@Nullable Setpoint target) {
        return signals.stream().map(signal -> waiting(signal, target)).toList();
    }

    private Waiting waiting(Tailed signal, @Nullable Setpoint target) {
        Watched watched = signal.watched();
        if (watched.difference()) {
            return signal.difference(rule.share() * target(watched));
        }
        double percent = rule.share() * least(false);
        double slope = PER_KELVIN * Math.max(1, humidity.value());
        return switch (watched.quantity()) {
            case TEMPERATURE ->
                signal.reference(
                        wanted(target, t -> t.temperature().celsius()),
                        rule.temperatureBand(),
                        Math.min(rule.share() * least(true), percent / slope),
                        record);
            case DEW_POINT -> signal.reference(OptionalDouble.empty(), 1, percent / slope, record);
            case RELATIVE_HUMIDITY, PRESSURE, DEPOSIT, WATER_LEVEL ->
                signal.reference(wanted(target, t -> t.humidity().percent()), rule.humidityBand(), percent, record);
        };
    }

    private static OptionalDouble wanted(
            @Nullable Setpoint target, java.util.function.ToDoubleFunction<Setpoint> part) {
        return target == null ? OptionalDouble.empty() : OptionalDouble.of(part.applyAsDouble(target));
    }

    /** The expanded uncertainty that a channel is to have at this point. */
    double target(Watched watched) {
        OptionalDouble stated = watched.thermal() ? rule.temperatureTarget() : rule.humidityTarget();
        if (stated.isPresent()) {
            return stated.getAsDouble();
        }
        return targets.of(watched.display(), point).orElse(watched.thermal() ? USUAL_KELVIN : USUAL_PERCENT);
    }

    /** The smallest of all channels of temperature, or of humidity. */
    private double least(boolean thermal) {
        return signals.stream()
                .map(Tailed::watched)
                .filter(w -> w.difference() && w.thermal() == thermal)
                .mapToDouble(this::target)
                .min()
                .orElse(thermal ? USUAL_KELVIN : USUAL_PERCENT);
    }

    /** What is known of every instrument's channel after a record of some length. */
    List<RunFact.ToCome> toCome(Duration length) {
        List<RunFact.ToCome> all = new ArrayList<>();
        for (Tailed signal : signals) {
            if (signal.watched().difference()) {
                signal.judge(length)
                        .map(o -> o.toComeFromMeanOver(length))
                        .ifPresent(e -> all.add(new RunFact.ToCome(
                                signal.watched().display(), rounded(e.value()), rounded(e.standardUncertainty()))));
            }
        }
        return all;
    }

    /** To a millionth; files keep it digit for digit. */
    private static double rounded(double value) {
        return StrictMath.rint(value * 1e6) / 1e6;
    }

    List<Tailed> signals() {
        return signals;
    }

    /** How long the point must still be waited for, whatever the signals say. */
    Duration least() {
        Duration passed = Duration.between(askedAt, latest);
        return passed.compareTo(rule.least()) >= 0
                ? Duration.ZERO
                : rule.least().minus(passed);
    }
}
