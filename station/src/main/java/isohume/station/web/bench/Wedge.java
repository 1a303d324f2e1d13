// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import io.quarkus.qute.RawString;
import isohume.run.Waiting;
import isohume.station.web.Clockface;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The closing wedge: how large what is still moving is, in parts of its limit, against the time since the set point was
 * asked; on a log scale, with the limit as a line and the expected crossings written beside the lines. The table of
 * signals has the same figures in words.
 */
final class Wedge {
    private static final double LEFT = 44;
    private static final double RIGHT = 520;
    private static final double TOP = 14;
    private static final double BOTTOM = 252;
    private static final double WIDTH = 760;
    private static final double HEIGHT = 292;
    private static final double LEAST = 0.1; // of the limit
    private static final double MOST = 100;
    private static final double[] LEVELS = {0.1, 0.3, 1, 3, 10, 30, 100};
    private static final int[] STEPS = {1, 2, 5, 10, 15, 30, 60, 120, 240}; // min between two ticks
    private static final double LINE_HEIGHT = 15;
    private static final Duration SHORTEST = Duration.ofMinutes(10);

    private record Label(double y, String quantity, String text) {}

    private final List<Trace.Row> rows;
    private final List<Waiting> waiting;
    private final Instant asked;
    private final Instant now;
    private final Clockface clock;
    private final double minutes;
    private final StringBuilder out = new StringBuilder();

    private Wedge(List<Trace.Row> rows, List<Waiting> waiting, Instant asked, Instant now, Clockface clock) {
        this.rows = rows;
        this.waiting = waiting;
        this.asked = asked;
        this.now = now;
        this.clock = clock;
        Duration ahead = waiting.stream()
                .flatMap(w -> w.left().stream())
                .max(Duration::compareTo)
                .orElse(Duration.ZERO);
        Duration shown =
                Duration.between(asked, now).plus(ahead).multipliedBy(21).dividedBy(20);
        this.minutes = (shown.compareTo(SHORTEST) < 0 ? SHORTEST : shown).toSeconds() / 60.0;
    }

    /**
     * One inline {@code svg} element; empty when nothing is judged.
     *
     * @param rows ratios to the limit in the order of {@code waiting}
     */
    static RawString of(
            List<Trace.Row> rows, List<Waiting> waiting, Instant asked, Instant now, Clockface clock, String title) {
        boolean judged = waiting.stream().anyMatch(w -> w.worst().isPresent());
        return new RawString(judged ? new Wedge(rows, waiting, asked, now, clock).drawn(title) : "");
    }

    private String drawn(String title) {
        out.append(String.format(
                Locale.ROOT,
                "<svg class=\"closing\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"%s\">",
                WIDTH,
                HEIGHT,
                title));
        axes();
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < waiting.size(); i++) {
            line(i);
            label(waiting.get(i)).ifPresent(labels::add);
        }
        labels(labels);
        return out.append("</svg>").toString();
    }

    private void axes() {
        for (double level : LEVELS) {
            boolean limit = level == 1;
            add("<path class=\"%s\" d=\"M%.1f %.1fH%.1f\"/>", limit ? "limit" : "grid", LEFT, y(level), RIGHT);
            String text = limit ? "limit" : String.format(Locale.ROOT, level < 1 ? "%.1f" : "%.0f", level) + "\u202f×";
            add(
                    "<text class=\"tick\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"end\">%s</text>",
                    LEFT - 5, y(level) + 4, text);
        }
        int step = step();
        for (int minute = 0; minute <= minutes; minute += step) {
            add("<path class=\"grid\" d=\"M%.1f %.1fv5\"/>", x(minute), BOTTOM);
            add(
                    "<text class=\"tick\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%d</text>",
                    x(minute), BOTTOM + 18, minute);
        }
        add(
                "<text class=\"tick\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"end\">min since the set point was asked</text>",
                RIGHT, BOTTOM + 34);
        double at = x(Duration.between(asked, now).toSeconds() / 60.0);
        add("<path class=\"now\" d=\"M%.1f %.1fV%.1f\"/>", at, TOP, BOTTOM);
    }

    private int step() {
        for (int step : STEPS) {
            if (minutes / step <= 8) {
                return step;
            }
        }
        return STEPS[STEPS.length - 1] * (int) Math.ceil(minutes / STEPS[STEPS.length - 1] / 8);
    }

    private void line(int i) {
        Waiting one = waiting.get(i);
        StringBuilder path = new StringBuilder();
        for (Trace.Row row : rows) {
            double ratio = row.values().get(i);
            if (!Double.isNaN(ratio)) {
                path.append(path.isEmpty() ? 'M' : 'L')
                        .append(point((row.second() - asked.toEpochMilli() / 1000.0) / 60, ratio));
            }
        }
        Optional<Double> ratio = one.worst().map(Waiting.Criterion::ratio);
        double at = Duration.between(asked, now).toSeconds() / 60.0;
        ratio.ifPresent(r -> path.append(path.isEmpty() ? 'M' : 'L').append(point(at, r)));
        String kind = one.difference() ? "difference" : "reference";
        add("<path class=\"%s q-%s\" d=\"%s\"/>", kind, one.quantity().key(), path);
        if (ratio.isPresent() && !one.settled() && one.left().isPresent()) {
            double crossing = at + one.left().get().toSeconds() / 60.0;
            add(
                    "<path class=\"ahead q-%s\" d=\"M%sL%s\"/>",
                    one.quantity().key(), point(at, ratio.get()), point(crossing, 1));
            add(
                    "<circle class=\"q-%s\" cx=\"%.1f\" cy=\"%.1f\" r=\"3.5\"/>",
                    one.quantity().key(), x(crossing), y(1));
        }
    }

    private Optional<Label> label(Waiting one) {
        String name = one.signal()
                .replace(" − reference", "")
                .replace(" relative humidity", " RH")
                .replace("relative humidity", "RH of the air");
        String until = one.settled()
                ? "settled"
                : one.left().map(d -> clock.expected(now.plus(d), now)).orElse("not known");
        return one.worst().map(c -> new Label(y(c.ratio()), one.quantity().key(), name + ": " + until));
    }

    /** At the height of their lines, but never over one another. */
    private void labels(List<Label> labels) {
        labels.sort(Comparator.comparingDouble(Label::y));
        double next = TOP;
        double room = labels.size() * LINE_HEIGHT;
        for (Label label : labels) {
            double highest = Math.max(next, Math.min(label.y(), BOTTOM + LINE_HEIGHT - room));
            add(
                    "<text class=\"name q-%s\" x=\"%.1f\" y=\"%.1f\">%s</text>",
                    label.quantity(), RIGHT + 8, highest + 4, label.text());
            next = highest + LINE_HEIGHT;
            room -= LINE_HEIGHT;
        }
    }

    private String point(double minute, double ratio) {
        return String.format(Locale.ROOT, "%.1f %.1f", x(minute), y(ratio));
    }

    private double x(double minute) {
        return LEFT + (RIGHT - LEFT) * Math.clamp(minute / minutes, 0, 1);
    }

    private static double y(double ratio) {
        double share = Math.log(Math.clamp(ratio, LEAST, MOST) / LEAST) / Math.log(MOST / LEAST);
        return BOTTOM - (BOTTOM - TOP) * share;
    }

    @com.google.errorprone.annotations.FormatMethod
    private void add(String format, Object... parts) {
        out.append(String.format(Locale.ROOT, format, parts));
    }
}
