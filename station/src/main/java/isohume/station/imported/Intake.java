// SPDX-License-Identifier: Apache-2.0
package isohume.station.imported;

import isohume.device.export.Answers;
import isohume.device.export.Export;
import isohume.device.export.LoggedTable;
import isohume.device.export.Understanding;
import isohume.device.export.Understanding.Understood;
import isohume.result.alignment.TimedValues;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Files on their way in: received untouched under their hash, looked at as often as a person answers questions, and kept
 * at last. Received files lie in the data folder's {@code received} folder. Safe for any thread.
 */
public final class Intake {
    private final Path received;
    private final ImportedFiles files;

    /** @param data the data folder */
    public Intake(Path data, ImportedFiles files) {
        this.received = data.resolve("received");
        this.files = files;
    }

    /** Takes a file in and says under which hash. */
    public String receive(Path upload) throws IOException {
        Files.createDirectories(received);
        String hash = ImportedFiles.hash(upload);
        Path part = Files.createTempFile(received, "part", "");
        Files.copy(upload, part, StandardCopyOption.REPLACE_EXISTING);
        Files.move(part, received.resolve(hash), StandardCopyOption.ATOMIC_MOVE);
        return hash;
    }

    private Optional<Path> file(String hash) {
        return hash.matches("[0-9a-f]{64}")
                ? Optional.of(received.resolve(hash)).filter(Files::isRegularFile)
                : Optional.empty();
    }

    /** What a received file has in it; nothing if there is no such file. */
    public Optional<Understanding> read(String hash, String name, Map<String, String> answers) {
        Map<String, String> all = new LinkedHashMap<>(answers);
        all.putIfAbsent("title", name);
        return file(hash).map(file -> Export.of(file).understand(Answers.of(all)));
    }

    /** Keeps a received file with how it was read. */
    public Imported keep(String hash, String name, Understood read, String operator) throws IOException {
        return files.keep(file(hash).orElseThrow(), name, read, operator);
    }

    /** Writes down that the alignment of an imported file was confirmed. */
    public void confirm(String hash, Aligned aligned) {
        files.confirm(hash, aligned);
    }

    /** Everything that was imported. */
    public List<Imported> all() {
        return files.all();
    }

    /** An imported file, read again as it was; nothing if it was not imported. */
    public Optional<LoggedTable> imported(String hash) {
        return files.all().stream()
                .filter(i -> i.sha256().equals(hash))
                .reduce((first, later) -> later)
                .flatMap(files::table);
    }

    /** What a channel shows, in seconds of the logger's clock, without gaps; nothing if the table does not have it. */
    public static Optional<TimedValues> values(LoggedTable table, String channel) {
        return table.column(channel).map(column -> {
            int[] rows = IntStream.range(0, table.size())
                    .filter(row -> table.shown(row, column).isPresent())
                    .toArray();
            return new TimedValues(
                    IntStream.of(rows)
                            .mapToDouble(row -> table.at(row).toEpochMilli() / 1000.0)
                            .toArray(),
                    IntStream.of(rows)
                            .mapToObj(row -> table.shown(row, column).orElseThrow())
                            .mapToDouble(BigDecimal::doubleValue)
                            .toArray());
        });
    }
}
