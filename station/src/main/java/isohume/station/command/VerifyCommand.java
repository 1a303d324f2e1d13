// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import isohume.journal.Seal;
import isohume.journal.Verification;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Checks every hash of a journal. */
@Command(
        name = "verify",
        description = "Checks that nothing in a journal was changed, removed or put in between. Changes nothing.",
        footer = {
            "",
            "A seal noted elsewhere, on a certificate for instance, shows also that the journal was not made anew.",
            "Example: isohume verify data --seal 3:5f1c…"
        },
        mixinStandardHelpOptions = true)
final class VerifyCommand implements Callable<Integer> {
    private static final String JOURNAL = "journal.db";

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private CommandSpec spec;

    @Parameters(paramLabel = "DATA", description = "a journal's file, or the folder that has journal.db in it")
    @SuppressWarnings("NullAway.Init")
    private Path data;

    @Option(
            names = "--seal",
            paramLabel = "N:HASH",
            converter = SealText.class,
            description = "a seal that was noted elsewhere: its number and its hash; can be given several times")
    private List<Seal> seals = new ArrayList<>();

    @Option(names = "--json", description = "print what was found as JSON")
    private boolean json;

    @Override
    public Integer call() throws IOException {
        Path file = Files.isDirectory(data) ? data.resolve(JOURNAL) : data;
        if (!Files.exists(file)) {
            throw new IOException("there is no journal at " + file + "; name a journal's file, or the folder that has "
                    + JOURNAL + " in it");
        }
        Verification found = Verification.of(file, seals.toArray(new Seal[0]));
        PrintWriter answer = spec.commandLine().getOut();
        if (json) {
            answer.println(tree(file, found).toPrettyString());
        } else {
            print(file, found, answer);
        }
        return switch (found) {
            case Verification.Whole whole -> Isohume.DONE;
            case Verification.Broken broken -> {
                spec.commandLine()
                        .getErr()
                        .println(
                                "the journal " + file + " is not what was acknowledged; nothing was changed. Keep it as"
                                        + " it is, and put back a backup that verifies.");
                yield Isohume.FAILED;
            }
        };
    }

    private void print(Path file, Verification found, PrintWriter answer) {
        switch (found) {
            case Verification.Whole whole -> {
                answer.println("whole: " + file);
                answer.println("streams   " + whole.streams());
                answer.println("facts     " + whole.facts());
                answer.println("sealed    " + whole.sealed());
                answer.println("last seal " + text(whole.lastSeal()));
                if (!seals.isEmpty()) {
                    answer.println("noted     " + seals.size() + (seals.size() == 1 ? " seal is" : " seals are")
                            + " in it as noted");
                }
            }
            case Verification.Broken broken -> {
                answer.println("broken: " + file);
                broken.findings().forEach(answer::println);
            }
        }
    }

    private static String text(@Nullable Seal seal) {
        return seal == null ? "none" : seal.number() + ":" + seal.hash() + ", set " + seal.at();
    }

    private static ObjectNode tree(Path file, Verification found) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("file", file.toString());
        switch (found) {
            case Verification.Whole whole -> {
                node.put("whole", true).put("streams", whole.streams());
                node.put("facts", whole.facts()).put("sealed", whole.sealed());
                Seal seal = whole.lastSeal();
                if (seal == null) {
                    node.putNull("last_seal");
                } else {
                    node.putObject("last_seal")
                            .put("number", seal.number())
                            .put("at", seal.at().toString())
                            .put("hash", seal.hash());
                }
                node.putArray("findings");
            }
            case Verification.Broken broken -> {
                node.put("whole", false);
                broken.findings()
                        .forEach(finding -> node.withArray("/findings")
                                .addObject()
                                .put("stream", finding.stream())
                                .put("number", finding.number())
                                .put("what", finding.what()));
            }
        }
        return node;
    }

    /** A seal as it is noted: {@code 3:} and 64 hexadecimal digits. */
    static final class SealText implements ITypeConverter<Seal> {
        private static final Pattern SEAL = Pattern.compile("([1-9][0-9]{0,17}):([0-9a-fA-F]{64})");

        @Override
        public Seal convert(String text) {
            Matcher seal = SEAL.matcher(text.strip());
            if (!seal.matches()) {
                throw new TypeConversionException("“" + text + "” is not a seal; write its number, a colon and the 64"
                        + " digits of its hash, as verify prints them");
            }
            String hash = seal.group(2).toLowerCase(Locale.ROOT);
            return new Seal(Long.parseLong(seal.group(1)), Instant.EPOCH, hash); // when it was set is not compared
        }
    }
}
