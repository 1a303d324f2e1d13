// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import isohume.device.export.Answers;
import isohume.device.export.Export;
import isohume.device.export.Profile;
import isohume.device.export.Understanding;
import isohume.device.export.Understanding.Understood;
import isohume.device.sheet.Sheet;
import isohume.journal.SqliteJournal;
import isohume.station.imported.Imported;
import isohume.station.imported.ImportedFiles;
import isohume.station.imported.Told;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** From a logger's file to readings that were understood. */
@Command(
        name = "import",
        description = "Reads a file that a logger or its program exported, says what it understood, and asks where the"
                + " file leaves a doubt.",
        footer = {
            "",
            "Without --data nothing is kept. Exit code 0 if the file is understood, 1 if it is in doubt or broken.",
            "Example: isohume import logger.csv --answer zone=Europe/Berlin --save-profile logger.yaml"
        },
        mixinStandardHelpOptions = true)
@SuppressWarnings("NullAway.Init") // picocli fills the fields
final class ImportCommand implements Callable<Integer> {
    private static final JsonMapper JSON =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "the exported file; it is only read")
    private Path file;

    @Option(names = "--profile", paramLabel = "P.yaml", description = "read it as this saved profile says")
    private @Nullable Path profile;

    @Option(
            names = "--answer",
            paramLabel = "KEY=VALUE",
            description = "answers a question; may be given several times")
    private final Map<String, String> answers = new LinkedHashMap<>();

    @Option(names = "--check", description = "only say what is understood; keep nothing, even with --data")
    private boolean check;

    @Option(names = "--save-profile", paramLabel = "P.yaml", description = "keep how the file was read, for the next")
    private @Nullable Path saved;

    @Option(names = "--data", paramLabel = "DIR", description = "keep the file, untouched, in this data folder")
    private @Nullable Path data;

    @Option(names = "--operator", paramLabel = "NAME", description = "who imports it: ${DEFAULT-VALUE}")
    private String operator = System.getProperty("user.name");

    @Option(names = "--json", description = "print what was understood as JSON")
    private boolean json;

    @Override
    public Integer call() throws IOException {
        Answers given = Answers.of(answers);
        Export export = Export.of(file);
        Understanding read = profile == null
                ? export.understand(given)
                : export.by(Profile.read(Sheet.document(profile), String.valueOf(profile.getFileName())), given);
        tell(Told.of(String.valueOf(file.getFileName()), read));
        given.unused()
                .forEach(
                        key -> spec.commandLine().getErr().println("note: nothing was asked that " + key + " answers"));
        if (!(read instanceof Understood understood)) {
            return Isohume.FAILED;
        }
        keep(understood);
        return Isohume.DONE;
    }

    private void tell(Told told) throws JsonProcessingException {
        PrintWriter answer = spec.commandLine().getOut();
        if (json) {
            answer.println(JSON.writeValueAsString(told));
            return;
        }
        PrintWriter messages = spec.commandLine().getErr();
        answer.println(told.file() + ": " + told.outcome().replace('_', ' '));
        if (told.outcome().equals("understood")) {
            table(told, answer);
        }
        for (Told.Found found : told.findings()) {
            answer.println("- " + (found.line() > 0 ? "line " + found.line() + ": " : "") + found.text());
        }
        answer.flush();
        told.questions().forEach(question -> ask(question, messages));
        for (Told.Wrong wrong : told.errors()) {
            String place =
                    wrong.line() == 0 ? "" : ":" + wrong.line() + (wrong.column() == 0 ? "" : ":" + wrong.column());
            messages.println(told.file() + place + ": " + wrong.what() + "; " + wrong.remedy());
        }
    }

    private static void table(Told told, PrintWriter answer) {
        answer.println(told.rows() + " rows, " + told.first() + " to " + told.last() + ", every "
                + seconds(told.intervalSeconds()));
        TextTable table =
                new TextTable(List.of(">column", "heading", "read as", "unit", ">least", ">greatest", ">gaps"));
        for (Told.Column column : told.columns()) {
            table.row(List.of(
                    String.valueOf(column.number()),
                    column.heading(),
                    column.channel(),
                    column.unit(),
                    column.least(),
                    column.most(),
                    String.valueOf(column.gaps())));
        }
        table.write(answer);
    }

    private static String seconds(double seconds) {
        return seconds >= 60 && seconds % 60 == 0
                ? String.format(Locale.ROOT, "%.0f min", seconds / 60)
                : String.format(Locale.ROOT, seconds % 1 == 0 ? "%.0f s" : "%.3f s", seconds);
    }

    private static void ask(Told.Asked question, PrintWriter messages) {
        messages.println("in doubt: " + question.text());
        question.evidence().forEach(line -> messages.println("  " + line));
        for (Told.Choice choice : question.choices()) {
            String option = "--answer " + quoted(question.key() + "=" + choice.value());
            messages.println("  " + option + (choice.meaning().isEmpty() ? "" : "   " + choice.meaning()));
        }
        if (question.free()) {
            messages.println("  or another answer of that form");
        }
    }

    private static String quoted(String option) {
        return option.matches("[A-Za-z0-9._=/+:-]+") ? option : "'" + option + "'";
    }

    private void keep(Understood understood) throws IOException {
        PrintWriter messages = spec.commandLine().getErr();
        if (saved != null) {
            Files.writeString(saved, understood.profile().document());
            messages.println("the profile is in " + saved);
        }
        if (data == null || check) {
            return;
        }
        Files.createDirectories(data);
        try (SqliteJournal journal = SqliteJournal.open(data.resolve("journal.db"), InstantSource.system())) {
            Imported kept = new ImportedFiles(data, journal)
                    .keep(file, String.valueOf(file.getFileName()), understood, operator);
            messages.println("the file is kept in " + data + " as files/" + kept.sha256());
        }
    }
}
