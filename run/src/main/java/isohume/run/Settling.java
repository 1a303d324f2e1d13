// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Setpoint;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Judges whether a point has settled, by a plan's rule. */
sealed interface Settling permits FixedSettling, TailSettling {
    /** A settled signal may come this far back before it counts as lost. */
    double LOSING = 2;

    static Settling by(RunFact.Started started) {
        Rules rules = started.plan().rules();
        return switch (rules.settling()) {
            case SettlingRule.Fixed fixed -> new FixedSettling(fixed, rules.interval(), started.roles());
            case SettlingRule.Tail tail -> new TailSettling(tail, rules, started.roles(), started.targets());
        };
    }

    void take(Moment moment);

    /** Forgets what was seen before. */
    void restart(int point, Instant at);

    /** The chamber was asked for a target: what was seen on the way to another says nothing about this one. */
    default void asked(int point, Setpoint target, Instant at) {
        restart(point, at);
    }

    /** The judgement of every signal. */
    List<Waiting> waiting(@Nullable Setpoint target);

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
                .map(c -> switch (c.kind()) {
                    case FROZEN -> waiting.signal() + ": the display is frozen, " + waiting.frozen();
                    case BAND, SPREAD, DRIFT, TO_COME ->
                        String.format(
                                Locale.ROOT,
                                "%s: %s %.3g, limit %.3g %s",
                                waiting.signal(),
                                c.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                                c.measured(),
                                c.limit(),
                                waiting.quantity().differenceUnit() + (c.kind() == Waiting.Kind.DRIFT ? "/min" : ""));
                })
                .orElse(waiting.signal() + ": too few good readings");
    }
}
