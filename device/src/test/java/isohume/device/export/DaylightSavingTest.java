// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import isohume.device.export.Understanding.InDoubt;
import isohume.device.export.Understanding.Understood;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The steps of 2026 in Central Europe, 29 March and 25 October at 01:00 UTC, are those of directive 2000/84/EC. */
class DaylightSavingTest {
    private static final String SPRING = "2026-03-28T22:00:00Z";
    private static final String AUTUMN = "2026-10-24T18:00:00Z";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        SPRING + ", 5, Europe/Berlin, FOLLOWS",
        SPRING + ", 60, Europe/Berlin, FOLLOWS",
        SPRING + ", 5, +01:00, STANDARD",
        AUTUMN + ", 5, Europe/Berlin, FOLLOWS",
        AUTUMN + ", 15, Europe/Berlin, FOLLOWS",
        AUTUMN + ", 60, Europe/Berlin, FOLLOWS",
    })
    void the_rows_show_what_the_clock_did(String first, int minutes, String loggers, ClockHabit habit)
            throws IOException {
        Understood read = assertInstanceOf(Understood.class, read(first, minutes, loggers, Map.of()));
        assertEquals(Optional.of(habit), read.profile().times().clock());
        assertEquals(
                1,
                read.findings().stream()
                        .filter(f -> f.kind() == Finding.Kind.DAYLIGHT_SAVING)
                        .count());
        assertInstants(read, first, minutes);
    }

    @Test
    void an_hour_that_is_there_once_in_autumn_is_asked_about() throws IOException {
        InDoubt doubt = assertInstanceOf(InDoubt.class, read(AUTUMN, 5, "+01:00", Map.of()));
        assertEquals("clock", doubt.questions().getFirst().key());
        Understood read = assertInstanceOf(Understood.class, read(AUTUMN, 5, "+01:00", Map.of("clock", "standard")));
        assertInstants(read, AUTUMN, 5);
        Understood summer = assertInstanceOf(Understood.class, read(AUTUMN, 5, "+02:00", Map.of("clock", "daylight")));
        assertInstants(summer, AUTUMN, 5);
    }

    @Test
    void away_from_the_steps_nothing_is_said_of_them() throws IOException {
        Understood read =
                assertInstanceOf(Understood.class, read("2026-07-01T00:00:00Z", 5, "Europe/Berlin", Map.of()));
        assertEquals(Optional.empty(), read.profile().times().clock());
        assertInstants(read, "2026-07-01T00:00:00Z", 5);
    }

    private static void assertInstants(Understood read, String first, int minutes) {
        for (int row = 0; row < read.table().size(); row++) {
            assertEquals(
                    Instant.parse(first).plus(Duration.ofMinutes((long) row * minutes)),
                    read.table().at(row));
        }
        assertEquals(Duration.ofMinutes(minutes), read.table().interval());
    }

    /** Twelve hours of a logger whose clock is that of {@code loggers}, said to be in Berlin. */
    private Understanding read(String first, int minutes, String loggers, Map<String, String> more) throws IOException {
        StringBuilder text = new StringBuilder("Time;Temp [°C]\n");
        DateTimeFormatter format = DateTimeFormatter.ofPattern("dd.MM.yyyy HH:mm:ss", Locale.ROOT);
        for (int row = 0; row < 720 / minutes; row++) {
            Instant at = Instant.parse(first).plus(Duration.ofMinutes((long) row * minutes));
            text.append(format.format(at.atZone(ZoneId.of(loggers))))
                    .append(";20.")
                    .append(row % 10)
                    .append('\n');
        }
        Path file = folder.resolve("step.csv");
        Files.writeString(file, text, StandardCharsets.UTF_8);
        Map<String, String> answers = new HashMap<>(more);
        answers.put("zone", "Europe/Berlin");
        return Export.of(file).understand(Answers.of(answers));
    }
}
