// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.uncertainty.fit.Estimate;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is foretold beside what a record that was not made here goes on to do; {@code step-response.csv} has its source. */
class StepResponseTest {
    private static final double END = 80; // of the record without noise
    private static final double FITTED = 79.96436632; // by scipy, of the whole record
    private static final double U_FITTED = 0.011547223;

    private final List<double[]> rows = rows();
    private final Tail tail = new Tail(10);
    private final Lagged driver = new Lagged();

    private static List<double[]> rows() {
        try (InputStream csv =
                Objects.requireNonNull(StepResponseTest.class.getResourceAsStream("step-response.csv"))) {
            return new String(csv.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isEmpty() && Character.isDigit(line.charAt(0)))
                    .map(line -> List.of(line.split(",")).stream()
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
        } catch (IOException lost) {
            throw new java.io.UncheckedIOException(lost);
        }
    }

    /** With a driver that stepped at 0 from 20 to 80, of which nothing is held to come late. */
    private Outlook after(int seconds) {
        for (double[] row : rows) {
            if (row[0] <= seconds) {
                driver.take(row[0], END);
                tail.take(row[0], row[2], row[2]);
            }
        }
        return tail.outlook(Owed.nothing().and(() -> 0.0, driver), 0, 0).orElseThrow();
    }

    @Test
    void the_record_is_whole() {
        assertEquals(31, rows.size());
        assertEquals(79.9236419719, rows.getLast()[1]);
    }

    @ParameterizedTest(name = "after {0} s")
    @ValueSource(ints = {150, 180, 210, 240, 270, 300})
    void what_is_foretold_to_come_is_what_came(int seconds) {
        Estimate toCome = after(seconds).toCome();
        double came = 60 * Math.exp(-seconds / 45.0); // the record's own formula
        double off = toCome.value() - came;
        assertTrue(
                Math.abs(off) <= 2 * toCome.standardUncertainty(),
                toCome + " was foretold, " + came + " came after " + seconds + " s");
        assertTrue(toCome.standardUncertainty() < 40, toCome + " says less than the step itself");
    }

    @ParameterizedTest(name = "after {0} s")
    @ValueSource(ints = {150, 180, 210})
    void what_the_next_minute_is_foretold_to_bring_is_what_the_record_shows(int seconds) {
        Estimate minute = after(seconds).during(Duration.ofMinutes(1));
        double came = rows.get(seconds / 10 + 6)[1] - rows.get(seconds / 10)[1];
        assertTrue(
                Math.abs(minute.value() - came) <= 2 * minute.standardUncertainty(),
                minute + " was foretold, " + came + " came in the minute after " + seconds + " s");
    }

    @Test
    void where_it_ends_agrees_with_a_fit_by_others() {
        Outlook all = after(300);
        Estimate toCome = all.toComeFromMeanOver(Duration.ofSeconds(60));
        double mean = rows.subList(25, 31).stream()
                .mapToDouble(row -> row[2])
                .average()
                .orElseThrow();
        double end = mean + toCome.value();
        double together = Math.hypot(U_FITTED, Math.hypot(toCome.standardUncertainty(), 0.042 / Math.sqrt(6)));
        assertTrue(Math.abs(end - FITTED) <= 2 * together, end + " here, " + FITTED + " by scipy");
    }
}
