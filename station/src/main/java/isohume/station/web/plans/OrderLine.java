// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.plans;

import isohume.quantity.Direction;
import isohume.quantity.Point;
import isohume.run.order.Expected;
import isohume.station.plan.PlanText;
import isohume.station.plan.Prospect;
import isohume.station.plan.Prospect.Ahead;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The points as handles, the order as a line through them, and the predicted time on it. */
final class OrderLine {
    private static final double ASIDE = 11; // px: up and down of one condition stand side by side
    private static final double HANDLE = 11; // px
    private static final double FINGER = 28; // px, so that a finger finds it

    private final MapScale scale;
    private final Prospect prospect;

    OrderLine(MapScale scale, Prospect prospect) {
        this.scale = scale;
        this.prospect = prospect;
    }

    String drawn() {
        StringBuilder svg = new StringBuilder();
        StringBuilder path = new StringBuilder();
        List<Ahead> points = prospect.points();
        Optional<Point> before = Optional.empty();
        for (Ahead ahead : points) {
            Point here = ahead.point();
            before.ifPresent(b ->
                    path.append('L').append(at((x(b) + x(here)) / 2, (y(b) + y(here)) / 2))); // for an arrow
            path.append(path.isEmpty() ? 'M' : 'L').append(at(x(here), y(here)));
            before = Optional.of(here);
        }
        svg.append("<path class=\"order\" marker-mid=\"url(#onward)\" d=\"")
                .append(path)
                .append("\"/>");
        for (Ahead ahead : points.reversed()) {
            svg.append(handle(ahead));
        }
        return svg + time(points.getLast().point());
    }

    private String handle(Ahead ahead) {
        Point point = ahead.point();
        boolean up = point.direction() == Direction.ASCENDING;
        String celsius = PlanText.plain(point.temperature().celsius());
        String percent = PlanText.plain(point.humidity().percent());
        return String.format(
                Locale.ROOT,
                "<g class=\"handle is-%s\" id=\"h-%d\" data-point=\"%d\" data-aside=\"%.0f\" transform=\"translate(%s)\" data-name=\"Point %d,"
                        + " %s °C, %s %% RH, %s, %s\"><circle class=\"finger\" r=\"%.0f\"/><circle class=\"dot\" r=\"%.0f\"/>"
                        + "<text dy=\".34em\">%d</text><path class=\"way\" d=\"%s\"/></g>",
                ahead.assessment().outcome().getClass().getSimpleName(),
                point.number(),
                point.number(),
                up ? -ASIDE : ASIDE,
                at(x(point), y(point)),
                point.number(),
                celsius,
                percent,
                point.direction().key(),
                ahead.assessment().reachable() ? "reachable" : "not reachable",
                FINGER,
                HANDLE,
                point.number(),
                up ? "M-4 -13L0 -18L4 -13z" : "M-4 13L0 18L4 13z");
    }

    private String time(Point last) {
        Expected whole = prospect.whole();
        boolean toTheLeft = x(last) > (MapScale.LEFT + MapScale.RIGHT) / 2.0;
        double y = y(last);
        return String.format(
                Locale.ROOT,
                "<text class=\"time\" text-anchor=\"%s\" x=\"%.1f\" y=\"%.1f\">%.1f h (%.1f to %.1f)</text>",
                toTheLeft ? "end" : "start",
                toTheLeft ? x(last) + HANDLE : x(last) - HANDLE,
                y > MapScale.BOTTOM - 46 ? y - 26 : y + 38,
                whole.minutes() / 60,
                whole.low() / 60,
                whole.high() / 60);
    }

    private double x(Point point) {
        double x = scale.x(point.temperature().celsius());
        return point.direction() == Direction.ASCENDING ? x - ASIDE : x + ASIDE;
    }

    private double y(Point point) {
        return scale.y(point.temperature().celsius(), point.humidity().percent());
    }

    private static String at(double x, double y) {
        return String.format(Locale.ROOT, "%.1f %.1f", x, y);
    }
}
