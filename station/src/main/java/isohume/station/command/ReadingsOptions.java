// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.device.recorded.RecordedReadings;
import isohume.quantity.Phase;
import isohume.result.alignment.Plateaus.Window;
import isohume.station.elsewhere.ConfirmedClocks;
import isohume.station.elsewhere.RecordedElsewhere;
import isohume.station.elsewhere.RecordedElsewhere.Files;
import isohume.station.elsewhere.RecordedElsewhere.Paired;
import isohume.station.imported.Aligned;
import isohume.station.job.Clock;
import isohume.station.job.Reckoning;
import isohume.station.job.Recorded;
import isohume.station.job.Worksheet;
import java.io.IOException;
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
                    "same, same±30 (s), or two moments by both clocks: LOGGER/REFERENCE,LOGGER/REFERENCE; where it"
                            + " is not given, as confirmed in --data, or found by the likeness of the records")
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

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "the data folder in which the files were imported: clocks that were confirmed there are used")
    private @Nullable Path data;

    /** What the readings mean by a worksheet whose plan is in a folder. */
    Reckoning reckoning(Worksheet worksheet, Path folder, CommandSpec spec) throws IOException {
        if (readings != null && reference == null && instruments.isEmpty()) {
            return Reckoning.of(worksheet, RecordedReadings.read(readings));
        }
        if (readings == null
                && reference == null
                && instruments.isEmpty()
                && worksheet.recorded().isPresent()) {
            return reckoning(worksheet, named(worksheet.recorded().get(), folder));
        }
        if (reference == null || instruments.isEmpty() || readings != null) {
            throw new ParameterException(
                    spec.commandLine(),
                    "give --readings, or --reference and an --instrument for each instrument, or name the files under"
                            + " \"recorded\" in the plan");
        }
        return reckoning(worksheet, files(reference, instruments, Map.of(), Optional.empty()));
    }

    private Files named(Recorded recorded, Path folder) throws IOException {
        Map<String, String> named = new LinkedHashMap<>();
        recorded.instruments().forEach((id, source) -> named.put(id, named(source, folder)));
        return files(named(recorded.reference(), folder), named, recorded.clocks(), recorded.deposit());
    }

    private static String named(Recorded.Source source, Path folder) {
        String file = folder.resolve(source.file()).toString();
        return source.profile().map(p -> file + ":" + folder.resolve(p)).orElse(file);
    }

    /** What was said here goes before what the plan says. */
    private Files files(String from, Map<String, String> of, Map<String, Clock> planned, Optional<Phase> over)
            throws IOException {
        Map<String, Clock> said = new LinkedHashMap<>(planned);
        clocks.forEach((id, text) -> said.put(id, Clock.read(text)));
        Map<String, Aligned> confirmed = data == null ? Map.of() : ConfirmedClocks.of(data, from, of);
        return new Files(
                from,
                of,
                said,
                confirmed,
                windows(),
                Optional.ofNullable(deposit).or(() -> over),
                answers);
    }

    private static Reckoning reckoning(Worksheet worksheet, Files files) {
        Paired paired = RecordedElsewhere.pair(worksheet, files);
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
