// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.imports;

import io.quarkus.qute.TemplateData;
import isohume.device.export.LoggedTable;
import isohume.result.alignment.Alignment.Found;
import isohume.station.elsewhere.Usage;
import isohume.station.job.Worksheet;
import isohume.station.web.Figure;
import java.util.List;
import java.util.Locale;

/**
 * What of a logger's record would be used at the points of a plan, and why the rest would not, as it is shown.
 *
 * @param trouble why that cannot be said; empty where it can
 */
@TemplateData
public record UsageView(List<Point> points, List<Unused> unused, String trouble) {
    /** A point and how many readings belong to it; fewer than two give no result. */
    @TemplateData
    public record Point(int number, String at, int readings) {
        public boolean few() {
            return readings < 2;
        }
    }

    /** Readings that are not used. */
    @TemplateData
    public record Unused(String why, int readings) {}

    static UsageView of(Worksheet worksheet, LoggedTable reference, LoggedTable logger, Found clocks) {
        try {
            Usage usage = Usage.of(worksheet, reference, logger, clocks);
            List<Point> points = worksheet.plan().points().stream()
                    .map(p -> new Point(p.number(), at(p), usage.used().getOrDefault(p.number(), 0)))
                    .toList();
            List<Unused> unused = usage.unused().entrySet().stream()
                    .map(e -> new Unused(e.getKey(), e.getValue()))
                    .toList();
            return new UsageView(points, unused, "");
        } catch (IllegalArgumentException unfit) {
            return new UsageView(List.of(), List.of(), String.valueOf(unfit.getMessage()));
        }
    }

    private static String at(isohume.quantity.Point point) {
        return Figure.of(point.temperature().celsius(), 0) + "\u202f°C, "
                + Figure.of(point.humidity().percent(), 0) + "\u202f% RH, "
                + point.direction().name().toLowerCase(Locale.ROOT);
    }
}
