// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import isohume.device.Setpoint;
import isohume.moistair.MoistAir;
import isohume.moistair.OutsideRange;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.reach.WayPoint.Aim;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The way from one condition to another on which nothing condenses: dry before cooling, warm before humidifying.
 *
 * <p>A change is taken as safe only if it is so however temperature and humidity follow their targets: one may be there
 * before the other has begun. Vapour is then at most what is there now, or what the target's humidity is at the warmer of
 * both temperatures; and that must not settle on the coldest surface at the colder of them, less its lag.
 */
public final class Way {
    private static final double SPARE = 0.5; // K between the coldest surface and the dew point on the way
    private static final double AIM_PERCENT =
            1.5; // % RH drier than needed, so that a controller's error does not matter
    private static final double AIM_SHARE = 0.1;
    private static final double STAGE = 0.5; // K, by which a stage is sought
    private static final int MOST_STAGES = 12;
    private static final double SAME = 0.05; // K

    private final Attainment attainment;
    private final Surfaces surfaces;
    private final Vapour vapour;

    public Way(Reach reach, MoistAir air) {
        attainment = new Attainment(reach, air);
        surfaces = reach.surfaces();
        vapour = new Vapour(air);
    }

    /**
     * Conditions to ask for in turn before the target; none when it can be asked for at once, or where no formula says.
     *
     * @param from a condition in which the chamber has come to rest
     */
    public List<WayPoint> between(Setpoint from, Setpoint to) {
        List<WayPoint> way = new ArrayList<>();
        Setpoint here = from;
        try {
            for (int stage = 0; stage < MOST_STAGES && !clear(here, to, false); stage++) {
                List<WayPoint> next = stage(here, to);
                if (next.isEmpty()) {
                    break; // no drier way is known; what is left to do is the change itself
                }
                way.addAll(next);
                here = next.getLast().target();
            }
        } catch (OutsideRange notVouchedFor) {
            return way;
        }
        return way;
    }

    /** Whether the next condition may be asked for from where the air is now, while temperatures may still be moving. */
    public boolean passed(Setpoint now, Setpoint next) {
        try {
            return clear(now, next, true);
        } catch (OutsideRange notVouchedFor) {
            return false;
        }
    }

    private List<WayPoint> stage(Setpoint from, Setpoint to) {
        return to.temperature().compareTo(from.temperature()) < 0 ? cool(from, to) : warm(from, to);
    }

    /** Dry here, then cool as dry as that. */
    private List<WayPoint> cool(Setpoint from, Setpoint to) {
        double warm = celsius(from);
        double here = vapour.at(warm, percent(from));
        for (double cold = celsius(to); cold < warm - SAME; cold += STAGE) {
            double floor = Math.max(floor(warm), floor(cold));
            double safe = vapour.percent(vapour.settlingAt(coldEnd(warm, cold) - spare(to)), warm);
            Optional<Double> aim = aim(Math.min(safe, percent(from)), floor, here < vapour.at(warm, safe));
            if (aim.isPresent()) {
                WayPoint dry = new WayPoint(at(warm, aim.get()), Aim.DRYING);
                WayPoint cool = new WayPoint(at(cold, aim.get()), Aim.COOLING);
                return clear(from, cool.target(), false) ? List.of(cool) : List.of(dry, cool);
            }
        }
        return List.of();
    }

    /** Warm with no more vapour than the cold surfaces bear. */
    private List<WayPoint> warm(Setpoint from, Setpoint to) {
        double cold = celsius(from);
        double here = vapour.at(cold, percent(from));
        double safe = Math.max(here, vapour.settlingAt(surfaces.coldest(cold) - spare(to)));
        for (double warm = celsius(to); warm > cold + SAME; warm -= STAGE) {
            double floor = Math.max(floor(cold), floor(warm));
            Optional<Double> aim = aim(vapour.percent(safe, warm), floor, false);
            if (aim.isPresent()) {
                return List.of(new WayPoint(at(warm, aim.get()), Aim.WARMING));
            }
        }
        return List.of();
    }

    /** A little drier than needed, where that can be had; what is dry enough already stays as it is. */
    private static Optional<Double> aim(double safe, double floor, boolean dryEnough) {
        if (safe < floor) {
            return Optional.empty();
        }
        return Optional.of(dryEnough ? safe : Math.max(floor, safe - Math.max(AIM_PERCENT, AIM_SHARE * safe)));
    }

    private boolean clear(Setpoint from, Setpoint to, boolean moving) {
        double t1 = celsius(from);
        double t2 = celsius(to);
        double here = vapour.at(t1, percent(from));
        double most = vapour.at(Math.max(t1, t2), percent(to));
        if (t2 >= t1 - SAME && most <= here) {
            return true; // drying, and no surface gets colder
        }
        if (moving && surfaces.there(t2 - t1)) {
            return here < vapour.settlingAt(surfaces.coldest(t2)); // what is asked for has its own margin
        }
        double surface = t2 < t1 ? coldEnd(t1, t2) : surfaces.coldest(t1, moving ? t2 - t1 : 0);
        return Math.max(here, most) < vapour.settlingAt(surface - spare(to));
    }

    private double coldEnd(double warm, double cold) {
        return surfaces.coldest(cold, warm - cold);
    }

    /** Half of what the target itself has to spare, if that is less than usual. */
    private double spare(Setpoint to) {
        double margin = attainment.demand(to).map(Demand::surface).orElse(0.0);
        return margin > 0 ? Math.min(SPARE, margin / 2) : margin - 0.1;
    }

    private double floor(double celsius) {
        return attainment.bounds(celsius).least().percent();
    }

    private static Setpoint at(double celsius, double percent) {
        return new Setpoint(Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(percent));
    }

    private static double celsius(Setpoint condition) {
        return condition.temperature().celsius();
    }

    private static double percent(Setpoint condition) {
        return condition.humidity().percent();
    }
}
