// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import java.util.Optional;
import java.util.random.RandomGenerator;

/** A difference whose future is known: one or two exponentials, noise that resembles its neighbours, a last digit. */
final class KnownTail {
    private static final double POLL = 10;

    final double step;
    final double fastSeconds;
    final double fast;
    final double slowSeconds;
    final double slow;
    private final double scatter;
    private final double correlation;
    private final double digit;
    private final double level;
    private final RandomGenerator random;
    private final Tail tail = new Tail(POLL);
    private final Lagged driver = new Lagged();
    private double noise;
    private double now;

    /** Drawn as chambers and polymer sensors are: common practice, no source. */
    KnownTail(RandomGenerator random) {
        this.random = random;
        step = (random.nextBoolean() ? 1 : -1) * between(10, 65);
        fastSeconds = between(15, 90);
        fast = -step;
        slowSeconds = between(900, 3600);
        slow = -step * between(0, 0.008);
        scatter = between(0.01, 0.06);
        correlation = between(0, 30);
        digit = random.nextInt(3) == 0 ? 0.1 : 0.01;
        level = between(-1, 1);
        noise = scatter * random.nextGaussian();
        driver.take(-1, 50 - step);
        driver.take(0, 50 - step);
    }

    private double between(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    double trueToCome() {
        return -(fast * Math.exp(-now / fastSeconds) + slow * Math.exp(-now / slowSeconds));
    }

    void passTo(double seconds) {
        while (now + POLL <= seconds) {
            now += POLL;
            double kept = correlation == 0 ? 0 : Math.exp(-POLL / correlation);
            noise = kept * noise + scatter * Math.sqrt(1 - kept * kept) * random.nextGaussian();
            double shown = Math.rint((50 + level - trueToCome() + noise) / digit) * digit;
            driver.take(now, 50);
            tail.take(now, shown - 50, shown);
        }
    }

    Optional<Outlook> outlook() {
        return tail.outlook(Owed.nothing().and(() -> 0.005, driver), digit, 0);
    }

    /** Watches until what is to come is within a limit. */
    void passUntilSettled(double limit) {
        do {
            passTo(now + POLL);
        } while (outlook().filter(o -> Outlook.size(o.toCome()) <= limit).isEmpty());
    }

    @Override
    public String toString() {
        return String.format(
                java.util.Locale.ROOT,
                "step %.0f, fast %.0f s, slow %.2f over %.0f s, noise %.3f over %.0f s, digit %.2f",
                step,
                fastSeconds,
                slow,
                slowSeconds,
                scatter,
                correlation,
                digit);
    }
}
