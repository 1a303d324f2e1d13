// SPDX-License-Identifier: Apache-2.0
package isohume.station.imported;

import isohume.device.export.Answers;
import isohume.device.export.Export;
import isohume.device.export.LoggedTable;
import isohume.device.export.Profile;
import isohume.device.export.Understanding.Understood;
import isohume.journal.Entry;
import isohume.journal.Journal;
import isohume.journal.StreamName;
import isohume.station.Program;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The files that a data folder keeps: each untouched, under the hash of its bytes, with a fact in the journal for each
 * time it was imported.
 */
public final class ImportedFiles {
    private static final String KIND = "file";

    private final Untouched untouched;
    private final Journal journal;

    /** @param data the data folder, whose {@code files} folder has the files */
    public ImportedFiles(Path data, Journal journal) {
        this.untouched = new Untouched(data.resolve("files"));
        this.journal = journal;
    }

    /** SHA-256 of a file's bytes, in hexadecimal. */
    public static String hash(Path file) throws IOException {
        return Untouched.hash(file);
    }

    /** Keeps a file and writes down that it was imported, and how it was read; the copy is on disk first. */
    public Imported keep(Path file, String name, Understood read, String operator) throws IOException {
        String hash = untouched.keep(file);
        Imported imported = new Imported(
                name,
                hash,
                Files.size(file),
                operator,
                Program.title(),
                read.profile().document(),
                read.table().size(),
                read.table().at(0),
                read.table().at(read.table().size() - 1));
        Entry written = journal.append(new StreamName(KIND, hash), ImportNotation.encode(imported));
        return ImportNotation.decode(written.fact());
    }

    /** Writes down that a person looked at an overlay and confirmed it. */
    public void confirm(String sha256, Aligned aligned) {
        journal.append(new StreamName(KIND, sha256), ImportNotation.encode(aligned));
    }

    /** The alignments of a file's clock that persons confirmed, by the hash of its bytes; the latest is the last. */
    public List<Aligned> alignments(String sha256) {
        return journal.read(new StreamName(KIND, sha256), 0, 1000).stream()
                .map(Entry::fact)
                .filter(ImportNotation::isAlignment)
                .map(ImportNotation::alignment)
                .toList();
    }

    /** Everything that was imported, in the order in which the files were first. */
    public List<Imported> all() {
        List<Imported> all = new ArrayList<>();
        for (StreamName stream : journal.streams(KIND)) {
            journal.read(stream, 0, 1000).stream()
                    .filter(entry -> ImportNotation.isImport(entry.fact()))
                    .forEach(entry -> all.add(ImportNotation.decode(entry.fact())));
        }
        return all;
    }

    /** The readings of an imported file, by the profile of its import. */
    Optional<LoggedTable> table(Imported imported) {
        Profile profile = Profile.read(imported.profile(), imported.name());
        return Export.of(untouched.file(imported.sha256()).orElseThrow()).by(profile, Answers.none())
                        instanceof Understood read
                ? Optional.of(read.table())
                : Optional.empty();
    }
}
