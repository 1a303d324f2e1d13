// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.imports;

import io.quarkus.qute.TemplateData;
import isohume.device.export.LoggedTable;
import isohume.quantity.Quantity;
import isohume.result.alignment.Alignment;
import isohume.result.alignment.Alignment.Found;
import isohume.result.alignment.Alignment.Refused;
import isohume.result.alignment.ClockAlignment;
import isohume.result.alignment.TimedValues;
import isohume.station.imported.Intake;
import isohume.station.web.Figure;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A logger's record over the reference's, with the logger's times moved by the offset that was found.
 *
 * @param refused why no offset was found; empty if one was
 * @param offset in words
 * @param quantity what is drawn, with its unit
 * @param zone in which the times stand
 * @param reference points of a line within {@link #WIDTH} by {@link #HEIGHT}
 * @param logger the same
 */
@TemplateData
public record Overlay(
        String refused,
        String offset,
        String quantity,
        String zone,
        String reference,
        String logger,
        List<Marks.Mark> times,
        List<Marks.Mark> values) {
    public static final int WIDTH = 900;
    public static final int HEIGHT = 260;

    private static final int MOST_POINTS = 2000;

    /** An overlay and the alignment that it shows. */
    record Made(Overlay overlay, Optional<Found> found) {}

    static Made of(LoggedTable reference, LoggedTable logger, ZoneId zone) {
        Made best = new Made(refused("the two files have no channel in common"), Optional.empty());
        for (String channel : List.of("relative_humidity", "temperature", "dew_point")) {
            Optional<TimedValues> one = Intake.values(reference, channel);
            Optional<TimedValues> two = Intake.values(logger, channel);
            if (one.isPresent() && two.isPresent()) {
                Made made = made(channel, one.get(), two.get(), zone);
                if (made.found().isPresent()) {
                    return made;
                }
                best = made;
            }
        }
        return best;
    }

    private static Made made(String channel, TimedValues reference, TimedValues logger, ZoneId zone) {
        Alignment alignment = ClockAlignment.of(reference, logger);
        return switch (alignment) {
            case Refused refused -> new Made(refused(refused.why()), Optional.empty());
            case Found found -> new Made(drawn(channel, reference, logger, found, zone), Optional.of(found));
        };
    }

    private static Overlay refused(String why) {
        return new Overlay(why, "", "", "", "", "", List.of(), List.of());
    }

    private static Overlay drawn(String channel, TimedValues reference, TimedValues logger, Found found, ZoneId zone) {
        double from = Math.min(reference.seconds(0), found.reference(logger.seconds(0)));
        double to =
                Math.max(reference.seconds(reference.size() - 1), found.reference(logger.seconds(logger.size() - 1)));
        double least = Math.min(least(reference), least(logger));
        double most = Math.max(most(reference), most(logger));
        Frame frame = new Frame(from, to, least, most > least ? most : least + 1);
        return new Overlay(
                "",
                String.format(
                        Locale.ROOT,
                        "%s s ± %s s, growing by %s s/day ± %s s/day",
                        Figure.of(found.offset(), 0),
                        Figure.of(found.expanded(), 0),
                        Figure.of(found.drift(), 1),
                        Figure.of(found.driftExpanded(), 1)),
                channel.replace('_', ' ') + ", " + Quantity.ofKey(channel).unit(),
                zone.getId(),
                frame.line(reference, null),
                frame.line(logger, found),
                Marks.times(from, to, WIDTH, zone),
                Marks.values(frame.least(), frame.most(), HEIGHT));
    }

    private static double least(TimedValues values) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < values.size(); i++) {
            least = Math.min(least, values.value(i));
        }
        return least;
    }

    private static double most(TimedValues values) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < values.size(); i++) {
            most = Math.max(most, values.value(i));
        }
        return most;
    }

    /** From times and values to places. */
    private record Frame(double from, double to, double least, double most) {
        String line(TimedValues values, @Nullable Found clocks) {
            StringBuilder points = new StringBuilder();
            int step = Math.max(1, values.size() / MOST_POINTS);
            for (int i = 0; i < values.size(); i += step) {
                double at = clocks == null ? values.seconds(i) : clocks.reference(values.seconds(i));
                points.append(String.format(
                        Locale.ROOT,
                        "%.1f,%.1f ",
                        WIDTH * (at - from) / (to - from),
                        HEIGHT * (1 - (values.value(i) - least) / (most - least))));
            }
            return points.toString().strip();
        }
    }
}
