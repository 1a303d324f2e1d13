// SPDX-License-Identifier: Apache-2.0
package isohume.station.elsewhere;

import isohume.device.export.LoggedTable;
import isohume.moistair.MoistAir;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Point;
import isohume.quantity.Pressure;
import isohume.quantity.Temperature;
import isohume.result.Recording;
import isohume.result.alignment.Plateaus.Window;
import isohume.result.alignment.TimedValues;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The reference's file: dew point, temperature and pressure, and where they were at rest at a point of the plan. */
final class ReferenceRecord {
    private static final double NEAR_KELVIN = 2;
    private static final double NEAR_PERCENT = 5;
    private static final double REST_KELVIN = 0.2;
    private static final double REST_PERCENT = 0.5;

    private final List<Row> rows = new ArrayList<>();
    private final Optional<Phase> said;
    private final String source;

    /** One moment; nothing is missing in it. */
    private record Row(
            double seconds,
            double dew,
            double celsius,
            double pressure,
            double mirror,
            double percent,
            Phase deposit) {}

    ReferenceRecord(RecordedFile file, MoistAir air, Optional<Phase> said) {
        this.said = said;
        this.source = file.table().source();
        for (int row = 0; row < file.table().size(); row++) {
            read(file, row, air);
        }
        if (rows.size() < 2) {
            throw new IllegalArgumentException(source + " has fewer than 2 rows with all of the reference's values");
        }
    }

    private void read(RecordedFile file, int row, MoistAir air) {
        LoggedTable table = file.table();
        Optional<Double> dew = shown(table, row, "dew_point");
        Optional<Double> celsius = shown(table, row, "temperature");
        Optional<Double> pressure = shown(table, row, "pressure");
        if (dew.isEmpty() || celsius.isEmpty() || pressure.isEmpty()) {
            return;
        }
        double mirror = shown(table, row, "mirror_pressure").orElse(pressure.get());
        Phase deposit = deposit(table, row);
        DewPoint point = deposit == Phase.ICE
                ? DewPoint.overIce(Temperature.ofCelsius(dew.get()))
                : DewPoint.overWater(Temperature.ofCelsius(dew.get()));
        double percent = air.relativeHumidity(
                        point,
                        Pressure.ofPascals(mirror),
                        Temperature.ofCelsius(celsius.get()),
                        Pressure.ofPascals(pressure.get()))
                .percent();
        rows.add(new Row(file.seconds(row), dew.get(), celsius.get(), pressure.get(), mirror, percent, deposit));
    }

    private Phase deposit(LoggedTable table, int row) {
        Optional<Double> shown = shown(table, row, "deposit");
        if (shown.isPresent()) {
            return shown.get() == 2 ? Phase.ICE : Phase.WATER;
        }
        return said.orElseThrow(() -> new IllegalArgumentException(source
                + " does not say what the dew point is over; add --deposit water or --deposit ice, or say it under"
                + " \"recorded\" in the plan"));
    }

    private Optional<Double> shown(LoggedTable table, int row, String channel) {
        Optional<Integer> column = table.column(channel);
        if (column.isEmpty() && !channel.equals("mirror_pressure") && !channel.equals("deposit")) {
            throw new IllegalArgumentException(source + " has no column for the reference's " + channel
                    + "; \"isohume import\" tells what it has");
        }
        return column.flatMap(c -> table.shown(row, c)).map(BigDecimal::doubleValue);
    }

    String source() {
        return source;
    }

    TimedValues humidity() {
        return new TimedValues(
                rows.stream().mapToDouble(Row::seconds).toArray(),
                rows.stream().mapToDouble(Row::percent).toArray());
    }

    TimedValues temperature() {
        return new TimedValues(
                rows.stream().mapToDouble(Row::seconds).toArray(),
                rows.stream().mapToDouble(Row::celsius).toArray());
    }

    /** Where the reference was at rest near each point, in the plan's order; points that it did not reach are left out. */
    List<Window> windows(List<Point> points) {
        List<Window> windows = new ArrayList<>();
        int from = 0;
        for (Point point : points) {
            int first = from;
            while (first < rows.size() && !near(rows.get(first), point)) {
                first++;
            }
            int last = first;
            while (last + 1 < rows.size() && near(rows.get(last + 1), point)) {
                last++;
            }
            if (first < rows.size() && last > first) {
                window(point, first, last).ifPresent(windows::add);
                from = last + 1;
            }
        }
        return windows;
    }

    /** The part at the end of a stay in which nothing moved any more. */
    private Optional<Window> window(Point point, int first, int last) {
        int begin = last;
        while (begin > first && atRest(rows.get(begin - 1), rows.get(last))) {
            begin--;
        }
        return begin < last
                ? Optional.of(new Window(point.number(), rows.get(begin).seconds, rows.get(last).seconds))
                : Optional.empty();
    }

    private static boolean near(Row row, Point point) {
        return Math.abs(row.celsius - point.temperature().celsius()) <= NEAR_KELVIN
                && Math.abs(row.percent - point.humidity().percent()) <= NEAR_PERCENT;
    }

    private static boolean atRest(Row row, Row end) {
        return Math.abs(row.celsius - end.celsius) <= REST_KELVIN
                && Math.abs(row.percent - end.percent) <= REST_PERCENT;
    }

    /** The reference at a time between two of its rows, with what instruments showed then. */
    Recording.Row at(double seconds, Map<String, Double> shown) {
        int after = 0;
        while (after < rows.size() - 1 && rows.get(after).seconds < seconds) {
            after++;
        }
        Row two = rows.get(after);
        Row one = rows.get(Math.max(0, after - 1));
        double width = two.seconds - one.seconds;
        double share = width > 0 ? Math.clamp((seconds - one.seconds) / width, 0, 1) : 0;
        return new Recording.Row(
                Instant.ofEpochMilli(Math.round(seconds * 1000)),
                between(one.dew, two.dew, share),
                between(one.celsius, two.celsius, share),
                between(one.pressure, two.pressure, share),
                between(one.mirror, two.mirror, share),
                shown);
    }

    private static double between(double one, double two, double share) {
        return one + share * (two - one);
    }

    /** The one deposit within a window. */
    Phase deposit(Window window) {
        List<Phase> phases = rows.stream()
                .filter(r -> r.seconds >= window.from() && r.seconds <= window.to())
                .map(Row::deposit)
                .distinct()
                .toList();
        if (phases.size() != 1) {
            throw new IllegalArgumentException(source + ": the deposit changes within point " + window.point()
                    + "; give it a window of one deposit");
        }
        return phases.getFirst();
    }
}
