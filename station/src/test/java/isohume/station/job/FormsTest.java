// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import isohume.device.sheet.SheetError;
import isohume.run.entry.DisplayedChannel;
import isohume.run.watch.Fault;
import isohume.run.watch.Measure;
import isohume.run.watch.Policy;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plans and benches: what the reader takes, the published schemas take, and what they refuse the reader refuses. */
class FormsTest {
    private static final Path TREE = Path.of("..");
    private static final Path SAMPLES = TREE.resolve("station/src/main/resources/isohume/station/demo");

    private final String plan = Files.readString(SAMPLES.resolve("plan.yaml"));
    private final String bench = Files.readString(SAMPLES.resolve("bench.yaml"));
    private final Schema plans = schema("plan");
    private final Schema benches = schema("bench");

    FormsTest() throws IOException {}

    @Test
    void the_demonstrations_plan_and_bench_are_read_and_follow_their_schemas() {
        assertEquals(15, read(plan, bench).plan().points().size());
        assertEquals("", finds(plans, plan));
        assertEquals("", finds(benches, bench));
    }

    @Test
    void the_handheld_examples_plan_and_bench_are_read_and_follow_their_schemas() throws IOException {
        Path example = TREE.resolve("examples/handheld");
        Worksheet read = Worksheet.read(example.resolve("plan.yaml"));
        assertEquals(
                List.of("C-3310/relative_humidity", "C-3310/temperature"),
                read.displays().stream().map(DisplayedChannel::id).toList());
        assertEquals(
                List.of("A-1042/relative_humidity", "A-1042/temperature"),
                read.roles().instruments());
        assertEquals("", finds(plans, Files.readString(example.resolve("plan.yaml"))));
        assertEquals("", finds(benches, Files.readString(example.resolve("bench.yaml"))));
    }

    @Test
    void an_empty_display_is_read_as_usual() {
        String handheld = plan.replace("device: C-3310.yaml", "display: {}");
        DisplayedChannel first = read(handheld, bench).displays().getFirst();
        assertEquals(
                new DisplayedChannel(
                        "C-3310/relative_humidity", new BigDecimal("0.1"), Duration.ofSeconds(2), 5, 3.0, 0),
                first);
        assertEquals("", finds(plans, handheld));
    }

    @Test
    void an_instrument_is_read_by_its_device_or_by_a_person_and_not_by_both() {
        String both = plan.replace("device: C-3310.yaml", "device: C-3310.yaml\n    display: {}");
        SheetError refused = assertThrows(SheetError.class, () -> read(both, bench));
        assertTrue(String.valueOf(refused.getMessage()).contains("by its device already"), refused.getMessage());
        assertNotEquals("", finds(plans, both));
    }

    @Test
    void the_plan_in_the_description_is_read_and_follows_the_schema() throws IOException {
        Matcher fenced = Pattern.compile("```yaml\\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(TREE.resolve("docs/formats/plan.md")));
        assertTrue(fenced.find(), "no example in the description");
        assertEquals(6, read(fenced.group(1), bench).plan().points().size());
        assertEquals("", finds(plans, fenced.group(1)));
    }

    @Test
    void the_worked_example_is_read_and_follows_the_schemas() throws IOException {
        String own = Files.readString(TREE.resolve("examples/archive-store/plan.yaml"));
        String its = Files.readString(TREE.resolve("examples/archive-store/bench.yaml"));
        assertEquals("seen by the operator", read(own, its).depositBy().orElseThrow());
        assertEquals(8, read(own, its).plan().points().size());
        assertEquals("", finds(plans, own));
        assertEquals("", finds(benches, its));
    }

    @Test
    void what_may_be_left_out_may_be_left_out() {
        String shorter = plan.replaceAll("  formulation: .*\n", "").replaceAll("    device: .*\n", "");
        assertEquals(15, read(shorter, bench).plan().points().size());
        assertEquals("", finds(plans, shorter));
        String bare = bench.replaceAll("(?s)devices:.*?references:\n  dew", "references:\n  dew");
        assertTrue(read(shorter, bare).devices().isEmpty());
        assertEquals("", finds(benches, bare));
    }

    private static final String DERIVED = """
                  dew_point: {derived-from: [relative_humidity, temperature], below-zero: frost, tolerance: 1, tolerance-from: maker}
            """;

    private String withDewPoint(String line) {
        return plan.replaceFirst("(?m)^( +)temperature: .*resolution.*$", "$0\n$1" + line.strip());
    }

    @Test
    void a_dew_point_can_be_derived_and_the_run_does_not_wait_for_it() {
        Worksheet read = read(withDewPoint(DERIVED), bench);
        assertEquals("", finds(plans, withDewPoint(DERIVED)));
        assertEquals(3, read.job().items().getFirst().channels().size(), "two that are read and one that is derived");
        assertTrue(read.roles().instruments().stream().noneMatch(id -> id.endsWith("dew_point")));
        assertTrue(read.readChannels().stream().noneMatch(id -> id.endsWith("dew_point")));
    }

    @Test
    void a_dew_point_that_is_shown_is_kept_though_the_run_does_not_wait_for_it() {
        String shown =
                withDewPoint("dew_point: {resolution: 0.1, below-zero: dew, tolerance: 1, tolerance-from: maker}");
        Worksheet read = read(shown, bench);
        assertEquals("", finds(plans, shown));
        assertTrue(read.roles().instruments().stream().noneMatch(id -> id.endsWith("dew_point")));
        assertTrue(read.readChannels().getLast().endsWith("/temperature"));
        var dew = read.readChannels().stream().filter(id -> id.endsWith("/dew_point"));
        assertEquals(1, dew.count());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'below-zero: frost, '| ''| below-zero is missing",
                "frost| rime| below-zero",
                "'[relative_humidity, temperature]'| '[relative_humidity]'| does not follow from relative_humidity",
                "'[relative_humidity, temperature]'| '[dew_point, temperature]'| does not follow from dew_point",
                "'tolerance: 1,'| 'tolerance: 1, resolution: 0.1,'| resolution",
            })
    void a_derived_channel_that_says_too_little_or_too_much_is_refused(String good, String bad, String told) {
        String wrong = withDewPoint(DERIVED.replace(good, bad == null ? "" : bad));
        assertTrue(refusal(wrong, bench).contains(told), () -> refusal(wrong, bench));
        assertNotEquals("", finds(plans, wrong));
    }

    @Test
    void a_dew_point_of_an_instrument_without_a_temperature_cannot_be_derived() {
        String alone = withDewPoint(DERIVED).replaceFirst("(?m)^ +temperature: .*resolution.*$\n", "");
        assertTrue(refusal(alone, bench).contains("are not all read"), () -> refusal(alone, bench));
    }

    @Test
    void faults_watch_and_hooks_of_every_kind_are_read_and_follow_the_schemas() {
        String faults = "faults:\n"
                + Arrays.stream(Fault.values())
                        .map(f -> "  " + f.key() + ": {wait-minutes: 3, then: "
                                + (f == Fault.OVER_TEMPERATURE ? "stop" : "skip") + "}\n")
                        .collect(Collectors.joining());
        String watch = """
                watch:
                  hottest: 61
                  water: 20
                  humidity: 2
                  temperature: 0.3
                  agree: [{channels: [thermometer/temperature, chamber/temperature], within: 0.5}]
                  signs: {the door is open: door-open, fan stopped: over-temperature}
                  still-minutes: 4
                  astray-minutes: 15
                  undecided-minutes: 20
                  held-minutes: 60
                  faults: {silent: {wait-minutes: 1, then: hold}, frozen: {then: stop-after-point}}
                notify: {command: [tell], webhook: "http://127.0.0.1:9000/x", about: [ended]}
                """;
        Worksheet read = read(plan + faults, bench + watch);
        assertEquals(61, read.bounds().hottest());
        assertEquals(2, read.hooks().size());
        assertEquals(
                new Policy(Duration.ofMinutes(3), Measure.SKIP),
                read.policies().of(Fault.SILENT, Duration.ZERO),
                "the plan outweighs its bench");
        assertEquals("", finds(plans, plan + faults));
        assertEquals("", finds(benches, bench + watch));
        assertEquals(60, read(plan, bench).bounds().hottest(), "10 K above the reach");
    }

    @ParameterizedTest
    @CsvSource({
        "'faults: {over-temperature: {then: hold}}'",
        "'faults: {silent: {then: sleep}}'",
        "'faults: {silence: {then: hold}}'",
        "'faults: {silent: {wait-minutes: -1, then: hold}}'",
    })
    void wrong_faults_are_refused_by_reader_and_schema(String faults) {
        assertThrows(SheetError.class, () -> read(plan + faults + "\n", bench).plan());
        assertNotEquals("", finds(plans, plan + faults + "\n"));
    }

    @Test
    void rules_of_every_kind_are_read_and_follow_the_schema() {
        String ruled = plan + """
                rules:
                  interval-seconds: 5
                  window-minutes: 0.5
                  soak-minutes: 0
                  temperature-soak-minutes: 1.5
                  readings: 12
                  longest-minutes: 60
                  patience-seconds: 30
                  settled:
                    temperature: {band: 0.3, spread: 0.02, drift: 0.01}
                    dew-point: {spread: 0.02}
                    humidity: {band: 1}
                    humidity-difference: {drift: 0.05}
                    temperature-difference: {}
                """;
        assertEquals(12, read(ruled, bench).plan().rules().mostReadings());
        assertEquals("", finds(plans, ruled));
    }

    @Test
    void a_bench_that_says_everything_of_itself_is_read_and_follows_the_schema() {
        String reach = "  room-temperature: 21\n  surface-below: 0.4\n"
                + "  surface-share: 0.05\n  surface-below-while-changing: 2\n  line-above: 8\n  driest-frost-point";
        String pace = "pace: {humidity-minutes: 2, wall-minutes: 8, kelvin-per-minute: 1, temperature-minutes: 6}\n";
        String full = bench.replace("  driest-frost-point", reach).replace("supplies:", pace + "supplies:");
        assertTrue(read(plan, full).capacity().reach().surfaces().stated());
        assertEquals("", finds(benches, full));
    }

    @Test
    void what_an_order_has_to_keep_to_and_what_an_instrument_measures_are_read() {
        String more = plan.replace("points:", "order: {wet-above: 75, wet: last_at_temperature}\npoints:")
                .replace("resolution: 0.01, tolerance: 2.0", "range: [5, 95], resolution: 0.01, tolerance: 2.0");
        assertEquals(75, read(more, bench).ordering().constraints().wetAbove());
        assertTrue(read(more, bench).capacity().reach().ranges().stream().anyMatch(r -> r.of().equals("A-1042")));
        assertEquals("", finds(plans, more));
    }

    @Test
    void the_files_with_the_readings_may_be_named() {
        String named = plan + """
                recorded:
                  reference: {file: reference.csv, profile: reference.yaml}
                  deposit: ice
                  instruments:
                    - {id: A-1042, file: a.csv, profile: loggers.yml, clock: same±30}
                    - {id: B-2077, file: b.csv}
                """;
        Recorded recorded = read(named, bench).recorded().orElseThrow();
        assertEquals("reference.yaml", recorded.reference().profile().orElseThrow());
        assertEquals(new Clock.Same(Duration.ofSeconds(30)), recorded.clocks().get("A-1042"));
        assertEquals(
                new Recorded.Source("b.csv", Optional.empty()),
                recorded.instruments().get("B-2077"));
        assertEquals("", finds(plans, named));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "bench: bench.yaml            | bench:",
                "points:                      | pionts:",
                "operator: M. Example         | operators: M. Example",
                "decision: guard_band_four    | decision: perhaps_four",
                "formulation: sonntag_1990    | formulation: magnus",
                "id: B-2077                   | id: B/2077",
                "received: 2026-02-27         | received: 27.02.2026",
                "address: [Mill Lane 4, 00100 Exampleton] | address: Mill Lane 4",
                "resolution: 0.01, tolerance: 2.0 | resolution: 0, tolerance: 2.0",
                "tolerance: 2.0               | tolerance: -2.0",
                "relative_humidity: {         | humidity: {",
                "temperature: 10, humidity: [25 | temperature: 10, humidity: [0",
                "temperature: 40, humidity: [20 | temperature: 40, humidity: [120",
                "temperature: 40, humidity    | temperature: 400, humidity",
                "temperature: 40, humidity    | temperature: warm, humidity",
                "points:                      | rules: {readings: 1}\\npoints:",
                "points:                      | rules: {soak-minutes: -5}\\npoints:",
                "points:                      | rules: {settled: {humidity: {drift: 0}}}\\npoints:",
                "points:                      | rules: {interval: 10}\\npoints:",
                "points:                      | order: {wet: never}\\npoints:",
                "points:                      | order: {wet-above: 0}\\npoints:",
                "device: C-3310.yaml          | display: {entries: 1}",
                "device: C-3310.yaml          | display: {entries: five}",
                "device: C-3310.yaml          | display: {update-seconds: -1}",
                "device: C-3310.yaml          | display: {update: 2}",
                "device: C-3310.yaml          | display: yes",
                "resolution: 0.01, tolerance: 2.0 | range: [5], resolution: 0.01, tolerance: 2.0",
                "points: | recorded: {reference: {file: r.csv}, instruments: []}\\npoints:",
                "points: | recorded: {reference: {}, instruments: [{id: A-1042, file: l.csv}]}\\npoints:",
                "points: | recorded: {reference: {file: r.csv}, instruments: [{id: A-1042, file: l.csv, clock: late}]}\\npoints:",
                "points: | recorded: {reference: {file: r.csv, profile: r.txt}, instruments: [{id: A-1042, file: l.csv}]}\\npoints:",
                "points: | recorded: {deposit: snow, reference: {file: r.csv}, instruments: [{id: A-1042, file: l.csv}]}\\npoints:",
            })
    void a_spoilt_plan_is_refused_by_both_and_the_reader_names_the_place(String good, String spoilt) {
        String text = spoil(plan, good, spoilt);
        String error = refusal(text, bench);
        assertTrue(error.matches("(?s)plan\\.yaml:\\d+:\\d+: .*"), error);
        assertNotEquals("", finds(plans, text), "the schema takes it");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "humidity: [5, 95]  | humidity: [5]",
                "driest-frost-point | dryest-frost-point",
                "drift: 0.05        | drift: -0.05",
                "k: 2               | k: 0.5",
                "expanded: 0.10     | expanded: 0",
                "due: 2028-09-30    | due: next year",
                "at: 80000,         | ",
                "dew-point:\\n    id | dewpoint:\\n    id",
                "condensate: 0.03   | condensate: -0.03",
                "dry-line: 0.05     | dry-line: 0,05",
                "references: [mirror.yaml, thermometer.yaml] | references: []",
                "volume: 3 | volume: 0",
                "changing: 4 | changes: 4",
                "feed: recirculated | feed: again",
                "water: 80 | water: -1",
                "supplies: | pace: {wall-minutes: -1}\\nsupplies:",
                "driest-frost-point: -28 | surface-share: 2\\n  driest-frost-point: -28",
                "saturator-temperature: [5, 35] | saturator-temperature: 5",
            })
    void a_spoilt_bench_is_refused_by_both_and_the_reader_names_the_place(String good, String spoilt) {
        String text = spoil(bench, good, spoilt == null ? "" : spoilt);
        String error = refusal(plan, text);
        assertTrue(error.matches("(?s)bench\\.yaml:\\d+:\\d+: .*"), error);
        assertNotEquals("", finds(benches, text), "the schema takes it");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "temperature: [5, 50]  | temperature: [50, 5]  | bench | a lower and a higher end",
                "id: B-2077            | id: a-1042            | plan  | called a-1042",
                "received: 2026-02-27  | received: 2026-02-30  | plan  | a date such as",
                "temperature: 40, humidity: [20 | temperature: 60, humidity: [20 | plan | beyond the chamber",
                "temperature: 40, humidity: [20 | temperature: 40, humidity: [95 | plan | the wet air is too dry",
                "points: | recorded: {reference: {file: r.csv}, instruments: [{id: X-1, file: l.csv}]}\\npoints: | plan | the plan has no instrument X-1",
            })
    void what_a_schema_cannot_say_is_refused_by_the_reader_all_the_same(
            String good, String spoilt, String where, String why) {
        boolean inPlan = where.equals("plan");
        String text = spoil(inPlan ? plan : bench, good, spoilt);
        String error = inPlan ? refusal(text, bench) : refusal(plan, text);
        assertTrue(error.contains(why), error);
        assertEquals("", finds(inPlan ? plans : benches, text), "the schema could say it now: move the sample");
    }

    private static String spoil(String text, String good, String spoilt) {
        String from = good.replace("\\n", "\n");
        assertTrue(text.contains(from), "the sample has changed: no " + from);
        return text.replace(from, spoilt.replace("\\n", "\n"));
    }

    private static Worksheet read(String plan, String bench) {
        return Worksheet.read(name -> name.equals("plan.yaml") ? plan : bench, "plan.yaml");
    }

    private static String refusal(String plan, String bench) {
        SheetError error = assertThrows(SheetError.class, () -> {
            Worksheet unused = read(plan, bench);
        });
        return String.valueOf(error.getMessage());
    }

    private static Schema schema(String name) throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(TREE.resolve("docs/schemas/" + name + ".schema.json")));
    }

    private static String finds(Schema schema, String text) {
        try {
            StringBuilder found = new StringBuilder();
            schema.validate(text, InputFormat.YAML)
                    .forEach(error -> found.append(error).append('\n'));
            return found.toString();
        } catch (IllegalArgumentException e) {
            return "not well-formed: " + e.getMessage();
        }
    }
}
