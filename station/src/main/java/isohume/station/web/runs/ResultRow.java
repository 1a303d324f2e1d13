// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.runs;

import io.quarkus.qute.RawString;
import isohume.quantity.Direction;
import isohume.quantity.Point;
import isohume.result.PointResult;
import isohume.station.web.Figure;
import isohume.uncertainty.Rounded;
import isohume.uncertainty.conformity.Decision;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/**
 * One result, rounded for a person: U to two digits, everything else to the same place.
 *
 * @param tolerance half-width, or its two limits; empty when nothing is to be decided
 * @param budget where this result's budget is
 * @param readings where the readings behind it are
 */
public record ResultRow(
        int point,
        String direction,
        String at,
        Figure reference,
        Figure reading,
        Figure error,
        Figure expanded,
        Figure coverageFactor,
        String tolerance,
        String verdict,
        RawString mark,
        String budget,
        String readings) {

    static ResultRow of(String run, PointResult p) {
        Rounded rounded = Rounded.of(p.error(), p.expanded());
        int place = rounded.uncertainty().scale();
        String base = "/runs/" + run;
        return new ResultRow(
                p.point().number(),
                direction(p.point()),
                at(p.point()),
                Figure.of(p.reference(), place),
                Figure.of(p.reading(), place),
                signed(rounded.value()),
                Figure.of(rounded.uncertainty()),
                Figure.of(p.coverageFactor(), 2),
                p.decision().map(d -> tolerance(d, place)).orElse(""),
                p.decision().map(d -> d.verdict().words()).orElse(""),
                p.decision().map(d -> Mark.of(d.verdict())).orElse(new RawString("")),
                base + "/budget/" + segment(p.instrument()) + "/" + p.quantity().key() + "/"
                        + p.point().number(),
                base + "/readings/" + p.point().number());
    }

    /** A name as a part of an address. */
    static String segment(String name) {
        return URLEncoder.encode(name, StandardCharsets.UTF_8).replace("+", "%20");
    }

    static String direction(Point point) {
        return point.direction() == Direction.ASCENDING ? "▲" : "▼";
    }

    static String at(Point point) {
        return Figure.of(point.temperature().celsius(), 0) + "\u202f°C, "
                + Figure.of(point.humidity().percent(), 0) + "\u202f% RH";
    }

    private static String tolerance(Decision decision, int place) {
        double low = decision.tolerance().lower();
        double high = decision.tolerance().upper();
        return -low == high
                ? "±" + Figure.of(shortest(high, place))
                : Figure.signed(low, place) + " … " + Figure.signed(high, place);
    }

    /** As it was agreed on, without zeros behind. */
    private static BigDecimal shortest(double limit, int place) {
        BigDecimal rounded = BigDecimal.valueOf(limit)
                .setScale(Math.max(place, 2), RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0, RoundingMode.UNNECESSARY) : rounded;
    }

    private static Figure signed(BigDecimal value) {
        Figure plain = Figure.of(value);
        return value.signum() > 0 ? new Figure("+" + plain.whole(), plain.fraction()) : plain;
    }
}
