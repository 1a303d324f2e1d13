// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import isohume.run.reach.Flows;

/**
 * How fast a bench is by its description, before anything is known of it.
 *
 * @param humidity time constant of the humidity, min: change-over of the air and the instruments' own lag
 * @param wall time constant of the slow tail that walls and seals leave, min
 * @param kelvinPerMinute how fast the air warms or cools at most
 * @param temperature time constant of the end of a change of temperature, min
 */
public record Pace(double humidity, double wall, double kelvinPerMinute, double temperature) {
    private static final double INSTRUMENT = 1; // min, lag of a probe under its filter; common practice, no source
    private static final double WALL = 5; // common practice, no source
    private static final double KELVIN_PER_MINUTE = 1.5; // common practice, no source
    private static final double TEMPERATURE = 4; // common practice, no source

    public Pace {
        if (!(humidity > 0) || !(wall >= 0) || !(kelvinPerMinute > 0) || !(temperature > 0)) {
            throw new IllegalArgumentException("a bench's times are above 0, were " + humidity + ", " + wall + " and "
                    + temperature + " min, " + kelvinPerMinute + " K/min");
        }
    }

    /** What follows from how a chamber is swept. */
    public static Pace of(Flows flows) {
        return new Pace(flows.timeConstant() + INSTRUMENT, WALL, KELVIN_PER_MINUTE, TEMPERATURE);
    }
}
