// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.devices;

import io.quarkus.qute.TemplateData;
import isohume.device.Reading;
import isohume.station.trial.Attempt;
import isohume.station.trial.Report;
import isohume.station.trial.Tryout;
import isohume.station.web.Clockface;
import java.util.List;
import java.util.Locale;

/**
 * A trial as it is shown.
 *
 * @param run the run whose readings it shows; empty if it reads by itself
 * @param median how long half of the reads took at most, with its unit; empty if that is not known
 * @param leftOut how many lines went before those that are shown
 */
@TemplateData
public record TrialView(
        int number,
        String device,
        String title,
        String place,
        String run,
        Tryout.State state,
        String begun,
        String until,
        int reads,
        String median,
        String longest,
        List<Row> channels,
        List<String> findings,
        List<String> lines,
        long leftOut) {
    /**
     * What a channel gave.
     *
     * @param shown what the last read gave, in words
     * @param raw what that was on the wire
     */
    @TemplateData
    public record Row(
            String name, String quantity, String shown, String raw, int values, int absent, String step, String every) {
        private static Row of(Report.Row row) {
            String unit = row.channel().quantity().differenceUnit();
            return new Row(
                    row.channel().name(),
                    row.channel().quantity().key(),
                    row.last().map(Attempt::shown).orElse("–").replaceFirst("^-(?=\\d)", "\u2212"),
                    row.last().map(Row::raw).orElse(""),
                    row.values(),
                    row.absent(),
                    row.step()
                            .map(step -> (step.toPlainString() + "\u202f" + unit).strip())
                            .orElse("–"),
                    row.secondsBetweenChanges()
                            .map(time -> String.format(Locale.ROOT, "%.2f\u202fs", time))
                            .orElse("–"));
        }

        private static String raw(Reading reading) {
            return switch (reading) {
                case Reading.Value value -> value.raw();
                case Reading.Doubtful doubtful -> doubtful.raw();
                case Reading.Absent absent -> "";
            };
        }
    }

    static TrialView of(Tryout tryout, Clockface clock) {
        Report report = tryout.report();
        return new TrialView(
                tryout.number(),
                tryout.description().id(),
                tryout.description().title(),
                tryout.description().place(),
                tryout.run().orElse(""),
                tryout.state(),
                clock.time(tryout.begun()),
                clock.time(tryout.until()),
                report.reads(),
                report.latency().map(took -> millis(took.median())).orElse(""),
                report.latency().map(took -> millis(took.longest())).orElse(""),
                report.channels().stream().map(Row::of).toList(),
                report.reads() == 0 ? List.of() : report.findings(),
                tryout.lines(),
                tryout.linesLeftOut());
    }

    private static String millis(double millis) {
        return String.format(Locale.ROOT, "%.1f\u202fms", millis);
    }

    public boolean atWork() {
        return state == Tryout.State.AT_WORK;
    }

    /** Whether all that was read is good, and something was. */
    public boolean fine() {
        return reads > 0 && findings.isEmpty();
    }
}
