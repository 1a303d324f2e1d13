// SPDX-License-Identifier: Apache-2.0
package isohume.device.recorded;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordedFilesTest {
    private static final String TEXT = """
            time,point,deposit,dew_point [°C],temperature [°C],pressure [Pa],A-1042/relative_humidity [% RH]
            2026-03-31T08:00:00Z,1,water,9.27,20.01,101325,49.8
            """;

    @TempDir
    private Path folder;

    @Test
    void a_file_in_utf_8_is_read_with_or_without_a_mark() throws IOException {
        assertEquals(
                1,
                RecordedReadings.read(file(TEXT.getBytes(StandardCharsets.UTF_8)))
                        .rows()
                        .size());
        assertEquals(
                1,
                RecordedReadings.read(file(("\uFEFF" + TEXT).getBytes(StandardCharsets.UTF_8)))
                        .rows()
                        .size());
    }

    @Test
    void another_encoding_is_refused_at_its_line() throws IOException {
        assertRefused("readings.csv:1: the text is not UTF-8 here", TEXT.getBytes(StandardCharsets.ISO_8859_1));
        assertRefused("readings.csv:1: the text is not UTF-8 here", TEXT.getBytes(Charset.forName("windows-1252")));
        assertRefused("readings.csv: the text is UTF-16", ("\uFEFF" + TEXT).getBytes(StandardCharsets.UTF_16LE));
        assertRefused("readings.csv:1: the file is not a text", TEXT.getBytes(StandardCharsets.UTF_16LE));
        byte[] late = (TEXT + "# remark é\n").getBytes(StandardCharsets.UTF_8);
        late[late.length - 3] = 'x'; // the first of the two bytes of é
        assertRefused("readings.csv:3: the text is not UTF-8 here", late);
    }

    @Test
    void what_is_no_text_is_refused() throws IOException {
        assertRefused(
                "readings.csv: the file is a workbook or an archive",
                "PK\u0003\u0004 a sheet".getBytes(StandardCharsets.US_ASCII));
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(TEXT.getBytes(StandardCharsets.UTF_8));
        }
        assertRefused("readings.csv:1: ", packed.toByteArray());
        assertRefused("readings.csv:1: the file is not a text", new byte[1000]);
        assertRefused("readings.csv: the file is empty", new byte[0]);
    }

    @Test
    void a_file_that_is_not_there_or_is_a_folder_says_so() {
        assertMessage("gone.csv: there is no such file", folder.resolve("gone.csv"));
        RecordingRefused refused = assertThrows(RecordingRefused.class, () -> RecordedReadings.read(folder));
        assertEquals(1, refused.errors().size());
    }

    @Test
    void two_hundred_megabytes_are_refused_before_they_are_read() throws IOException {
        Path large = folder.resolve("large.csv");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(200_000_000);
        }
        long start = System.nanoTime();
        assertMessage("large.csv: the file has 200 MB; at most 50 MB are read", large);
        assertTrue(System.nanoTime() - start < 1_000_000_000L);
    }

    @Test
    void two_days_of_seconds_are_kept_in_150_bytes_for_each() throws IOException {
        int rows = 200_000;
        Path days = folder.resolve("days.csv");
        try (var out = Files.newBufferedWriter(days)) {
            out.write(TEXT.lines().findFirst().orElseThrow() + "\n");
            Instant start = Instant.parse("2026-03-31T08:00:00Z");
            for (int i = 0; i < rows; i++) {
                out.write(start.plusSeconds(i) + ",1,water,9." + i % 1000 + ",20.01,101325,49." + i % 777 + "\n");
            }
        }
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        long before = runtime.totalMemory() - runtime.freeMemory();
        RecordedReadings readings = RecordedReadings.read(days);
        System.gc();
        long kept = runtime.totalMemory() - runtime.freeMemory() - before;
        assertEquals(rows, readings.rows().size());
        assertEquals("9.999", readings.rows().get(999).dewPoint().toPlainString());
        assertTrue(kept < 150L * rows, "keeps " + kept + " bytes");
    }

    private Path file(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("readings.csv"), bytes);
    }

    private void assertRefused(String beginning, byte[] bytes) throws IOException {
        assertMessage(beginning, file(bytes));
    }

    private static void assertMessage(String beginning, Path file) {
        RecordingRefused refused = assertThrows(RecordingRefused.class, () -> RecordedReadings.read(file));
        String message = refused.errors().getFirst().message();
        assertTrue(message.startsWith(beginning), message);
    }
}
