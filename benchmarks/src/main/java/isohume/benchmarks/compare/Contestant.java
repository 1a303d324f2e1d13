// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.compare;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * A process that reckons when told to. It reads one request a line from its standard input and answers with one line:
 *
 * <ul>
 *   <li>{@code version}: what it is
 *   <li>{@code load FILE}: takes the {@link isohume.benchmarks.Conditions} from there, answers {@code ok}
 *   <li>{@code give WORK}: the results, separated by blanks
 *   <li>{@code time WORK MILLISECONDS}: does the work over and over for that long, at least once, and answers with the
 *       nanoseconds for each value, by the clock and of processor time
 * </ul>
 *
 * <p>Its standard error is ours. It ends when its input does.
 */
final class Contestant implements AutoCloseable {
    private final String name;
    private final Process process;
    private final BufferedWriter requests;
    private final BufferedReader answers;

    private Contestant(String name, Process process) {
        this.name = name;
        this.process = process;
        this.requests = process.outputWriter(StandardCharsets.UTF_8);
        this.answers = process.inputReader(StandardCharsets.UTF_8);
    }

    static Contestant start(String name, List<String> command) throws IOException {
        return new Contestant(
                name,
                new ProcessBuilder(command)
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start());
    }

    String name() {
        return name;
    }

    String version() throws IOException {
        return ask("version");
    }

    void load(Path conditions) throws IOException {
        String answer = ask("load " + conditions.toAbsolutePath());
        if (!answer.equals("ok")) {
            throw new IOException(name + " could not load the conditions: " + answer);
        }
    }

    double[] give(String work) throws IOException {
        return numbers(ask("give " + work));
    }

    Spent time(String work, int milliseconds) throws IOException {
        double[] spent = numbers(ask("time " + work + " " + milliseconds));
        return new Spent(spent[0], spent[1]);
    }

    private String ask(String request) throws IOException {
        requests.write(request);
        requests.newLine();
        requests.flush();
        String answer = answers.readLine();
        if (answer == null) {
            throw new IOException(
                    name + " ended when asked to " + request + "; it needs what docs/performance.md lists");
        }
        return answer;
    }

    private static double[] numbers(String answer) {
        return Arrays.stream(answer.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    @Override
    public void close() throws IOException {
        process.destroy();
        requests.close();
    }
}
