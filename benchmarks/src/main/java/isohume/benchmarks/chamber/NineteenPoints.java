// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.chamber;

import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Point;
import isohume.quantity.Pressure;
import isohume.quantity.Temperature;
import isohume.simulator.Attainable;
import isohume.simulator.BenchParameters;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Three temperatures with five humidities each, rising, and four more falling at the middle one: 10, 23 and 40 °C, 10 to
 * 90 % RH, or as near to that as a bench gets, in even steps. No dew point is close to 0 °C, where no mirror knows for long
 * whether it carries water or ice.
 */
final class NineteenPoints {
    private static final int COLD = 10;
    private static final int MIDDLE = 23;
    private static final int WARM = 40;
    private static final int DRIEST = 10;
    private static final int WETTEST = 90;
    private static final int HUMIDITIES = 5;
    private static final int LEAST_SPAN = 20; // % RH
    private static final int LEAST_KELVIN = 3; // between two temperatures
    private static final double HESITATION = 1.5; // K around 0 °C
    private static final MoistAir AIR = MoistAir.by(Formulation.DEFAULT);

    private NineteenPoints() {}

    /**
     * The legs, as a plan has them.
     *
     * @throws IllegalArgumentException when the bench reaches too little for such a plan
     */
    static String on(BenchParameters bench) {
        Attainable reach = Attainable.by(bench);
        int cold = (int) Math.max(COLD, Math.ceil(reach.coldest()));
        int warm = (int) Math.min(WARM, Math.floor(reach.warmest()));
        int middle = Math.clamp(MIDDLE, cold + LEAST_KELVIN, Math.max(warm - LEAST_KELVIN, cold + LEAST_KELVIN));
        if (warm - middle < LEAST_KELVIN) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "the bench holds %.1f to %.1f °C; three temperatures at least %d K apart, from %d to %d °C, need more",
                    reach.coldest(),
                    reach.warmest(),
                    LEAST_KELVIN,
                    COLD,
                    WARM));
        }
        return leg(cold, rising(reach, cold)) + leg(middle, upAndDown(reach, middle)) + leg(warm, rising(reach, warm));
    }

    private static String leg(int celsius, List<Integer> percents) {
        return percents.stream()
                .map(String::valueOf)
                .collect(Collectors.joining(", ", "  - {temperature: " + celsius + ", humidity: [", "]}\n"));
    }

    /** Points in any order, as a plan has them: those that follow each other at one temperature are a leg. */
    static String legs(List<Point> order) {
        StringBuilder legs = new StringBuilder();
        for (int from = 0, to; from < order.size(); from = to) {
            to = from + 1;
            while (to < order.size()
                    && order.get(to).temperature().equals(order.get(from).temperature())) {
                to++;
            }
            legs.append(leg(
                    (int) Math.round(order.get(from).temperature().celsius()),
                    order.subList(from, to).stream()
                            .map(point -> (int) Math.round(point.humidity().percent()))
                            .toList()));
        }
        return legs.toString();
    }

    private static List<Integer> upAndDown(Attainable reach, int celsius) {
        List<Integer> up = rising(reach, celsius);
        return IntStream.range(0, 2 * HUMIDITIES - 1)
                .mapToObj(i -> up.get(Math.min(i, 2 * HUMIDITIES - 2 - i)))
                .toList();
    }

    private static List<Integer> rising(Attainable reach, int celsius) {
        int lowest = away((int) Math.max(DRIEST, Math.ceil(reach.driest(celsius))), celsius, true);
        int highest = away((int) Math.min(WETTEST, Math.floor(reach.wettest(celsius))), celsius, false);
        if (highest - lowest < LEAST_SPAN) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "at %3$d °C the driest that the bench holds is %1$.1f %% RH and the wettest %2$.1f %% RH; five humidities"
                            + " from %4$d to %5$d %% RH need a span of %6$d",
                    reach.driest(celsius),
                    reach.wettest(celsius),
                    celsius,
                    DRIEST,
                    WETTEST,
                    LEAST_SPAN));
        }
        return IntStream.range(0, HUMIDITIES)
                .mapToObj(i -> {
                    int even = lowest + Math.round((float) i * (highest - lowest) / (HUMIDITIES - 1));
                    return away(even, celsius, 2 * even >= lowest + highest);
                })
                .toList();
    }

    /** The humidity itself, or the next one whose dew point is away from 0 °C. */
    private static int away(int percent, int celsius, boolean upwards) {
        double from = percentAt(DewPoint.overIce(Temperature.ofCelsius(-HESITATION)), celsius);
        double to = percentAt(DewPoint.overWater(Temperature.ofCelsius(HESITATION)), celsius);
        if (percent <= from || percent >= to) {
            return percent;
        }
        return (int) (upwards ? Math.ceil(to) : Math.floor(from));
    }

    private static double percentAt(DewPoint point, int celsius) {
        return AIR.relativeHumidity(point, Pressure.STANDARD, Temperature.ofCelsius(celsius), Pressure.STANDARD)
                .percent();
    }
}
