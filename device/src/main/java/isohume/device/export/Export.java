// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.export.Understanding.Understood;
import isohume.device.recorded.RecordedReadings;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A file that a logger, a recorder or its program exported: readings with times, in whatever layout. The file is never
 * held as a whole; the readings take up to twice its size, and 150 MB at most.
 */
public final class Export {
    private final Path file;
    private final String source;

    private Export(Path file) {
        this.file = file;
        Path last = file.getFileName();
        source = (last == null ? file : last).toString();
    }

    /** An exported file. Nothing is read yet. */
    public static Export of(Path file) {
        return new Export(file);
    }

    /**
     * Recognises how the file is written and reads it.
     *
     * @param answers to the questions of an earlier try
     */
    public Understanding understand(Answers answers) {
        Doubts doubts = new Doubts(source, answers);
        return guarded(doubts, () -> recognise(doubts));
    }

    /**
     * Reads the file as a profile says.
     *
     * @param answers to questions that the profile leaves open
     */
    public Understanding by(Profile profile, Answers answers) {
        Doubts doubts = new Doubts(source, answers);
        return guarded(doubts, () -> bySaved(profile, doubts));
    }

    @FunctionalInterface
    private interface Attempt {
        Optional<Understanding> understanding() throws IOException;
    }

    private Understanding guarded(Doubts doubts, Attempt attempt) {
        try {
            if (!refusedUnread(doubts)) {
                Optional<Understanding> understanding = attempt.understanding();
                if (understanding.isPresent()) {
                    return understanding.get();
                }
            }
        } catch (NoSuchFileException none) {
            doubts.wrong(0, 0, "there is no such file", "check the name and the folder");
        } catch (IOException e) {
            doubts.wrong(0, 0, "the file cannot be read (" + e.getMessage() + ")", "check that it may be read");
        }
        return doubts.obstacle().orElseThrow();
    }

    private boolean refusedUnread(Doubts doubts) throws IOException {
        long size = Files.size(file);
        if (Files.isDirectory(file)) {
            doubts.wrong(0, 0, "this is a folder", "name the exported file");
        } else if (size == 0) {
            doubts.wrong(0, 0, "the file is empty", "export it again");
        } else if (size > RecordedReadings.LIMIT_BYTES) {
            doubts.wrong(
                    0,
                    0,
                    "the file has " + size / 1_000_000 + " MB",
                    "at most " + RecordedReadings.LIMIT_BYTES / 1_000_000 + " MB are read; export it in parts");
        }
        return doubts.broken();
    }

    private Optional<Understanding> recognise(Doubts doubts) throws IOException {
        Optional<Charset> encoding = new Encoding(doubts).of(file);
        if (encoding.isEmpty()) {
            return Optional.empty();
        }
        List<String> head = Lines.head(file, encoding.get());
        Optional<Layout> layout = Layout.of(head, doubts);
        Optional<TimeColumns> times = layout.flatMap(l -> Recognition.times(l, doubts));
        if (layout.isEmpty() || times.isEmpty() || doubts.broken()) {
            return Optional.empty();
        }
        Survey survey = new Survey(times.get(), layout.get().width());
        new Rows(file, encoding.get(), layout.get().delimiter(), doubts)
                .from(layout.get().first(), survey);
        if (doubts.broken()) {
            return Optional.empty();
        }
        Optional<Profile> profile =
                new Recognition(source, layout.get(), times.get(), survey, doubts).profile(encoding.get());
        return profile.isEmpty() ? Optional.empty() : read(profile.get(), layout.get(), doubts);
    }

    private Optional<Understanding> bySaved(Profile profile, Doubts doubts) throws IOException {
        List<String> head = Lines.head(file, profile.encoding());
        Optional<Layout> layout = ProfileFit.layout(profile, head, doubts);
        return layout.isEmpty() ? Optional.empty() : read(profile, layout.get(), doubts);
    }

    private Optional<Understanding> read(Profile profile, Layout layout, Doubts doubts) throws IOException {
        ByProfile reading = new ByProfile(profile, layout.width(), layout.names(), doubts);
        new Rows(file, profile.encoding(), profile.delimiter(), doubts).from(layout.first(), reading);
        reading.end();
        if (reading.rows().size() < 2 && !doubts.broken()) {
            doubts.wrong(0, 0, "the file has " + reading.rows().size() + " rows of readings", "at least 2 are needed");
        }
        if (doubts.broken()) {
            return Optional.empty();
        }
        Timeline timeline = new Timeline(reading.rows(), doubts);
        Optional<Profile> settled = timeline.settled(profile);
        if (settled.isEmpty()) {
            return Optional.empty();
        }
        boolean seconds = reading.step().toSeconds() < 60;
        Instants instants = timeline.instants(settled.get(), seconds);
        if (!seconds) {
            doubts.find(Finding.Kind.TIME, 0, "the times have no seconds: each may be up to a minute later");
        }
        Optional<Understanding> obstacle = doubts.obstacle();
        return obstacle.isPresent()
                ? obstacle
                : Optional.of(new Understood(
                        settled.get(),
                        new LoggedTable(
                                source,
                                profile.columns(),
                                reading.rows(),
                                instants,
                                instants.interval(),
                                reading.step()),
                        doubts.findings()));
    }
}
