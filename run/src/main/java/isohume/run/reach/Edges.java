// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import isohume.moistair.OutsideRange;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Temperature;
import isohume.run.reach.Bounds.Edge;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleSupplier;

/** Every limit of humidity at one temperature, and which of them binds. */
final class Edges {
    private final Reach reach;
    private final Vapour vapour;
    private final double celsius;

    Edges(Reach reach, Vapour vapour, double celsius) {
        this.reach = reach;
        this.vapour = vapour;
        this.celsius = celsius;
    }

    Bounds bounds() {
        Comparator<Edge> byPercent = Comparator.comparingDouble(Edge::percent);
        return new Bounds(
                celsius,
                lower().stream().max(byPercent).orElseThrow(),
                upper().stream().min(byPercent).orElseThrow());
    }

    /** Beyond one of these the bench can still have a humidity, but near an edge. */
    Bounds easy(double finestShare, double closeKelvin) {
        Bounds bounds = bounds();
        double surface =
                Math.min(reach.surfaces().coldest(celsius), reach.surfaces().line(celsius));
        double clear = surface - closeKelvin;
        double dew = clear >= celsius ? 100 : percent(() -> vapour.percent(vapour.settlingAt(clear), celsius), 100);
        double least = Math.max(bounds.least().percent(), split(finestShare, 0));
        double most = Math.min(bounds.most().percent(), Math.min(dew, split(1 - finestShare, 100)));
        return new Bounds(celsius, bounds.least().at(least), bounds.most().at(most));
    }

    /** The humidity that takes a share of the wet stream. */
    private double split(double wetShare, double beyond) {
        return percent(
                () -> {
                    double dry = Vapour.ratio(vapour.of(reach.streams().driest()));
                    double wet = Vapour.ratio(vapour.of(reach.streams().wet(Temperature.ofCelsius(celsius))));
                    return vapour.percent(Vapour.pascals(dry + wetShare * (wet - dry)), celsius);
                },
                beyond);
    }

    private List<Edge> lower() {
        List<Edge> edges = new ArrayList<>();
        edges.add(new Edge(
                reach.lowest().percent(),
                Limit.HUMIDITY,
                String.format(
                        Locale.ROOT,
                        "the chamber ends at %.1f %% RH",
                        reach.lowest().percent())));
        edges.add(edge(reach.streams().driest(), Limit.DRY_STREAM, "the dry air is too wet for it, with a", 0));
        for (Range range : reach.ranges()) {
            edges.addAll(measured(range, range.lowest(), 0));
        }
        return edges;
    }

    private List<Edge> upper() {
        List<Edge> edges = new ArrayList<>();
        edges.add(new Edge(
                reach.highest().percent(),
                Limit.HUMIDITY,
                String.format(
                        Locale.ROOT,
                        "the chamber ends at %.1f %% RH",
                        reach.highest().percent())));
        DewPoint wet = reach.streams().wet(Temperature.ofCelsius(celsius));
        edges.add(edge(wet, Limit.WET_STREAM, "the wet air is too dry for it, with a", 100));
        Surfaces surfaces = reach.surfaces();
        if (surfaces.stated()) {
            edges.add(
                    settling(Limit.SURFACE, "the coldest surface would be wet, at %.1f °C", surfaces.coldest(celsius)));
            edges.add(settling(Limit.LINE, "the sample line would be wet, at %.1f °C", surfaces.line(celsius)));
        }
        for (Range range : reach.ranges()) {
            edges.addAll(measured(range, range.highest(), 100));
        }
        return edges;
    }

    /** @param beyond what the edge is where the formula no longer follows it: nothing binds there */
    private Edge edge(DewPoint point, Limit limit, String why, double beyond) {
        boolean ice = point.deposit() == Phase.ICE;
        String words =
                String.format(Locale.ROOT, "%s %s point of %.1f °C", why, ice ? "frost" : "dew", point.celsius());
        boolean above = !ice && point.celsius() >= celsius;
        return new Edge(above ? 100 : percent(() -> vapour.percent(vapour.of(point), celsius), beyond), limit, words);
    }

    private Edge settling(Limit limit, String why, double surface) {
        double percent =
                surface >= celsius ? 100 : percent(() -> vapour.percent(vapour.settlingAt(surface), celsius), 100);
        return new Edge(percent, limit, String.format(Locale.ROOT, why, surface));
    }

    private List<Edge> measured(Range range, double end, double beyond) {
        String why = String.format(
                Locale.ROOT,
                "%s goes from %s to %s %s",
                range.of(),
                plain(range.lowest()),
                plain(range.highest()),
                range.quantity().unit());
        return switch (range.quantity()) {
            case RELATIVE_HUMIDITY -> List.of(new Edge(end, Limit.MEASURED, why));
            case DEW_POINT -> {
                double percent =
                        end >= celsius ? 100 : percent(() -> vapour.percent(vapour.settlingAt(end), celsius), beyond);
                yield List.of(new Edge(percent, Limit.MEASURED, why + " of dew point"));
            }
            case TEMPERATURE, PRESSURE, DEPOSIT, WATER_LEVEL -> List.of();
        };
    }

    private static String plain(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.1f", value);
    }

    private static double percent(DoubleSupplier reckoned, double beyond) {
        try {
            return reckoned.getAsDouble();
        } catch (OutsideRange tooFar) {
            return beyond;
        }
    }
}
