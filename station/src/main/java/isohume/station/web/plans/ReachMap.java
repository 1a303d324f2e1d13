// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.plans;

import com.google.errorprone.annotations.FormatMethod;
import io.quarkus.qute.RawString;
import isohume.run.reach.Attainment;
import isohume.run.reach.Bounds;
import isohume.run.reach.Limit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The reach map as one inline {@code svg}: what the bench can have is open paper, the rest hatched with the reason written
 * in it, and what is near an edge dotted. Reasons for which there is no room are listed.
 */
final class ReachMap {
    private static final int COLUMNS = 480; // about one for each pixel
    private static final double LETTER = 7.2; // px, of a letter at 14 px
    private static final double LINE = 16; // px

    private final Attainment attainment;
    private final MapScale scale;
    private final StringBuilder svg = new StringBuilder();
    private final Set<String> unwritten = new LinkedHashSet<>();
    private final Set<String> written = new LinkedHashSet<>();

    ReachMap(Attainment attainment, MapScale scale) {
        this.attainment = attainment;
        this.scale = scale;
    }

    /** Part of the map that one limit closes, column by column: x, upper y, lower y. */
    private record Region(Limit limit, List<double[]> columns) {}

    /** The map with what is drawn over it. */
    RawString drawn(String over) {
        MapScale s = scale;
        add(
                "<svg class=\"reach-map\" viewBox=\"0 0 %d %d\" data-left=\"%d\" data-right=\"%d\" data-top=\"%d\""
                        + " data-bottom=\"%d\" data-cold=\"%s\" data-warm=\"%s\" data-low=\"%s\" data-high=\"%s\">",
                MapScale.WIDTH,
                MapScale.HEIGHT,
                MapScale.LEFT,
                MapScale.RIGHT,
                MapScale.TOP,
                MapScale.BOTTOM,
                s.across().low(),
                s.across().high(),
                s.up().low(),
                s.up().high());
        patterns();
        add(
                "<rect class=\"paper\" x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\"/>",
                MapScale.LEFT, MapScale.TOP, MapScale.RIGHT - MapScale.LEFT, MapScale.BOTTOM - MapScale.TOP);
        svg.append(new NearEdges(attainment, scale).drawn());
        List<Region> regions = regions();
        regions.forEach(this::hatch);
        axes();
        regions.forEach(this::write);
        svg.append(over).append("</svg>");
        return new RawString(svg.toString());
    }

    /** Whether something of the open paper is near an edge. */
    boolean dotted() {
        return svg.indexOf("class=\"near\"") >= 0;
    }

    /** Reasons that are on the map but not written there. */
    List<String> unwritten() {
        return unwritten.stream().filter(w -> !written.contains(w)).toList();
    }

    private void patterns() {
        svg.append("<defs>");
        for (Limit limit : Limit.values()) {
            add(
                    "<pattern id=\"hatch-%s\" width=\"9\" height=\"9\" patternUnits=\"userSpaceOnUse\""
                            + " patternTransform=\"rotate(%d)\"><path d=\"M0 0V9\" class=\"hatch\"/></pattern>",
                    limit.key(), angle(limit));
        }
        svg.append("<pattern id=\"dots-near\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\">"
                + "<circle cx=\"4\" cy=\"4\" r=\"1.1\" class=\"dots\"/></pattern>");
        svg.append(
                "<marker id=\"onward\" viewBox=\"0 0 8 8\" refX=\"5\" refY=\"4\" markerWidth=\"7\" markerHeight=\"7\""
                        + " orient=\"auto\"><path d=\"M0 0L8 4L0 8z\"/></marker></defs>");
    }

    private static int angle(Limit limit) {
        return switch (limit) {
            case TEMPERATURE, HUMIDITY -> 45;
            case DRY_STREAM -> 90;
            case WET_STREAM -> -45;
            case SURFACE, LINE -> 20;
            case MEASURED, FORMULA -> 0;
        };
    }

    private List<Region> regions() {
        List<Region> regions = new ArrayList<>();
        Optional<Region> lower = Optional.empty();
        Optional<Region> upper = Optional.empty();
        for (int i = 0; i <= COLUMNS; i++) {
            double celsius = scale.across().low()
                    + (scale.across().high() - scale.across().low()) * i / COLUMNS;
            Optional<Bounds.Edge> beyond = attainment.beyond(celsius);
            double x = scale.x(celsius);
            if (beyond.isPresent()) {
                lower = grown(regions, lower, beyond.get().limit(), x, MapScale.TOP, MapScale.BOTTOM);
                upper = Optional.empty();
                continue;
            }
            Bounds bounds = attainment.bounds(celsius);
            double least = bounds.empty() ? 100 : bounds.least().percent();
            lower = grown(regions, lower, bounds.least().limit(), x, scale.y(celsius, least), MapScale.BOTTOM);
            upper = bounds.empty()
                    ? Optional.empty()
                    : grown(
                            regions,
                            upper,
                            bounds.most().limit(),
                            x,
                            MapScale.TOP,
                            scale.y(celsius, bounds.most().percent()));
        }
        return regions;
    }

    /** The region goes on as long as the limit is the same and nothing jumps. */
    private static Optional<Region> grown(
            List<Region> regions, Optional<Region> last, Limit limit, double x, double top, double bottom) {
        double[] column = {x, top, bottom};
        if (last.isPresent()) {
            last.get().columns().add(column); // shares its edge with the next
            boolean whole = bottom - top > MapScale.BOTTOM - MapScale.TOP - 1;
            boolean wasWhole = whole(last.get());
            if (last.get().limit() == limit && whole == wasWhole) {
                return last;
            }
            if (whole != wasWhole) {
                last.get().columns().removeLast();
            }
        }
        Region next = new Region(limit, new ArrayList<>(List.of(column)));
        regions.add(next);
        return Optional.of(next);
    }

    private static boolean whole(Region region) {
        double[] first = region.columns().getFirst();
        return first[2] - first[1] > MapScale.BOTTOM - MapScale.TOP - 1;
    }

    private void hatch(Region region) {
        StringBuilder path = new StringBuilder();
        for (double[] column : region.columns()) {
            path.append(path.isEmpty() ? 'M' : 'L').append(at(column[0], column[1]));
        }
        for (double[] column : region.columns().reversed()) {
            path.append('L').append(at(column[0], column[2]));
        }
        add(
                "<path class=\"closed\" fill=\"url(#hatch-%s)\" d=\"%sZ\"/>",
                region.limit().key(), path);
    }

    private void write(Region region) {
        String words = region.limit().words();
        double length = words.length() * LETTER;
        double[] best = {0, 0, 0};
        for (double[] left : region.columns()) {
            double top = left[1];
            double bottom = left[2];
            double right = left[0];
            for (double[] column : region.columns()) {
                if (column[0] >= left[0] && column[0] <= left[0] + length) {
                    top = Math.max(top, column[1]);
                    bottom = Math.min(bottom, column[2]);
                    right = column[0];
                }
            }
            if (right - left[0] >= length - LETTER && bottom - top > best[2]) {
                best = new double[] {(left[0] + right) / 2, (top + bottom) / 2, bottom - top};
            }
        }
        if (best[2] >= LINE) {
            text(best[0], best[1], 0, words);
        } else if (!upright(region, words, length)) {
            unwritten.add(words);
        }
    }

    private boolean upright(Region region, String words, double length) {
        double width = region.columns().getLast()[0] - region.columns().getFirst()[0];
        double top = region.columns().stream().mapToDouble(c -> c[1]).max().orElse(0);
        double bottom = region.columns().stream().mapToDouble(c -> c[2]).min().orElse(0);
        if (width < LINE || bottom - top < length) {
            return false;
        }
        text(region.columns().getFirst()[0] + width / 2, (top + bottom) / 2, -90, words);
        return true;
    }

    private void text(double x, double y, int angle, String words) {
        written.add(words);
        add(
                "<text class=\"reason\" transform=\"translate(%.1f %.1f) rotate(%d)\" dy=\".32em\">%s</text>",
                x, y, angle, words);
    }

    private void axes() {
        for (double tick : scale.across().ticks()) {
            double x = scale.x(tick);
            add("<path class=\"tick\" d=\"M%.1f %dv6\"/>", x, MapScale.BOTTOM);
            add(
                    "<text class=\"figure\" x=\"%.1f\" y=\"%d\" text-anchor=\"middle\">%s</text>",
                    x, MapScale.BOTTOM + 21, scale.across().label(tick));
        }
        for (double tick : scale.up().ticks()) {
            double y = scale.up().place(tick, MapScale.BOTTOM, MapScale.TOP);
            add("<path class=\"tick\" d=\"M%d %.1fh-6\"/>", MapScale.LEFT, y);
            add(
                    "<text class=\"figure\" x=\"%d\" y=\"%.1f\" dy=\".32em\" text-anchor=\"end\">%s</text>",
                    MapScale.LEFT - 10, y, scale.up().label(tick));
        }
        add(
                "<rect class=\"frame\" x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\"/>",
                MapScale.LEFT, MapScale.TOP, MapScale.RIGHT - MapScale.LEFT, MapScale.BOTTOM - MapScale.TOP);
        add(
                "<text class=\"q-temperature axis\" x=\"%d\" y=\"%d\" text-anchor=\"middle\">Temperature, °C</text>",
                (MapScale.LEFT + MapScale.RIGHT) / 2, MapScale.HEIGHT - 7);
        add(
                "<text class=\"%s axis\" transform=\"translate(16 %d) rotate(-90)\" text-anchor=\"middle\">%s</text>",
                scale.dew() ? "q-dew_point" : "q-relative_humidity",
                (MapScale.TOP + MapScale.BOTTOM) / 2,
                scale.dew() ? "Dew or frost point, °C" : "Relative humidity, % RH");
    }

    private static String at(double x, double y) {
        return String.format(Locale.ROOT, "%.1f %.1f", x, y);
    }

    @FormatMethod
    private void add(String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values));
    }
}
