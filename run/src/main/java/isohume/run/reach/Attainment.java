// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import isohume.device.Setpoint;
import isohume.moistair.MoistAir;
import isohume.moistair.OutsideRange;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.reach.Bounds.Edge;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Says of a condition whether a bench can have it, what it takes, and what the nearest is that it can. */
public final class Attainment {
    // common practice, no source
    private static final double FINEST_SHARE = 0.03; // of a stream, that a mixer still divides well
    private static final double CLOSE_KELVIN = 1; // between a surface and the dew point
    private static final double STEP_KELVIN = 0.5; // of the search for a temperature at which anything can be had
    private static final double ROUNDING = 1e-9; // % RH; an edge that was computed belongs to what can be had

    private final Reach reach;
    private final Vapour vapour;

    /** For a bench whose humidities are reckoned by a formulation. */
    public Attainment(Reach reach, MoistAir air) {
        this.reach = reach;
        this.vapour = new Vapour(air);
    }

    public Reach reach() {
        return reach;
    }

    /** The humidities that can be had at a temperature, °C, whether the chamber goes there or not. */
    public Bounds bounds(double celsius) {
        return new Edges(reach, vapour, celsius).bounds();
    }

    /** Those of them that are not near an edge, so that {@link #assess} finds nothing to say; may be none. */
    public Bounds easy(double celsius) {
        return new Edges(reach, vapour, celsius).easy(FINEST_SHARE, CLOSE_KELVIN);
    }

    /** The dew point, or below 0 °C the frost point, of a condition in °C; empty where no formula vouches for it. */
    public Optional<Demand> demand(Setpoint condition) {
        double celsius = condition.temperature().celsius();
        try {
            double pascals = vapour.at(celsius, condition.humidity().percent());
            if (!(pascals > 0)) {
                return Optional.empty();
            }
            var point = vapour.point(pascals);
            Surfaces surfaces = reach.surfaces();
            return Optional.of(new Demand(
                    point,
                    wetShare(pascals, condition.temperature()),
                    celsius - point.celsius(),
                    surfaces.coldest(celsius) - point.celsius(),
                    surfaces.line(celsius) - point.celsius()));
        } catch (OutsideRange notVouchedFor) {
            return Optional.empty();
        }
    }

    /** w = (r − r dry) / (r wet − r dry), with r the amount of vapour for each amount of dry gas. */
    private double wetShare(double pascals, Temperature chamber) {
        double dry = Vapour.ratio(vapour.of(reach.streams().driest()));
        double wet = Vapour.ratio(vapour.of(reach.streams().wet(chamber)));
        return (Vapour.ratio(pascals) - dry) / (wet - dry);
    }

    /** Whether the bench can have a condition, and what it takes. */
    public Assessment assess(Setpoint condition) {
        Optional<Demand> demand = demand(condition);
        return new Assessment(condition, demand, outcome(condition, demand));
    }

    private Outcome outcome(Setpoint condition, Optional<Demand> demand) {
        double celsius = condition.temperature().celsius();
        Optional<Edge> temperature = beyond(celsius);
        if (temperature.isPresent()) {
            return no(temperature.get(), condition);
        }
        if (demand.isEmpty()) {
            String why = String.format(
                    Locale.ROOT,
                    "no formula vouches for %.1f %% RH",
                    condition.humidity().percent());
            return no(new Edge(0, Limit.FORMULA, why), condition);
        }
        Bounds bounds = bounds(celsius);
        double percent = condition.humidity().percent();
        if (percent < bounds.least().percent() - ROUNDING) {
            return no(bounds.least(), condition);
        }
        if (percent > bounds.most().percent() + ROUNDING) {
            return no(bounds.most(), condition);
        }
        List<String> near = near(demand.get());
        return near.isEmpty() ? new Outcome.Reachable() : new Outcome.Marginal(near);
    }

    /** What keeps the bench from a temperature, °C, at any humidity; empty when nothing does. The edge's figure says nothing. */
    public Optional<Edge> beyond(double celsius) {
        double coldest = reach.coldest().celsius();
        double warmest = reach.warmest().celsius();
        if (celsius < coldest - ROUNDING || celsius > warmest + ROUNDING) {
            String why = String.format(
                    Locale.ROOT,
                    "%.1f °C is beyond the chamber, which goes from %.1f to %.1f °C",
                    celsius,
                    coldest,
                    warmest);
            return Optional.of(new Edge(0, Limit.TEMPERATURE, why));
        }
        for (Range range : reach.ranges()) {
            boolean beyond = celsius < range.lowest() - ROUNDING || celsius > range.highest() + ROUNDING;
            if (range.quantity() == Quantity.TEMPERATURE && beyond) {
                String why = String.format(
                        Locale.ROOT, "%s goes from %.1f to %.1f °C", range.of(), range.lowest(), range.highest());
                return Optional.of(new Edge(0, Limit.MEASURED, why));
            }
        }
        return Optional.empty();
    }

    private static List<String> near(Demand demand) {
        List<String> why = new ArrayList<>();
        if (demand.wetShare() < FINEST_SHARE) {
            why.add(String.format(
                    Locale.ROOT, "the wet stream is only %.1f %% of both: too fine a split", 100 * demand.wetShare()));
        } else if (demand.wetShare() > 1 - FINEST_SHARE) {
            why.add(String.format(
                    Locale.ROOT,
                    "the dry stream is only %.1f %% of both: too fine a split",
                    100 * (1 - demand.wetShare())));
        }
        if (demand.surface() < CLOSE_KELVIN) {
            why.add(closeTo("the coldest surface", demand.surface()));
        }
        if (demand.line() < CLOSE_KELVIN) {
            why.add(closeTo("the sample line", demand.line()));
        }
        return why;
    }

    private static String closeTo(String surface, double kelvin) {
        return kelvin > 0
                ? String.format(Locale.ROOT, "%s is only %.1f K above the dew point", surface, kelvin)
                : String.format(Locale.ROOT, "%s may be %.1f K under the dew point", surface, -kelvin);
    }

    private Outcome.NotReachable no(Edge edge, Setpoint wanted) {
        return new Outcome.NotReachable(edge.limit(), edge.why(), nearest(wanted));
    }

    /** At the wanted temperature if there is anything, else at the nearest temperature at which there is. */
    private Optional<Setpoint> nearest(Setpoint wanted) {
        double lowest = temperatureEnd(reach.coldest().celsius(), true);
        double highest = temperatureEnd(reach.warmest().celsius(), false);
        if (lowest > highest) {
            return Optional.empty();
        }
        double from = Math.clamp(wanted.temperature().celsius(), lowest, highest);
        for (double away = 0; away <= highest - lowest + STEP_KELVIN; away += STEP_KELVIN) {
            for (double celsius : new double[] {from - away, from + away}) {
                if (celsius >= lowest && celsius <= highest) {
                    Bounds bounds = bounds(celsius);
                    if (!bounds.empty()) {
                        double percent = Math.clamp(
                                wanted.humidity().percent(),
                                bounds.least().percent(),
                                bounds.most().percent());
                        return Optional.of(
                                new Setpoint(Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(percent)));
                    }
                }
            }
        }
        return Optional.empty();
    }

    private double temperatureEnd(double chamber, boolean lower) {
        double end = chamber;
        for (Range range : reach.ranges()) {
            if (range.quantity() == Quantity.TEMPERATURE) {
                end = lower ? Math.max(end, range.lowest()) : Math.min(end, range.highest());
            }
        }
        return end;
    }
}
