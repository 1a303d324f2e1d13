// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** Benches for tests: without noise and without anything drawn, so that what is left is the model. */
final class Quiet {
    private Quiet() {}

    static BenchParameters portable() {
        return BenchParameters.portable().withNoise(0).withDrawn(0);
    }

    /**
     * Wet stream of dew point 22.5 °C, dry stream of frost point -30 °C, room and chamber at 23 °C, 1013.25 hPa, no leak
     * and nothing on the walls: the case that is worked by hand.
     */
    static BenchParameters workedByHand() {
        BenchParameters portable = portable();
        return portable.with(portable.streams()
                        .withSaturator(22.5, 22.5, 1)
                        .withDryingAgent(1e5, 0, -30)
                        .withLeak(0))
                .with(Sorption.none())
                .with(portable.surroundings().withTemperature(23, 0).withPressure(101_325, 0));
    }

    static World running(BenchParameters parameters, double celsius, double percent) {
        World world = new World(parameters, 1);
        world.controller().want(celsius, percent);
        world.controller().run(true);
        return world;
    }

    static void pass(World world, int seconds) {
        for (int i = 0; i < seconds; i++) {
            world.step();
        }
    }
}
