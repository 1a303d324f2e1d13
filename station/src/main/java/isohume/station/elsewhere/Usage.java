// SPDX-License-Identifier: Apache-2.0
package isohume.station.elsewhere;

import isohume.device.export.LoggedTable;
import isohume.moistair.MoistAir;
import isohume.result.alignment.Alignment.Found;
import isohume.result.alignment.Plateaus;
import isohume.result.alignment.Plateaus.Use;
import isohume.result.alignment.Plateaus.Window;
import isohume.station.job.Recorded;
import isohume.station.job.Worksheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What becomes of a logger's readings beside a reference at the points of a plan.
 *
 * @param used readings for each point, by its number; 0 for a point at which the reference was never at rest
 * @param unused readings that are not used, by the reason
 */
public record Usage(Map<Integer, Integer> used, Map<String, Integer> unused) {
    /**
     * By the clocks as they are aligned; the points' times are found in the reference's record.
     *
     * @throws IllegalArgumentException if the reference's file has not what a reference needs
     */
    public static Usage of(Worksheet worksheet, LoggedTable reference, LoggedTable logger, Found clocks) {
        ReferenceRecord record = new ReferenceRecord(
                new RecordedFile(reference),
                MoistAir.by(worksheet.job().formulation()),
                worksheet.recorded().flatMap(Recorded::deposit));
        List<Window> windows = record.windows(worksheet.plan().points());
        RecordedFile file = new RecordedFile(logger);
        double[] seconds = new double[logger.size()];
        for (int row = 0; row < seconds.length; row++) {
            seconds[row] = file.seconds(row);
        }
        Map<Integer, Integer> used = new TreeMap<>();
        worksheet.plan().points().forEach(point -> used.put(point.number(), 0));
        Map<String, Integer> unused = new LinkedHashMap<>();
        for (Use use : Plateaus.of(windows, clocks, seconds, file.interval())) {
            switch (use) {
                case Use.OfPoint of -> used.merge(of.point(), 1, Integer::sum);
                case Use.None none -> unused.merge(none.why(), 1, Integer::sum);
            }
        }
        return new Usage(used, unused);
    }
}
