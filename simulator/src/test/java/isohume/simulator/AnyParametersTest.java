// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.quantity.Quantity;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Whatever parameters are allowed, the model stays within what air can be, and loses no water. */
class AnyParametersTest {
    private static final long SEED = 20_260_302;

    @TestFactory
    Stream<DynamicTest> the_model_stays_sound() {
        return IntStream.range(0, 120)
                .mapToObj(i -> dynamicTest("seed " + (SEED + i), () -> run(new Random(SEED + i), SEED + i)));
    }

    private static double between(Random random, double lowest, double highest) {
        double share = random.nextDouble();
        return random.nextInt(4) == 0
                ? (share < 0.5 ? lowest : highest) // the ends are where it breaks
                : lowest + share * (highest - lowest);
    }

    private static BenchParameters any(Random r) {
        double hold = between(r, 0.01, 100);
        double lowest = between(r, 1, 60);
        BenchParameters portable = BenchParameters.portable();
        return portable.with(new Enclosure(
                        between(r, 0.5, 200),
                        between(r, 20, 1e5),
                        between(r, 200, 1e6),
                        between(r, 0.5, 100),
                        between(r, 0, 20),
                        between(r, 0, 20),
                        between(r, 0, 1),
                        between(r, 0, 10),
                        between(r, 0, 500),
                        between(r, 0, 500)))
                .with(new Sorption(
                        between(r, 0, 2),
                        between(r, 20, 1e6),
                        between(r, 0, 2),
                        between(r, 20, 1e6),
                        between(r, 0, 100)))
                .with(new Streams(
                        hold,
                        between(r, hold, 100),
                        between(r, 0, 10),
                        lowest,
                        between(r, lowest, 60),
                        between(r, 1, 1e5),
                        between(r, 0.5, 1),
                        between(r, 1, 1000),
                        between(r, 1, 1000),
                        between(r, 0.01, 1),
                        between(r, 0, 1000),
                        between(r, -80, -5)))
                .with(new Surroundings(
                        between(r, 5, 40),
                        between(r, 0, 3),
                        between(r, 5, 95),
                        between(r, 60_000, 110_000),
                        between(r, 0, 1000),
                        between(r, 0, 2000),
                        between(r, 0, 2000)));
    }

    private static void run(Random random, long seed) {
        BenchParameters parameters = any(random);
        World world = new World(parameters, seed);
        double held = world.vapour().heldGrams();
        double load = world.vapour().agent().loadGrams();
        for (int i = 0; i < 1500; i++) {
            if (i % 250 == 0) {
                world.controller().want(between(random, 5, 50), between(random, 3, 97));
                world.controller().run(random.nextInt(5) > 0);
                world.door(random.nextInt(5) == 0);
            }
            world.step();
            double percent = world.air().relativeHumidity();
            assertTrue(percent > 0 && percent <= 100 + 1e-6, () -> percent + " % RH with " + parameters);
        }
        double evaporated = world.vapour().saturator().usedGrams();
        double dried = world.vapour().agent().loadGrams() - load;
        double room = world.vapour().fromRoomGrams();
        double moved = 1 + evaporated + dried + load + Math.abs(room);
        assertEquals(0, evaporated - dried + room - (world.vapour().heldGrams() - held), 1e-9 * moved);
        assertTrue(Double.isFinite(
                world.shown("mirror", Quantity.DEW_POINT).shown().getAsDouble()));
    }
}
