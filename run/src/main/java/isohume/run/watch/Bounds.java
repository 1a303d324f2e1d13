// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import java.time.Duration;
import java.util.List;
import java.util.Map;

/**
 * From where on something counts as a fault.
 *
 * @param hottest highest temperature that any channel may show, °C; infinite where nobody said
 * @param water lowest water level, %
 * @param humidity how far everything else may lie from the reference humidity on one side, % RH
 * @param temperature the same for temperature, K
 * @param pairs channels that have to agree
 * @param signs what an instrument's own flags mean
 * @param still how long a display may stand still that usually moves
 * @param astray how long the air may stay off its target without coming nearer
 * @param undecided how long the mirror may take to decide on its deposit
 * @param held the longest hold; after it the chamber is brought to rest
 */
public record Bounds(
        double hottest,
        double water,
        double humidity,
        double temperature,
        List<Pair> pairs,
        Map<String, Fault> signs,
        Duration still,
        Duration astray,
        Duration undecided,
        Duration held) {
    public Bounds {
        pairs = List.copyOf(pairs);
        signs = Map.copyOf(signs);
    }

    /** Two channels of one quantity that may differ by so much, in the quantity's difference unit. */
    public record Pair(String one, String other, double within) {}

    /** Common practice, no source. The signs are those of the description that comes with the program. */
    public static Bounds usual() {
        return new Bounds(
                Double.POSITIVE_INFINITY,
                10,
                3,
                0.5,
                List.of(),
                Map.of("the door is open", Fault.DOOR_OPEN, "over-temperature cut-out", Fault.OVER_TEMPERATURE),
                Duration.ofMinutes(5),
                Duration.ofMinutes(20),
                Duration.ofMinutes(25),
                Duration.ofHours(14));
    }

    public Bounds withHottest(double celsius) {
        return new Bounds(celsius, water, humidity, temperature, pairs, signs, still, astray, undecided, held);
    }
}
