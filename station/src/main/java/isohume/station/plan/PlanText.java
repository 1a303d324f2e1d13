// SPDX-License-Identifier: Apache-2.0
package isohume.station.plan;

import isohume.quantity.Direction;
import isohume.quantity.Point;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A plan's document with other points; everything else in it, comments included, stays as it was written. */
public final class PlanText {
    private static final Pattern POINTS = Pattern.compile("(points|\"points\"|'points')\\s*:.*");
    private static final Pattern TITLE = Pattern.compile("(plan|\"plan\"|'plan')\\s*:.*");
    private static final Pattern BENCH = Pattern.compile("(bench|\"bench\"|'bench')\\s*:.*");
    private static final Pattern REST = Pattern.compile("\\s.*|-.*|#.*|"); // what may go on below a key
    private static final int DECIMALS = 6;

    private PlanText() {}

    /**
     * A line of a plan's points.
     *
     * @param direction written down; empty where the order says it
     */
    public record Leg(double celsius, List<Double> percents, Optional<Direction> direction) {
        public Leg {
            percents = List.copyOf(percents);
        }

        private String line() {
            return "  - {temperature: " + plain(celsius) + ", humidity: ["
                    + percents.stream().map(PlanText::plain).collect(Collectors.joining(", ")) + "]"
                    + direction.map(d -> ", direction: " + d.key()).orElse("") + "}";
        }
    }

    /**
     * The document with these points in place of its own.
     *
     * @param stated numbers of the points whose direction is to be written down even where the order says it
     * @throws IllegalArgumentException if the document has no line that begins with {@code points:}
     */
    public static String with(String document, List<Point> points, Set<Integer> stated) {
        return with(document, legs(points, stated));
    }

    /** The same with legs. */
    public static String with(String document, List<Leg> legs) {
        List<String> lines = new ArrayList<>(document.lines().toList());
        int first = line(lines, POINTS, "points");
        int end = first + 1;
        while (end < lines.size() && REST.matcher(lines.get(end)).matches()) {
            end++;
        }
        while (end > first + 1 && aside(lines.get(end - 1))) {
            end--; // blank lines and comments at the margin belong to what follows
        }
        String head = lines.get(first);
        int comment = head.indexOf(" #");
        List<String> block = new ArrayList<>(List.of("points:" + (comment < 0 ? "" : head.substring(comment))));
        lines.subList(first + 1, end).stream()
                .filter(l -> l.strip().startsWith("#"))
                .forEach(block::add);
        legs.stream().map(Leg::line).forEach(block::add);
        lines.subList(first, end).clear();
        lines.addAll(first, block);
        return String.join("\n", lines) + "\n";
    }

    /** The document with another title. */
    public static String titled(String document, String title) {
        List<String> lines = new ArrayList<>(document.lines().toList());
        String quoted = title.replace("\\", "\\\\").replace("\"", "\\\"");
        lines.set(line(lines, TITLE, "plan"), "plan: \"" + quoted + "\"");
        return String.join("\n", lines) + "\n";
    }

    /** The document with another name for its bench's file. */
    static String onBench(String document, String bench) {
        List<String> lines = new ArrayList<>(document.lines().toList());
        lines.set(line(lines, BENCH, "bench"), "bench: " + bench);
        return String.join("\n", lines) + "\n";
    }

    private static int line(List<String> lines, Pattern key, String name) {
        for (int i = 0; i < lines.size(); i++) {
            if (key.matcher(lines.get(i)).matches()) {
                return i;
            }
        }
        throw new IllegalArgumentException(
                "the plan has no line that begins with \"" + name + ":\"; write it on a line of its own");
    }

    private static boolean aside(String line) {
        return line.isBlank() || line.startsWith("#");
    }

    /** Points as legs; a direction is written down where it was, and where the order does not say it. */
    public static List<Leg> legs(List<Point> points, Set<Integer> stated) {
        List<Leg> legs = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= points.size(); i++) {
            boolean over = i == points.size()
                    || !points.get(i).temperature().equals(points.get(from).temperature());
            if (over) {
                leg(points.subList(from, i), stated, legs);
                from = i;
            }
        }
        return legs;
    }

    private static void leg(List<Point> leg, Set<Integer> stated, List<Leg> legs) {
        boolean said = leg.stream().anyMatch(p -> stated.contains(p.number()));
        if (!said && followsFromOrder(leg)) {
            legs.add(leg(leg, Optional.empty()));
            return;
        }
        int from = 0;
        for (int i = 1; i <= leg.size(); i++) {
            if (i == leg.size() || leg.get(i).direction() != leg.get(from).direction()) {
                legs.add(leg(leg.subList(from, i), Optional.of(leg.get(from).direction())));
                from = i;
            }
        }
    }

    /** Whether a reader gives the points their directions without being told. */
    private static boolean followsFromOrder(List<Point> leg) {
        for (int i = 0; i < leg.size(); i++) {
            int from = Math.max(0, i - 1);
            int to = Math.min(from + 1, leg.size() - 1);
            Direction read = leg.get(to).humidity().compareTo(leg.get(from).humidity()) < 0
                    ? Direction.DESCENDING
                    : Direction.ASCENDING;
            if (leg.get(i).direction() != read) {
                return false;
            }
        }
        return true;
    }

    private static Leg leg(List<Point> leg, Optional<Direction> direction) {
        return new Leg(
                leg.getFirst().temperature().celsius(),
                leg.stream().map(p -> p.humidity().percent()).toList(),
                direction);
    }

    /** As a person would write it: what kelvins add in the last places is left out. */
    public static String plain(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
    }
}
