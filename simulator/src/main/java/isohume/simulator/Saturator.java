// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** Wets one stream from the tank, at a temperature that follows the chamber within its limits. */
final class Saturator {
    private static final double LOW_SHARE = 0.15;

    private final Streams streams;
    private final Lag temperature;
    private double usedGrams;

    Saturator(Streams streams, double celsius) {
        this.streams = streams;
        temperature = new Lag(within(celsius));
    }

    void step(double chamber) {
        temperature.follow(within(chamber), streams.saturatorSeconds());
    }

    private double within(double celsius) {
        return Math.clamp(celsius, streams.saturatorLowest(), streams.saturatorHighest());
    }

    /** Vapour per dry gas behind it; what came in, once the tank is empty. */
    double ratio(double incoming, double total) {
        if (usedGrams >= streams.tankGrams()) {
            return incoming;
        }
        double vapour = streams.saturatorEfficiency() * Air.saturation(temperature.value(), total);
        return Air.ratio(vapour, total);
    }

    double celsius() {
        return temperature.value();
    }

    void give(double moles) {
        usedGrams += moles * Air.WATER_GRAMS;
    }

    double usedGrams() {
        return usedGrams;
    }

    void fill() {
        usedGrams = 0;
    }

    void drainTo(double percent) {
        usedGrams = Math.max(usedGrams, streams.tankGrams() * (1 - percent / 100));
    }

    /** What is left in the tank, %. */
    double levelPercent() {
        return Math.max(0, 100 * (1 - usedGrams / streams.tankGrams()));
    }

    boolean low() {
        return levelPercent() < 100 * LOW_SHARE;
    }
}
