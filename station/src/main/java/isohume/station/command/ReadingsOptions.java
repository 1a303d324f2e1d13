// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.device.recorded.RecordedReadings;
import isohume.quantity.Phase;
import isohume.result.alignment.Plateaus.Window;
import isohume.station.elsewhere.Clock;
import isohume.station.elsewhere.RecordedElsewhere;
import isohume.station.elsewhere.RecordedElsewhere.Files;
import isohume.station.elsewhere.RecordedElsewhere.Paired;
import isohume.station.job.Reckoning;
import isohume.station.job.Worksheet;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Where readings come from: one file of pairs, or a file of the reference and one of each instrument. */
final class ReadingsOptions {
    @Option(
            names = "--readings",
            paramLabel = "FILE.csv",
            description = "paired readings of references and instruments, in one file")
    private @Nullable Path readings;

    @Option(
            names = "--reference",
            paramLabel = "FILE[:PROFILE]",
            description = "the reference's exported file; with --instrument, in place of --readings")
    private @Nullable String reference;

    @Option(
            names = "--instrument",
            paramLabel = "ID=FILE[:PROFILE]",
            description = "an instrument's exported file; for each one")
    private final Map<String, String> instruments = new LinkedHashMap<>();

    @Option(
            names = "--clock",
            paramLabel = "ID=CLOCK",
            description =
                    "same, same±30 (s), or two moments by both clocks: LOGGER/REFERENCE,LOGGER/REFERENCE; found by"
                            + " the likeness of the records where it is not given")
    private final Map<String, String> clocks = new LinkedHashMap<>();

    @Option(
            names = "--point",
            paramLabel = "N=FROM/TO",
            description = "when the reference was at rest at point N; found where none is given")
    private final Map<Integer, String> points = new LinkedHashMap<>();

    @Option(names = "--deposit", paramLabel = "water|ice", description = "what the reference's dew point is over")
    private @Nullable Phase deposit;

    @Option(
            names = "--answer",
            paramLabel = "KEY=VALUE",
            description = "answers a question that files without a profile leave")
    private final Map<String, String> answers = new LinkedHashMap<>();

    /** What the readings mean by a worksheet. */
    Reckoning reckoning(Worksheet worksheet, CommandSpec spec) {
        if (readings != null && reference == null && instruments.isEmpty()) {
            return Reckoning.of(worksheet, RecordedReadings.read(readings));
        }
        if (reference == null || instruments.isEmpty() || readings != null) {
            throw new ParameterException(
                    spec.commandLine(), "give --readings, or --reference and an --instrument for each instrument");
        }
        Map<String, Clock> said = new LinkedHashMap<>();
        clocks.forEach((id, text) -> said.put(id, Clock.read(text)));
        Paired paired = RecordedElsewhere.pair(
                worksheet, new Files(reference, instruments, said, windows(), Optional.ofNullable(deposit), answers));
        Reckoning reckoning = Reckoning.of(worksheet, paired.recordings(), paired.source());
        List<String> remarks = new ArrayList<>(paired.remarks());
        remarks.addAll(reckoning.remarks());
        return new Reckoning(reckoning.results(), remarks);
    }

    private List<Window> windows() {
        List<Window> windows = new ArrayList<>();
        points.forEach((number, text) -> {
            String[] ends = text.split("/", -1);
            if (ends.length != 2) {
                throw new IllegalArgumentException("point " + number + " is \"" + text + "\"; write FROM/TO");
            }
            windows.add(new Window(number, seconds(ends[0]), seconds(ends[1])));
        });
        return windows;
    }

    private static double seconds(String text) {
        try {
            Instant at = OffsetDateTime.parse(text.strip()).toInstant();
            return at.toEpochMilli() / 1000.0;
        } catch (DateTimeParseException unfit) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is no time; write it as 2026-03-31T08:00:00+02:00", unfit);
        }
    }
}
