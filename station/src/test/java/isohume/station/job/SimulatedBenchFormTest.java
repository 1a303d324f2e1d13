// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import isohume.device.sheet.Sheet;
import isohume.device.sheet.SheetError;
import isohume.simulator.BenchParameters;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The published schema, the description and the reader of simulated benches say the same. */
class SimulatedBenchFormTest {
    private static final Path TREE = Path.of("..");
    private static final Set<String> PAIRED =
            Set.of("hold-flow", "change-flow", "saturator-lowest", "saturator-highest"); // each other's limits

    private final String published = Files.readString(TREE.resolve("docs/schemas/simulated-bench.schema.json"));
    private final String description = Files.readString(TREE.resolve("docs/formats/simulated-bench.md"));
    private final Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(published);

    /** A number that may be written, with the sections around it. */
    private record Place(List<String> sections, String key, double least, double most) {
        String yaml(double value) {
            StringBuilder text = new StringBuilder();
            String indent = "";
            for (String section : sections) {
                text.append(indent).append(section).append(":\n");
                indent += "  ";
                if (section.equals("transmitters")) {
                    text.append("  - id: B-2077\n");
                    indent = "    ";
                }
            }
            return text.append(indent)
                    .append(key)
                    .append(": ")
                    .append(value)
                    .append('\n')
                    .toString();
        }
    }

    SimulatedBenchFormTest() throws IOException {}

    private List<Place> places() throws IOException {
        List<Place> places = new ArrayList<>();
        gather(JsonMapper.builder().build().readTree(published).get("properties"), List.of(), places);
        return places;
    }

    private static void gather(JsonNode properties, List<String> sections, List<Place> places) {
        for (var property : properties.properties()) {
            JsonNode node = property.getValue();
            List<String> inside = new ArrayList<>(sections);
            inside.add(property.getKey());
            if (node.path("type").asText().equals("number")) {
                places.add(new Place(
                        sections,
                        property.getKey(),
                        node.get("minimum").doubleValue(),
                        node.get("maximum").doubleValue()));
            } else if (node.has("items")) {
                gather(node.get("items").get("properties"), inside, places);
            } else if (node.has("properties")) {
                gather(node.get("properties"), inside, places);
            }
        }
    }

    private static BenchParameters read(String yaml) {
        return SimulatedBenchSheet.read(Sheet.parse(yaml, "bench.yaml"));
    }

    private String finds(String yaml) {
        StringBuilder found = new StringBuilder();
        schema.validate(yaml, InputFormat.YAML)
                .forEach(error -> found.append(error).append('\n'));
        return found.toString();
    }

    @Test
    void what_the_schema_allows_is_read_and_nothing_beyond() throws IOException {
        assertEquals(77, places().size());
        for (Place place : places()) {
            double beyond = 1e-3 * (place.most() - place.least());
            for (double outside : new double[] {place.least() - beyond, place.most() + beyond}) {
                assertNotEquals("", finds(place.yaml(outside)), place.yaml(outside));
                assertThrows(SheetError.class, () -> read(place.yaml(outside)), place.yaml(outside));
            }
            if (!PAIRED.contains(place.key())) {
                BenchParameters least = read(place.yaml(place.least()));
                assertNotEquals(least, read(place.yaml(place.most())), place + " changes nothing");
            }
            assertEquals("", finds(place.yaml(place.most())));
        }
    }

    @Test
    void the_description_has_the_keys_and_ranges_of_the_schema() throws IOException {
        Set<String> described = new HashSet<>();
        Matcher row = Pattern.compile("(?m)^\\| `([a-z-]+)` \\| [^|]+ \\| .*? \\| (\\S+) \\| (\\S+) \\|")
                .matcher(description);
        while (row.find()) {
            boolean least = !row.group(2).startsWith("`"); // otherwise it is the value of another key
            described.add(row.group(1) + (least ? " " + Double.valueOf(row.group(2)) : "") + " to "
                    + Double.valueOf(row.group(3)));
        }
        for (Place place : places()) {
            String range = " to " + place.most();
            assertTrue(
                    described.contains(place.key() + " " + place.least() + range)
                            || described.contains(place.key() + range)
                            || place.key().equals("scatter"), // in the text above the tables
                    place + " is not described so");
        }
    }

    @Test
    void the_benches_that_come_along_follow_the_schema_and_differ() throws IOException {
        Set<BenchParameters> benches = new HashSet<>();
        List<Path> files;
        try (var all = Files.list(TREE.resolve("examples/benches"))) {
            files = all.sorted().toList();
        }
        for (Path file : files) {
            assertEquals("", finds(Files.readString(file)), file.toString());
            assertTrue(Files.readString(file).startsWith("# "), file + " does not say what it is like");
            benches.add(SimulatedBenchSheet.read(file));
        }
        assertEquals(files.size(), benches.size());
        assertTrue(files.size() >= 6, files.toString());
    }
}
