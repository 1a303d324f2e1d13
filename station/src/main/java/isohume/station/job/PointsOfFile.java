// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.device.Channel;
import isohume.device.recorded.RecordedError;
import isohume.device.recorded.RecordedReadings;
import isohume.device.recorded.RecordedReadings.Row;
import isohume.device.recorded.RecordingRefused;
import isohume.quantity.Phase;
import isohume.result.Recording;
import isohume.result.StillToCome;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The readings of a file, point by point, checked against a worksheet. */
final class PointsOfFile {
    private final Worksheet worksheet;
    private final RecordedReadings readings;
    private final List<RecordedError> errors = new ArrayList<>();
    private final Map<Integer, List<Row>> points = new LinkedHashMap<>();

    PointsOfFile(Worksheet worksheet, RecordedReadings readings) {
        this.worksheet = worksheet;
        this.readings = readings;
    }

    /**
     * One recording for each point, in the order of the file.
     *
     * @throws IllegalArgumentException with a line for each error when the file does not belong to the worksheet
     */
    List<Recording> recordings() {
        checkChannels();
        sort();
        points.values().forEach(this::check);
        if (!errors.isEmpty()) {
            throw new IllegalArgumentException(errors.stream()
                    .limit(RecordingRefused.MOST_ERRORS)
                    .map(RecordedError::message)
                    .collect(Collectors.joining("\n")));
        }
        return points.values().stream().map(this::recording).toList();
    }

    private void checkChannels() {
        List<String> known = worksheet.readChannels();
        for (Channel channel : readings.channels()) {
            if (!known.contains(channel.id())) {
                refuse(
                        1,
                        "the column " + channel.id() + " belongs to no instrument of the plan",
                        "add the instrument to the plan or take the column out; the plan has "
                                + String.join(", ", known));
            }
        }
    }

    private void sort() {
        int most = worksheet.plan().points().size();
        int before = 0;
        Map<Integer, Long> returned = new HashMap<>();
        for (Row row : readings.rows()) {
            boolean begins = row.point() != before;
            if (begins && row.point() > most) {
                refuse(
                        row.line(),
                        "the point is " + row.point(),
                        "the plan has the points 1 to " + most + "; correct the number or the plan");
            } else if (begins && points.containsKey(row.point()) && returned.put(row.point(), row.line()) == null) {
                refuse(
                        row.line(),
                        "point " + row.point() + " comes back after point " + before,
                        "keep the readings of one visit, or give the second visit a point of its own in the plan");
            }
            points.computeIfAbsent(row.point(), p -> new ArrayList<>()).add(row);
            before = row.point();
        }
    }

    private void check(List<Row> rows) {
        Row first = rows.getFirst();
        if (rows.size() < 2) {
            refuse(
                    first.line(),
                    "point " + first.point() + " has one line of readings",
                    "at least 2 are needed to tell its noise; take more, or take this one out");
        }
        for (Row row : rows) {
            if (row.deposit() != first.deposit()) {
                refuse(
                        row.line(),
                        "the deposit changes to " + word(row.deposit()) + " within point " + row.point(),
                        "keep the readings over one deposit");
                return;
            }
            if (!row.toCome().equals(first.toCome())) {
                refuse(
                        row.line(),
                        "what was still to come changes within point " + row.point(),
                        "it is said of the whole point; write the same in every line of it");
                return;
            }
        }
    }

    private static String word(Phase deposit) {
        return deposit == Phase.ICE ? "ice" : "water";
    }

    private void refuse(long line, String what, String remedy) {
        errors.add(new RecordedError(readings.source(), line, 0, what, remedy));
    }

    private Recording recording(List<Row> rows) {
        Row first = rows.getFirst();
        return new Recording(
                worksheet.plan().point(first.point()),
                first.deposit(),
                worksheet.depositBy().orElse("stated in " + readings.source()),
                rows.stream().map(PointsOfFile::row).toList(),
                toCome(first));
    }

    private static Map<String, StillToCome> toCome(Row row) {
        Map<String, StillToCome> toCome = new LinkedHashMap<>();
        row.toCome()
                .forEach((channel, known) -> toCome.put(
                        channel.id(),
                        new StillToCome(
                                known.value().doubleValue(), known.uncertainty().doubleValue())));
        return toCome;
    }

    private static Recording.Row row(Row row) {
        Map<String, Double> shown = new LinkedHashMap<>();
        for (Map.Entry<Channel, BigDecimal> one : row.shown().entrySet()) {
            shown.put(one.getKey().id(), one.getValue().doubleValue());
        }
        return new Recording.Row(
                row.at(),
                row.dewPoint().doubleValue(),
                row.temperature().doubleValue(),
                row.pressure().doubleValue(),
                row.mirrorPressure().doubleValue(),
                shown);
    }
}
