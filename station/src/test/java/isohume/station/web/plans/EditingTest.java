// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.plans;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import isohume.station.demo.HeadlessDemo;
import isohume.station.job.Texts;
import isohume.station.job.Worksheet;
import isohume.station.plan.Shelf;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The editor without a browser: what plain forms send and get back. */
class EditingTest {
    @TempDir
    Path folder;

    private Shelf shelf = new Shelf(Path.of(""), Optional.empty(), bench -> List.of());
    private PlanView view = new PlanView(
            "",
            "",
            "",
            PlanForm.of("", List.of()),
            List.of(),
            List.of(),
            List.of(),
            new io.quarkus.qute.RawString(""),
            false,
            List.of(),
            List.of());

    @BeforeEach
    void openTheDemonstrationsPlan() {
        Worksheet worksheet = Worksheet.read(Texts.packagedWith(HeadlessDemo.class), "plan.yaml");
        shelf = new Shelf(folder.resolve("plans"), Optional.of(worksheet), bench -> List.of());
        view = editing().shown(false);
    }

    private Editing editing() {
        return new Editing(shelf, shelf.plan(Shelf.LOADED).orElseThrow());
    }

    @Test
    void the_plan_is_shown_with_what_each_point_takes() {
        assertEquals(15, view.rows().size());
        assertTrue(
                view.rows().get(6).words().contains("dew point 12.0 °C"),
                view.rows().get(6).words());
        assertTrue(view.map().getValue().contains("beyond the chamber"));
        assertTrue(view.sums().getFirst().contains("Whole plan: about"));
    }

    @Test
    void a_change_in_the_table_is_checked_and_can_be_undone() {
        MultivaluedMap<String, String> sent = sent("check");
        type(sent, "humidity", 12, "95");
        PlanView changed = edit(sent);
        assertEquals("not reachable", changed.rows().get(12).state());
        assertTrue(changed.rows().get(12).words().contains("the wet air is too dry for it"));
        assertEquals(1, changed.form().earlier().size());
        PlanView back = edit(sent("undo"));
        assertEquals("70", back.rows().get(12).humidity());
        assertEquals(0, back.form().earlier().size());
    }

    @Test
    void points_are_added_removed_and_moved_forward() {
        assertEquals(16, edit(sent("add")).rows().size());
        assertEquals(15, edit(sent("remove-1")).rows().size());
        assertEquals("60", view.rows().getFirst().humidity());
        assertEquals("85", edit(sent("earlier-2")).rows().getFirst().humidity());
    }

    @Test
    void what_cannot_be_read_is_named_and_nothing_is_lost() {
        MultivaluedMap<String, String> sent = sent("check");
        type(sent, "temperature", 3, "warm");
        PlanView troubled = edit(sent);
        assertEquals(
                "Point 4: “warm” is no temperature from −60 to 180 °C.",
                troubled.trouble().getFirst());
        assertEquals("warm", troubled.rows().get(3).temperature());
    }

    @Test
    void a_decimal_comma_and_a_true_minus_sign_are_taken() {
        MultivaluedMap<String, String> sent = sent("check");
        type(sent, "humidity", 0, "25,5");
        assertEquals("25.5", edit(sent).rows().getFirst().humidity());
        assertEquals("-5", Typed.plain("−5"));
    }

    @Test
    void a_point_dragged_on_the_dew_point_axis_gets_the_humidity_of_that_dew_point() {
        assertTrue(edit(sent("axis-dew")).form().dew());
        MultivaluedMap<String, String> sent = sent("check");
        sent.putSingle("moved", "7");
        sent.putSingle("at-across", "23.2");
        sent.putSingle("at-up", "12.032"); // 50 % RH at 23 °C, Sonntag and Greenspan, by an independent script
        assertEquals("50", edit(sent).rows().get(6).humidity());
    }

    @Test
    void the_best_order_is_put_in_and_told() {
        PlanView ordered = edit(sent("order"));
        assertTrue(ordered.said().getFirst().contains("No order that keeps to the rules takes less"));
        assertEquals(15, ordered.rows().size());
        assertEquals(15, edit(sent("undo")).rows().size());
        assertEquals("10", view.rows().getFirst().temperature());
    }

    @Test
    void a_plan_is_kept_under_a_new_number_with_its_bench_and_nothing_is_replaced() throws IOException {
        PlanForm form = PlanForm.from(sent("keep"));
        assertEquals(
                "0001-three-temperatures-humidity-up-and-down.yaml", editing().keep(form));
        assertEquals(
                "0002-three-temperatures-humidity-up-and-down.yaml", editing().keep(form));
        try (Stream<Path> files = Files.list(folder.resolve("plans"))) {
            assertEquals(3, files.count());
        }
        assertEquals(3, shelf.list().size());
        assertEquals(
                15,
                shelf.plan("0002-three-temperatures-humidity-up-and-down.yaml")
                        .orElseThrow()
                        .worksheet()
                        .plan()
                        .points()
                        .size());
        Files.writeString(folder.resolve("plans/bench.yaml"), "bench: of somebody else");
        String third = editing().keep(form);
        assertTrue(Files.readString(folder.resolve("plans").resolve(third)).contains("bench: bench-2.yaml"));
        assertEquals("bench: of somebody else", Files.readString(folder.resolve("plans/bench.yaml")));
    }

    @Test
    void a_name_that_is_not_in_the_list_opens_nothing() throws IOException {
        Files.createDirectories(folder.resolve("plans"));
        Files.writeString(folder.resolve("secret.yaml"), "plan: x");
        assertFalse(shelf.plan("../secret.yaml").isPresent());
        assertFalse(shelf.plan("none.yaml").isPresent());
    }

    @Test
    void what_people_type_is_written_out_harmlessly() {
        MultivaluedMap<String, String> sent = sent("check");
        type(sent, "temperature", 0, "<script>");
        assertFalse(edit(sent).map().getValue().contains("<script>"));
    }

    private PlanView edit(MultivaluedMap<String, String> sent) {
        view = editing().edited(PlanForm.from(sent), sent);
        return view;
    }

    private static void type(MultivaluedMap<String, String> sent, String key, int row, String typed) {
        Objects.requireNonNull(sent.get(key)).set(row, typed);
    }

    /** What the page as it is shown would send with one of its buttons. */
    private MultivaluedMap<String, String> sent(String button) {
        MultivaluedMap<String, String> sent = new MultivaluedHashMap<>();
        sent.putSingle("do", button);
        sent.putSingle("was", view.form().state());
        sent.putSingle("earlier", view.form().history());
        sent.putSingle("axis", view.form().dew() ? "dew" : "humidity");
        sent.putSingle("title", view.form().title());
        view.rows().forEach(row -> {
            sent.add("temperature", row.temperature());
            sent.add("humidity", row.humidity());
            sent.add("direction", row.direction());
        });
        return sent;
    }
}
