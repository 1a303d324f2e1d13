// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.device.recorded.RecordedReadings;
import isohume.quantity.Point;
import isohume.quantity.Quantity;
import isohume.result.Evaluation;
import isohume.result.Item;
import isohume.result.PointResult;
import isohume.result.Recording;
import isohume.result.Results;
import isohume.result.Specification;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What readings from a file mean by a worksheet.
 *
 * @param remarks what a person should know before using the results: left out points and instruments, conditions far
 *     from the plan's, overdue references
 */
public record Reckoning(Results results, List<String> remarks) {
    private static final double FAR_KELVIN = 2;
    private static final double FAR_PERCENT = 5;

    public Reckoning {
        remarks = List.copyOf(remarks);
    }

    /**
     * Evaluates readings.
     *
     * @throws IllegalArgumentException when they do not belong to the worksheet, or a reference, the chamber's study or
     *     a formula does not cover them; the message has a line for each place in the file
     */
    public static Reckoning of(Worksheet worksheet, RecordedReadings readings) {
        return of(worksheet, new PointsOfFile(worksheet, readings).recordings(), readings.source());
    }

    /**
     * Evaluates what was recorded at each point.
     *
     * @param source where it comes from, for messages
     * @throws IllegalArgumentException when a reference, the chamber's study or a formula does not cover it
     */
    public static Reckoning of(Worksheet worksheet, List<Recording> recordings, String source) {
        Results results = evaluated(worksheet, recordings, source);
        List<String> remarks = new ArrayList<>();
        absentPoints(worksheet, recordings, source).ifPresent(remarks::add);
        worksheet.job().items().forEach(item -> gaps(item, results, recordings, remarks));
        recordings.forEach(recording -> farOff(recording, results).ifPresent(remarks::add));
        remarks.addAll(results.objections());
        return new Reckoning(results, remarks);
    }

    private static Results evaluated(Worksheet worksheet, List<Recording> recordings, String source) {
        try {
            return Evaluation.of(worksheet.job(), recordings);
        } catch (IllegalArgumentException notCovered) {
            for (Recording recording : recordings) {
                blame(worksheet, recording, source);
            }
            throw notCovered;
        }
    }

    /** @throws IllegalArgumentException that names the point, if this recording is one that cannot be evaluated */
    private static void blame(Worksheet worksheet, Recording recording, String source) {
        try {
            Results unused = Evaluation.of(worksheet.job(), List.of(recording));
        } catch (IllegalArgumentException notCovered) {
            throw new IllegalArgumentException(
                    source + ": point " + recording.point().number() + ": " + notCovered.getMessage(), notCovered);
        }
    }

    private static Optional<String> absentPoints(Worksheet worksheet, List<Recording> recordings, String source) {
        List<String> absent = worksheet.plan().points().stream()
                .map(Point::number)
                .filter(n -> recordings.stream().noneMatch(r -> r.point().number() == n))
                .map(String::valueOf)
                .toList();
        return absent.isEmpty()
                ? Optional.empty()
                : Optional.of("the plan's point" + (absent.size() > 1 ? "s " : " ") + String.join(", ", absent)
                        + (absent.size() > 1 ? " have" : " has") + " no readings in " + source
                        + " and no result");
    }

    private static void gaps(Item item, Results results, List<Recording> recordings, List<String> remarks) {
        for (Specification channel : item.channels()) {
            List<String> without = recordings.stream()
                    .map(r -> r.point().number())
                    .filter(n -> results.of(item.id()).stream()
                            .noneMatch(p -> p.quantity() == channel.quantity()
                                    && p.point().number() == n))
                    .map(String::valueOf)
                    .toList();
            String key = item.key(channel.quantity());
            boolean computed = channel.derived() || channel.quantity() == Quantity.DEW_POINT;
            String why = computed ? "fewer than 2 readings that a formula covers" : "fewer than 2 readings";
            if (without.size() == recordings.size()) {
                remarks.add(key + " has " + (computed ? why : "no readings") + " and no result");
            } else if (!without.isEmpty()) {
                remarks.add(key + " has " + why + " at point " + String.join(", ", without) + " and no result there");
            }
        }
    }

    private static Optional<String> farOff(Recording recording, Results results) {
        return results.points().stream()
                .filter(p -> p.point().equals(recording.point()))
                .findFirst()
                .flatMap(Reckoning::farOff);
    }

    private static Optional<String> farOff(PointResult result) {
        Point point = result.point();
        double celsius = result.conditions().temperature();
        double percent = result.conditions().relativeHumidity();
        boolean far = Math.abs(celsius - point.temperature().celsius()) > FAR_KELVIN
                || Math.abs(percent - point.humidity().percent()) > FAR_PERCENT;
        return far
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "point %d was read at %.2f °C and %.2f %% RH, far from the plan's %.2f °C and %.2f %% RH;"
                                + " is the number of the point right?",
                        point.number(),
                        celsius,
                        percent,
                        point.temperature().celsius(),
                        point.humidity().percent()))
                : Optional.empty();
    }
}
