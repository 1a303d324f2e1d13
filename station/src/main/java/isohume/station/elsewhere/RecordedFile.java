// SPDX-License-Identifier: Apache-2.0
package isohume.station.elsewhere;

import isohume.device.export.Answers;
import isohume.device.export.Export;
import isohume.device.export.LoggedTable;
import isohume.device.export.Profile;
import isohume.device.export.Understanding;
import isohume.device.export.Understanding.InDoubt;
import isohume.device.export.Understanding.Refused;
import isohume.device.export.Understanding.Understood;
import isohume.device.sheet.Sheet;
import isohume.result.alignment.TimedValues;
import isohume.station.imported.Intake;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** An exported file that is to be evaluated. */
record RecordedFile(LoggedTable table) {
    /**
     * Reads {@code FILE} or {@code FILE:PROFILE}.
     *
     * @throws IllegalArgumentException with the questions or the places, if it is not understood
     */
    static RecordedFile read(String named, Map<String, String> answers) {
        Path file = path(named);
        boolean profiled = !file.equals(Path.of(named));
        Answers given = Answers.of(answers);
        Export export = Export.of(file);
        Understanding read = profiled
                ? export.by(profile(Path.of(named.substring(named.lastIndexOf(':') + 1))), given)
                : export.understand(given);
        return switch (read) {
            case Understood understood -> new RecordedFile(understood.table());
            case InDoubt doubt ->
                throw new IllegalArgumentException(doubt.questions().stream()
                        .map(q -> file + " is in doubt: " + q.text() + " (" + q.key() + ": " + q.values() + ")")
                        .collect(Collectors.joining("\n", "", "\n\"isohume import\" shows more and saves a profile")));
            case Refused refused ->
                throw new IllegalArgumentException(
                        refused.errors().stream().map(e -> e.message()).collect(Collectors.joining("\n")));
        };
    }

    /** The file of {@code FILE} or {@code FILE:PROFILE}. */
    static Path path(String named) {
        int colon = named.lastIndexOf(':');
        boolean profiled = colon > 1 && !Files.exists(Path.of(named)) && named.matches(".*\\.ya?ml");
        return Path.of(profiled ? named.substring(0, colon) : named);
    }

    private static Profile profile(Path path) {
        return Profile.read(Sheet.document(path), String.valueOf(path.getFileName()));
    }

    /** What a channel shows, without gaps, in seconds of its clock; nothing if it has no such channel. */
    Optional<TimedValues> values(String channel) {
        return Intake.values(table, channel);
    }

    double seconds(int row) {
        return table.at(row).toEpochMilli() / 1000.0;
    }

    double interval() {
        return table.interval().toMillis() / 1000.0;
    }
}
