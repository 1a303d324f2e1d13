// SPDX-License-Identifier: Apache-2.0
package isohume.station;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.openqa.selenium.chrome.ChromeDriver;

/** What on an open page shuts somebody out, by the rules of WCAG 2.2 A and AA that a program can check. */
final class Accessibility {
    private static final String ASK = """
            const done = arguments[arguments.length - 1];
            axe.run({runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']}).then(
                found => done(found.violations.flatMap(v => v.nodes.map(
                    n => v.id + ': ' + n.target.join(' ') + ': ' + n.failureSummary.replace(/\\s+/g, ' ')))),
                broken => done(['' + broken]));
            """;

    private Accessibility() {}

    /** One sentence for each thing; empty when there is nothing to object to. */
    static List<String> objections(ChromeDriver browser) {
        browser.executeScript(script());
        return browser.executeAsyncScript(ASK) instanceof List<?> found
                ? found.stream().map(String::valueOf).toList()
                : List.of("no answer from the rules");
    }

    private static String script() {
        try (InputStream file = Accessibility.class.getResourceAsStream("/axe.min.js")) {
            if (file == null) {
                throw new IllegalStateException("axe.min.js is not on the class path of the tests");
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
