// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import isohume.device.Setpoint;
import isohume.moistair.MoistAir;
import isohume.moistair.OutsideRange;
import isohume.quantity.Pressure;
import isohume.quantity.Temperature;
import isohume.run.reach.Flows.Feed;

/**
 * Water and drying agent that a condition takes, in grams an hour.
 *
 * <p>Amounts follow the dry gas: with r moles of vapour for each mole of it, a stream of Q litres a minute that goes from
 * r in to r out takes up 60 Q n M (r out − r in) grams an hour, where n is the amount of dry gas in a litre at 23 °C and
 * 1013.25 hPa and M the molar mass of water.
 */
public final class Consumption {
    private static final double MOLES_PER_LITRE = Pressure.STANDARD.pascals()
            / (8.314462618 * Temperature.ofCelsius(23).kelvin())
            / 1000; // ideal gas
    private static final double WATER_GRAMS = 18.015; // per mole

    private final Reach reach;
    private final Feed feed;
    private final double roomRatio;
    private final Vapour vapour;

    /** @param room air of the room, which is dried or breathed */
    public Consumption(Reach reach, Feed feed, Setpoint room, MoistAir air) {
        this.reach = reach;
        this.feed = feed;
        this.vapour = new Vapour(air);
        this.roomRatio = ratio(room);
    }

    /**
     * In an hour at a condition; nothing where no formula vouches for it.
     *
     * @param flow of both streams together, L/min of dry gas
     */
    public Use anHourAt(Setpoint condition, double flow) {
        try {
            double dry = Vapour.ratio(vapour.of(reach.streams().driest()));
            double wet = Vapour.ratio(vapour.of(reach.streams().wet(condition.temperature())));
            double mixed = ratio(condition);
            double share = Math.clamp((mixed - dry) / (wet - dry), 0, 1);
            double intoWet = switch (feed) {
                case DRIED -> dry;
                case ROOM -> roomRatio;
                case RECIRCULATED -> mixed;
            };
            double intoAgent = feed == Feed.RECIRCULATED ? mixed : roomRatio;
            double dried = feed == Feed.DRIED ? 1 : 1 - share;
            return new Use(
                    Math.max(0, grams(flow * share, wet - intoWet)), Math.max(0, grams(flow * dried, intoAgent - dry)));
        } catch (OutsideRange notVouchedFor) {
            return Use.NONE;
        }
    }

    /** Grams an hour for a stream and what it takes up. */
    static double grams(double flow, double ratio) {
        return 60 * flow * MOLES_PER_LITRE * WATER_GRAMS * ratio;
    }

    private double ratio(Setpoint condition) {
        return Vapour.ratio(vapour.at(
                condition.temperature().celsius(), condition.humidity().percent()));
    }
}
