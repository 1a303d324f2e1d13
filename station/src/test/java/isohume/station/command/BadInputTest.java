// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is wrong with what is handed in: a message that says where, what and what to do, and nothing half done. */
class BadInputTest {
    private static final Path EXAMPLE = Path.of("..", "examples", "archive-store");
    private static final int LINE = 5; // in which a cell is spoilt

    @TempDir
    Path folder;

    @BeforeEach
    void copyTheExample() throws IOException {
        for (String name : new String[] {"plan.yaml", "bench.yaml", "readings.csv"}) {
            Files.copy(EXAMPLE.resolve(name), folder.resolve(name));
        }
    }

    @Test
    void a_point_that_the_bench_cannot_reach_is_named_with_the_nearest_that_it_can() throws IOException {
        change("plan.yaml", text -> text.replace("[30, 40,", "[4, 40,"));
        assertRefused("plan.yaml:", "point 1: 4.0 % RH at 23.0 °C cannot be reached", "the nearest is 10.0 % RH");
    }

    @Test
    void a_yaml_error_is_told_with_line_and_column() throws IOException {
        change("plan.yaml", text -> text.replace("address: [Old Granary 1, 00400", "address: [Old Granary 1, [00400"));
        assertRefused("plan.yaml:", ";");
    }

    @Test
    void a_text_where_the_plan_needs_a_number_is_told_with_its_unit() throws IOException {
        change("plan.yaml", text -> text.replace("temperature: 23,", "temperature: warm,"));
        assertRefused("plan.yaml:", "temperature is \"warm\"", "a number in °C is needed here");
    }

    @Test
    void a_misspelt_key_is_told_with_the_one_that_was_meant() throws IOException {
        change("bench.yaml", text -> text.replace("    drift: 0.05", "    driift: 0.05"));
        assertRefused("bench.yaml:", "drift is missing", "is that what driift was meant to be?");
    }

    @Test
    void a_decimal_comma_in_quotation_marks_is_told_how_to_write() throws IOException {
        changeLine(line -> line.replaceFirst(",water,([0-9]+)\\.([0-9]+),", ",water,\"$1,$2\","));
        assertRefused("readings.csv:5:4: dew_point is", "write the decimal point as a point");
    }

    @Test
    void a_bare_decimal_comma_is_suspected_where_a_line_has_a_cell_too_many() throws IOException {
        changeLine(line -> line.replaceFirst(",water,([0-9]+)\\.", ",water,$1,"));
        assertRefused("readings.csv:5:", "is there a decimal comma in a number?");
    }

    @Test
    void a_missing_column_is_named() throws IOException {
        change("readings.csv", text -> text.replaceAll("(?m)^(([^,]*,){3})[^,]*,", "$1"));
        assertRefused("readings.csv:1: the column dew_point [°C] is missing; add it");
    }

    @Test
    void a_text_where_a_number_should_be_is_told_with_its_unit() throws IOException {
        changeLine(line -> line.replaceFirst(",water,[^,]+,", ",water,cold,"));
        assertRefused("readings.csv:5:4: dew_point is \"cold\"; a number in °C is needed here");
    }

    @Test
    void not_a_number_is_not_taken_for_one() throws IOException {
        changeLine(line -> line.replaceFirst(",water,[^,]+,", ",water,NaN,"));
        assertRefused("readings.csv:5:4: dew_point is \"NaN\"", "a finite one");
    }

    @Test
    void a_time_that_goes_backwards_is_told_with_the_one_before() throws IOException {
        changeLine(line -> line.replaceFirst("T08:", "T06:"));
        assertRefused("readings.csv:5:1: the time", "is before the one above", "was a clock set back?");
    }

    @Test
    void a_changed_deposit_within_a_point_is_refused() throws IOException {
        changeLine(line -> line.replace(",water,", ",ice,"));
        assertRefused(
                "readings.csv:5: the deposit changes to ice within point 1", "keep the readings over one deposit");
    }

    @Test
    void a_point_that_comes_back_is_refused() throws IOException {
        changeLine(line -> line.replaceFirst("\\+02:00,1,", "+02:00,2,"));
        assertRefused("readings.csv:6: point 1 comes back after point 2", "a point of its own");
    }

    @Test
    void an_empty_file_is_told_what_it_lacks() throws IOException {
        change("readings.csv", text -> "");
        assertRefused("readings.csv: the file is empty", "a line of headings");
    }

    @Test
    void an_empty_plan_is_told_to_be_one() throws IOException {
        change("plan.yaml", text -> "");
        assertRefused("plan.yaml");
    }

    @Test
    void a_file_of_200_megabytes_is_refused_at_once() throws IOException {
        for (String name : new String[] {"readings.csv", "plan.yaml"}) {
            try (RandomAccessFile large =
                    new RandomAccessFile(folder.resolve(name).toFile(), "rw")) {
                large.setLength(200_000_000);
            }
            assertTimeoutPreemptively(Duration.ofSeconds(10), () -> assertRefused(name + ": the ", "MB"));
            Files.copy(EXAMPLE.resolve(name), folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    @Test
    void a_missing_file_is_named() throws IOException {
        Files.delete(folder.resolve("readings.csv"));
        assertRefused("readings.csv: there is no such file; check the name and the folder");
    }

    @Test
    void a_missing_bench_is_named() throws IOException {
        Files.delete(folder.resolve("bench.yaml"));
        assertRefused("bench.yaml: there is no such file");
    }

    @Test
    void a_folder_is_no_plan() {
        Said said = Said.by(
                "evaluate",
                "--plan",
                folder,
                "--readings",
                folder.resolve("readings.csv"),
                "--out",
                folder.resolve("out"));
        assertEquals(1, said.code());
        assertFalse(said.messages().isBlank());
        assertTrue(Files.notExists(folder.resolve("out")));
    }

    @Test
    void an_out_that_is_a_file_is_left_as_it_is() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "mine");
        Said said = evaluate(file);
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("taken is there already and is not a folder"), said.messages());
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void an_out_within_a_file_is_refused() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "mine");
        Said said = evaluate(file.resolve("below"));
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("taken"), said.messages());
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void an_out_that_may_not_be_written_is_said_to_be_so() throws IOException {
        Path closed = Files.createDirectory(folder.resolve("closed"));
        assumeTrue(closed.toFile().setWritable(false) && !Files.isWritable(closed), "this user may write everywhere");
        Said said = evaluate(closed.resolve("out"));
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("may not be read or written"), said.messages());
    }

    @Test
    void a_missing_option_is_wrong_use() {
        Said nowhere = Said.by("evaluate", "--plan", folder.resolve("plan.yaml"));
        assertEquals(2, nowhere.code());
        assertTrue(nowhere.messages().contains("--out"), nowhere.messages());
        Said said = Said.by("evaluate", "--plan", folder.resolve("plan.yaml"), "--out", folder.resolve("out"));
        assertEquals(2, said.code());
        assertTrue(said.messages().contains("--readings"), said.messages());
        assertTrue(said.messages().contains("“isohume evaluate --help” tells how it is used"), said.messages());
    }

    @Test
    void a_port_that_there_cannot_be_is_wrong_use_wherever_it_is_given() {
        for (String command : new String[] {"demo", "serve", "simulate"}) {
            Said said = Said.by(command, "--port", "99999");
            assertEquals(2, said.code(), command);
            assertTrue(said.messages().contains("a port is from 0 to 65535, was 99999"), said.messages());
        }
    }

    @Test
    void a_port_that_another_program_has_is_told_before_anything_is_begun() throws IOException {
        try (var taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String port = String.valueOf(taken.getLocalPort());
            Path data = folder.resolve("never");
            for (String command : new String[] {"demo", "serve"}) {
                Said said = Said.by(command, "--port", port, "--data", data.toString());
                assertEquals(1, said.code(), command);
                assertTrue(said.messages().contains("cannot be served at port " + port), said.messages());
                assertTrue(said.messages().contains("--port"), said.messages());
                assertFalse(Files.exists(data), command);
            }
        }
    }

    @Test
    void a_description_that_is_to_go_where_no_folder_is_names_the_folder() {
        Said said = Said.by(
                "device", "new", "text", "--out", folder.resolve("nowhere").resolve("x.yaml"));
        assertEquals(1, said.code());
        assertTrue(said.messages().contains("there is no file " + folder.resolve("nowhere") + ";"), said.messages());
    }

    @Test
    void a_command_that_there_is_not_is_wrong_use() {
        Said said = Said.by("evalute");
        assertEquals(2, said.code());
        assertTrue(said.messages().contains("evalute"), said.messages());
    }

    private void assertRefused(String... parts) throws IOException {
        Set<String> before = files();
        Said said = evaluate(folder.resolve("out"));
        assertEquals(1, said.code(), said.messages());
        for (String part : parts) {
            assertTrue(said.messages().contains(part), () -> "“" + part + "” is not in: " + said.messages());
        }
        assertFalse(said.messages().contains("Exception"), said.messages());
        assertEquals("", said.answer());
        assertEquals(before, files());
    }

    private Said evaluate(Path out) {
        return Said.by(
                "evaluate",
                "--plan",
                folder.resolve("plan.yaml"),
                "--readings",
                folder.resolve("readings.csv"),
                "--out",
                out);
    }

    private Set<String> files() throws IOException {
        Set<String> names = new TreeSet<>();
        try (var all = Files.walk(folder)) {
            all.forEach(path -> names.add(path.toString()));
        }
        return names;
    }

    private void change(String name, UnaryOperator<String> change) throws IOException {
        Path file = folder.resolve(name);
        String before = Files.readString(file);
        String after = change.apply(before);
        assertFalse(after.equals(before), "the test changes nothing");
        Files.writeString(file, after);
    }

    private void changeLine(UnaryOperator<String> change) throws IOException {
        change("readings.csv", text -> {
            String[] lines = text.split("\n");
            lines[LINE - 1] = change.apply(lines[LINE - 1]);
            return String.join("\n", lines) + "\n";
        });
    }
}
