// SPDX-License-Identifier: Apache-2.0
package isohume.station.elsewhere;

import isohume.moistair.MoistAir;
import isohume.quantity.Phase;
import isohume.quantity.Quantity;
import isohume.result.Item;
import isohume.result.Recording;
import isohume.result.Specification;
import isohume.result.alignment.Alignment;
import isohume.result.alignment.Alignment.Found;
import isohume.result.alignment.Alignment.Refused;
import isohume.result.alignment.ClockAlignment;
import isohume.result.alignment.NotedTimes;
import isohume.result.alignment.Plateaus;
import isohume.result.alignment.Plateaus.Use;
import isohume.result.alignment.Plateaus.Window;
import isohume.result.alignment.TimedValues;
import isohume.station.imported.Aligned;
import isohume.station.job.Clock;
import isohume.station.job.Worksheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The recordings of a calibration without a connection: reference and instruments each from a file of their own. */
public final class RecordedElsewhere {
    private static final double NOTED_WITHIN = 1; // s, what a person reads a clock to

    private static final double MOST_DRIFT =
            6; // s/day, what an alignment holds possible; a confirmed one states no U of it

    private final Worksheet worksheet;
    private final ReferenceRecord reference;
    private final List<Window> windows;
    private final List<String> remarks = new ArrayList<>();
    private final Map<Integer, TreeMap<Double, Map<String, Double>>> shown = new TreeMap<>();

    private RecordedElsewhere(Worksheet worksheet, ReferenceRecord reference, List<Window> windows) {
        this.worksheet = worksheet;
        this.reference = reference;
        this.windows = windows.isEmpty() ? reference.windows(worksheet.plan().points()) : windows;
    }

    /**
     * Where the files are.
     *
     * @param reference {@code FILE} or {@code FILE:PROFILE}
     * @param instruments the same for each instrument, by its id
     * @param clocks what is known of the instruments' clocks, by id
     * @param confirmed what was confirmed of the clocks of these very files, by the instrument's id; clocks go before
     * @param windows when the reference was at rest at which point; found where there are none
     * @param deposit what the dew point is over, where the file does not say it
     * @param answers to the questions that files without a profile leave
     */
    public record Files(
            String reference,
            Map<String, String> instruments,
            Map<String, Clock> clocks,
            Map<String, Aligned> confirmed,
            List<Window> windows,
            Optional<Phase> deposit,
            Map<String, String> answers) {}

    /** What was recorded at each point, and what a person should know of how it was put together. */
    public record Paired(List<Recording> recordings, List<String> remarks, String source) {}

    /**
     * Pairs each instrument's readings with the reference's of the same moment, point by point.
     *
     * @throws IllegalArgumentException if a file is not understood, a clock cannot be told, or nothing fits a point
     */
    public static Paired pair(Worksheet worksheet, Files files) {
        MoistAir air = MoistAir.by(worksheet.job().formulation());
        ReferenceRecord reference =
                new ReferenceRecord(RecordedFile.read(files.reference, files.answers), air, files.deposit);
        RecordedElsewhere pairing = new RecordedElsewhere(worksheet, reference, files.windows);
        files.instruments.forEach((id, named) -> pairing.add(id, RecordedFile.read(named, files.answers), files));
        return new Paired(pairing.recordings(), pairing.remarks, reference.source());
    }

    private void add(String id, RecordedFile file, Files files) {
        Item item = worksheet.job().items().stream()
                .filter(i -> i.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the plan has no instrument " + id));
        Found clocks = clocks(id, item, file, files);
        double[] seconds = new double[file.table().size()];
        for (int row = 0; row < seconds.length; row++) {
            seconds[row] = file.seconds(row);
        }
        List<Use> uses = Plateaus.of(windows, clocks, seconds, file.interval());
        Map<String, Integer> unused = new LinkedHashMap<>();
        for (int row = 0; row < seconds.length; row++) {
            switch (uses.get(row)) {
                case Use.OfPoint(int point, double at) -> take(item, file, row, point, at);
                case Use.None none -> unused.merge(none.why(), 1, Integer::sum);
            }
        }
        unused.forEach((why, count) ->
                remarks.add(id + ": " + count + " rows of " + file.table().source() + " are not used: " + why));
    }

    private void take(Item item, RecordedFile file, int row, int point, double at) {
        for (Specification channel : item.read()) {
            Optional<BigDecimal> value = file.table()
                    .column(channel.quantity().key())
                    .flatMap(column -> file.table().shown(row, column));
            value.ifPresent(v -> shown.computeIfAbsent(point, p -> new TreeMap<>())
                    .computeIfAbsent(at, t -> new LinkedHashMap<>())
                    .put(item.key(channel.quantity()), v.doubleValue()));
        }
    }

    private Found clocks(String id, Item item, RecordedFile file, Files files) {
        Alignment alignment = switch (files.clocks.getOrDefault(id, new Clock.Unknown())) {
            case Clock.Same same ->
                new Found(0, same.within().toMillis() / 1000.0, file.seconds(0), 0, 0, "said to be the same");
            case Clock.Noted noted ->
                NotedTimes.between(
                        noted(noted.logger().toEpochMilli(), noted.reference().toEpochMilli()),
                        noted(
                                noted.laterLogger().toEpochMilli(),
                                noted.laterReference().toEpochMilli()));
            case Clock.Unknown unknown ->
                Optional.ofNullable(files.confirmed.get(id))
                        .<Alignment>map(aligned -> confirmed(aligned, file))
                        .orElseGet(() -> found(item, file));
        };
        return switch (alignment) {
            case Found found -> told(id, found);
            case Refused refused ->
                throw new IllegalArgumentException("the clock of " + id + " cannot be told: " + refused.why()
                        + "; give --clock " + id + "=LOGGER/REFERENCE,LOGGER/REFERENCE, or " + id + "=same");
        };
    }

    private static Found confirmed(Aligned aligned, RecordedFile file) {
        double middle = (file.seconds(0) + file.seconds(file.table().size() - 1)) / 2;
        return new Found(
                aligned.offsetSeconds(),
                aligned.expandedSeconds(),
                middle,
                aligned.driftSecondsPerDay(),
                MOST_DRIFT,
                aligned.how() + ", confirmed by " + aligned.operator());
    }

    private Found told(String id, Found found) {
        remarks.add(String.format(
                Locale.ROOT,
                "the clock of %s was %.0f s ahead of the reference's, ± %.0f s, by %s",
                id,
                found.offset(),
                found.expanded(),
                found.how()));
        return found;
    }

    private static NotedTimes noted(long logger, long reference) {
        return new NotedTimes(logger / 1000.0, reference / 1000.0, NOTED_WITHIN * Math.sqrt(2));
    }

    /** By humidity and by temperature; the one that tells more. */
    private Alignment found(Item item, RecordedFile file) {
        Alignment best = new Refused(Alignment.Reason.TOO_SHORT, "no channel of the plan is in its file");
        for (Specification channel : item.read()) {
            Optional<TimedValues> values = file.values(channel.quantity().key());
            if (values.isPresent() && channel.quantity() != Quantity.DEW_POINT) {
                boolean humid = channel.quantity() == Quantity.RELATIVE_HUMIDITY;
                best = better(
                        best, ClockAlignment.of(humid ? reference.humidity() : reference.temperature(), values.get()));
            }
        }
        return best;
    }

    private static Alignment better(Alignment one, Alignment other) {
        if (one instanceof Found a && (!(other instanceof Found b) || a.expanded() <= b.expanded())) {
            return one;
        }
        return other;
    }

    private List<Recording> recordings() {
        List<Recording> recordings = new ArrayList<>();
        for (Window window : windows) {
            Map<Double, Map<String, Double>> rows = shown.getOrDefault(window.point(), new TreeMap<>());
            if (rows.size() >= 2) {
                List<Recording.Row> paired = new ArrayList<>();
                rows.forEach((at, values) -> paired.add(reference.at(at, values)));
                recordings.add(new Recording(
                        worksheet.plan().point(window.point()),
                        reference.deposit(window),
                        worksheet.depositBy().orElse("stated in or for " + reference.source()),
                        paired));
            } else {
                remarks.add("point " + window.point() + " has fewer than 2 readings between its guards and no result;"
                        + " hold it for at least 10 intervals of the logger");
            }
        }
        if (recordings.isEmpty()) {
            throw new IllegalArgumentException(
                    "no reading belongs to a point of the plan\n" + String.join("\n", remarks));
        }
        return recordings;
    }
}
