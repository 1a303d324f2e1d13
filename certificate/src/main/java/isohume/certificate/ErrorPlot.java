// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import isohume.quantity.Direction;
import isohume.quantity.Quantity;
import isohume.result.Job.Decision;
import isohume.result.PointResult;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Error against reference with bars of expanded uncertainty, the tolerance as a band, the guard band as its lighter
 * edge. Ascending points are filled and point upwards, descending points are open and point downwards; one line style
 * for each temperature. Readable in black.
 *
 * <p>Where points share a reference, the guard band shown is that of the largest uncertainty among them.
 */
public final class ErrorPlot {
    static final double WIDTH = 640;
    static final double HEIGHT = 250;
    private static final double LEFT = 52;
    private static final double RIGHT = 572;
    private static final double TOP = 24;
    private static final double BOTTOM = 206;
    private static final double APART = 7; // between two bars that would hide each other
    private static final double LINE = 12; // height of a line of text
    private static final List<String> DASHES = List.of("", "6 3", "2 2.5", "9 2.5 2 2.5");
    private static final String INK = "#1D2433";

    private final List<PointResult> points;
    private final Decision decision;
    private final Quantity quantity;
    private final Axis across;
    private final Axis up;
    private final double[] xs;
    private final Markup out = new Markup();

    private ErrorPlot(List<PointResult> results, Decision decision) {
        if (results.stream().map(PointResult::quantity).distinct().count() != 1) {
            throw new IllegalArgumentException("an error plot shows one quantity, was given "
                    + results.stream().map(PointResult::quantity).distinct().toList());
        }
        this.points = results.stream()
                .sorted(Comparator.comparingDouble(PointResult::reference))
                .toList();
        this.decision = decision;
        this.quantity = points.getFirst().quantity();
        this.across =
                Axis.covering(points.getFirst().reference(), points.getLast().reference(), 11);
        double reach = points.stream().mapToDouble(ErrorPlot::reach).max().orElseThrow();
        this.up = Axis.covering(-reach * 1.05, reach * 1.05, 9);
        this.xs = places();
    }

    /**
     * One {@code svg} element, 640 × 250 units, for a page.
     *
     * @param points of one quantity of one instrument, at least one
     * @throws IllegalArgumentException when there is no point, or points are of more than one quantity
     */
    public static String svg(List<PointResult> points, Decision decision) {
        return new ErrorPlot(points, decision).draw("aria-label");
    }

    /** The same for the PDF, whose writer takes the words for the picture from another attribute. */
    static String forPrint(List<PointResult> points, Decision decision) {
        return new ErrorPlot(points, decision).draw("alt");
    }

    private static double reach(PointResult p) {
        return Math.max(Math.abs(p.error()) + p.expanded(), Verdicts.given(p) ? p.tolerance() : 0);
    }

    private double[] places() {
        double[] wanted = points.stream().mapToDouble(p -> x(p.reference())).toArray();
        Comparator<Integer> rank = Comparator.comparingDouble((Integer i) -> celsius(points.get(i)))
                .thenComparing(i -> points.get(i).point().direction())
                .thenComparingInt(i -> points.get(i).point().number());
        return SideBySide.spread(wanted, rank, APART);
    }

    private String draw(String describedBy) {
        out.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                n(0) + " " + n(0) + " " + n(WIDTH) + " " + n(HEIGHT),
                "width",
                Integer.toString((int) WIDTH),
                "height",
                Integer.toString((int) HEIGHT),
                "role",
                "img",
                describedBy,
                description(),
                "font-family",
                "Source Sans 3, sans-serif",
                "font-size",
                "11",
                "fill",
                INK);
        bands();
        frame();
        lines();
        IntStream.range(0, points.size()).forEach(this::point);
        key();
        return out.close().finish();
    }

    private String description() {
        long inside = points.stream()
                .filter(p -> Math.abs(p.error()) <= p.tolerance())
                .count();
        String counted = points.size() + (points.size() == 1 ? " point" : " points");
        return "Error of " + Names.of(quantity) + " against the reference at " + counted
                + (judged() ? ", " + inside + " inside the tolerance" : "") + "; the figures are in the table.";
    }

    private boolean judged() {
        return points.stream().allMatch(Verdicts::given);
    }

    private boolean guarded() {
        return switch (decision) {
            case GUARD_BAND, GUARD_BAND_FOUR_ANSWERS -> true;
            case SIMPLE_ACCEPTANCE, NONE -> false;
        };
    }

    private void bands() {
        if (!judged()) {
            return;
        }
        band(PointResult::tolerance, guarded() ? "#F4F1EA" : "#E2DDD0");
        if (guarded()) {
            band(ErrorPlot::acceptance, "#E2DDD0");
            edge(ErrorPlot::acceptance, "3 2");
        }
        edge(PointResult::tolerance, "");
        double half = points.getFirst().tolerance();
        text(LEFT + 4, y(half) - 3, "start", "tolerance");
        if (guarded() && y(acceptance(points.getFirst())) - y(half) > LINE && Math.abs(xs[0] - LEFT) > 70) {
            text(LEFT + 4, y(half) + LINE - 2, "start", "guard band");
        }
    }

    private static double acceptance(PointResult p) {
        return Math.max(0, p.tolerance() - p.expanded());
    }

    /** Half-width by reference: the least of all points at one reference, and level beyond the outer points. */
    private NavigableMap<Double, Double> halves(ToDoubleFunction<PointResult> half) {
        TreeMap<Double, Double> byPlace = points.stream()
                .collect(Collectors.toMap(
                        p -> (double) Math.round(x(p.reference()) / APART) * APART,
                        half::applyAsDouble,
                        Math::min,
                        TreeMap::new));
        byPlace.put(LEFT, byPlace.firstEntry().getValue());
        byPlace.put(RIGHT, byPlace.lastEntry().getValue());
        return byPlace;
    }

    private void band(ToDoubleFunction<PointResult> half, String fill) {
        StringBuilder outline = new StringBuilder();
        NavigableMap<Double, Double> halves = halves(half);
        halves.forEach((x, h) -> outline.append(pair(x, y(h))));
        halves.descendingMap().forEach((x, h) -> outline.append(pair(x, y(-h))));
        out.empty("polygon", "points", outline.toString().strip(), "fill", fill);
    }

    private void edge(ToDoubleFunction<PointResult> half, String dash) {
        for (int sign : new int[] {1, -1}) {
            StringBuilder line = new StringBuilder();
            halves(half).forEach((x, h) -> line.append(pair(x, y(sign * h))));
            polyline(line.toString(), "#596275", 0.8, dash);
        }
    }

    private void frame() {
        for (double tick : up.ticks()) {
            line(LEFT, y(tick), RIGHT, y(tick), tick == 0 ? INK : "#D8D2C4", tick == 0 ? 0.9 : 0.4);
            text(LEFT - 6, y(tick) + 4, "end", up.label(tick));
        }
        line(LEFT, BOTTOM, RIGHT, BOTTOM, INK, 0.9);
        for (double tick : across.ticks()) {
            line(x(tick), BOTTOM, x(tick), BOTTOM + 4, INK, 0.9);
            text(x(tick), BOTTOM + 16, "middle", across.label(tick));
        }
        text(LEFT - 6, TOP - 10, "start", "Error, " + Figures.unit(quantity.differenceUnit()));
        text(RIGHT, BOTTOM + 32, "end", "Reference, " + Figures.unit(quantity.unit()));
    }

    private void lines() {
        if (quantity == Quantity.TEMPERATURE) {
            return; // one temperature is one place across: a line would join nothing
        }
        List<Double> temperatures =
                points.stream().map(ErrorPlot::celsius).distinct().sorted().toList();
        double[] labels = new double[temperatures.size()];
        double[] ends = new double[temperatures.size()];
        for (int t = 0; t < temperatures.size(); t++) {
            for (Direction direction : Direction.values()) {
                series(temperatures.get(t), direction, DASHES.get(t % DASHES.size()));
            }
            int last = last(temperatures.get(t));
            labels[t] = y(points.get(last).error());
            ends[t] = xs[last];
        }
        double[] places = SideBySide.stack(labels, LINE, BOTTOM - 4);
        for (int t = 0; t < places.length; t++) {
            line(ends[t] + 5, labels[t], RIGHT + 6, places[t], "#596275", 0.5);
            text(RIGHT + 9, places[t] + 4, "start", temperature(temperatures.get(t)));
        }
    }

    private static String temperature(double celsius) {
        return Figures.withUnit(Figures.brief(celsius, 1), Quantity.TEMPERATURE.unit());
    }

    private int last(double celsius) {
        return IntStream.range(0, points.size())
                .filter(i -> celsius(points.get(i)) == celsius)
                .boxed()
                .max(Comparator.comparingDouble(i -> xs[i]))
                .orElseThrow();
    }

    private void series(double celsius, Direction direction, String dash) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < xs.length; i++) {
            if (celsius(points.get(i)) == celsius && points.get(i).point().direction() == direction) {
                line.append(pair(xs[i], y(points.get(i).error())));
            }
        }
        polyline(line.toString(), hue(), 0.9, dash);
    }

    private void point(int i) {
        PointResult p = points.get(i);
        double x = xs[i];
        double top = y(p.error() + p.expanded());
        double foot = y(p.error() - p.expanded());
        line(x, top, x, foot, hue(), 1);
        line(x - 3, top, x + 3, top, hue(), 1);
        line(x - 3, foot, x + 3, foot, hue(), 1);
        triangle(x, y(p.error()), p.point().direction());
    }

    private void triangle(double x, double y, Direction direction) {
        int way = switch (direction) {
            case ASCENDING -> 1;
            case DESCENDING -> -1;
        };
        out.empty(
                "polygon",
                "points",
                (pair(x, y - way * 4.6) + pair(x + 4, y + way * 2.7) + pair(x - 4, y + way * 2.7)).strip(),
                "fill",
                way > 0 ? hue() : "#FFFFFF",
                "stroke",
                hue(),
                "stroke-width",
                "1");
    }

    private void key() {
        double x = RIGHT;
        for (Direction direction : Direction.values()) {
            if (points.stream().anyMatch(p -> p.point().direction() == direction)) {
                text(x, TOP - 10, "end", direction.key());
                triangle(x - 60, TOP - 13, direction);
                x -= 84;
            }
        }
    }

    private static double celsius(PointResult p) {
        return SetPoint.of(p.point()).celsius();
    }

    private String hue() {
        return switch (quantity) {
            case RELATIVE_HUMIDITY -> "#4A58B8";
            case TEMPERATURE -> "#B0522B";
            case DEW_POINT -> "#1F7A74";
            case PRESSURE -> "#6B6A45";
            case DEPOSIT, WATER_LEVEL -> INK;
        };
    }

    private double x(double reference) {
        return across.place(reference, LEFT + 14, RIGHT - 14);
    }

    private double y(double error) {
        return up.place(error, BOTTOM, TOP);
    }

    private void line(double x1, double y1, double x2, double y2, String stroke, double width) {
        polyline(pair(x1, y1) + pair(x2, y2), stroke, width, "");
    }

    private void polyline(String places, String stroke, double width, String dash) {
        if (places.isEmpty()) {
            return;
        }
        out.empty(
                "polyline",
                "points",
                places.strip(),
                "fill",
                "none",
                "stroke",
                stroke,
                "stroke-width",
                n(width),
                "stroke-dasharray",
                dash.isEmpty() ? "none" : dash);
    }

    private void text(double x, double y, String anchor, String words) {
        out.element("text", words, "x", n(x), "y", n(y), "text-anchor", anchor);
    }

    private static String pair(double x, double y) {
        return n(x) + "," + n(y) + " ";
    }

    private static String n(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
