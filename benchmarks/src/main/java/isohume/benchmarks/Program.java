// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks;

import java.io.IOException;

/** A program that measures: from its arguments to its exit code. */
@FunctionalInterface
public interface Program {
    Report measure(Options options) throws IOException;

    /**
     * Prints the table and writes the JSON; 0 when every bar was met, 1 when not or when it failed, 2 for wrong use.
     *
     * @param more options of this program alone, as they are written, for example {@code --seeds N}
     */
    default int run(String[] arguments, String... more) {
        Options options;
        try {
            options = Options.of(arguments, more);
        } catch (IllegalArgumentException wrong) {
            System.err.println(wrong.getMessage());
            return 2;
        }
        if (Machine.here().busy()) {
            System.err.println("This machine is busy with something else; times by the clock will be too long.");
        }
        try {
            Report report = measure(options);
            System.out.print(report.table());
            if (options.json().isPresent()) {
                report.writeJson(options.json().get());
            }
            return options.quick() ? 0 : report.exitCode();
        } catch (IOException | IllegalStateException | IllegalArgumentException failed) {
            System.err.println(failed.getMessage());
            return 1;
        }
    }
}
