// SPDX-License-Identifier: Apache-2.0
package isohume.run.entry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.errorprone.annotations.CanIgnoreReturnValue;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expectations are worked out by hand from a tolerance of ± 2 % RH and a last digit of 0.1 % RH. */
class PlausibilityTest {
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    private static final DisplayedChannel HANDHELD =
            new DisplayedChannel("H-1/relative_humidity", new BigDecimal("0.1"), Duration.ofSeconds(2), 5, 2, 0);

    private static Appraisal first(String text, double reference) {
        return new Plausibility(HANDHELD, OptionalDouble.of(reference), List.of()).of(text, START);
    }

    private static Appraisal after(List<DisplayEntry> before, String text, double reference, long millis) {
        return new Plausibility(HANDHELD, OptionalDouble.of(reference), before).of(text, START.plusMillis(millis));
    }

    private static DisplayEntry entry(String shown, double reference) {
        return new DisplayEntry(
                7,
                HANDHELD.id(),
                shown,
                START,
                "Ada",
                6,
                OptionalDouble.of(reference),
                "",
                Optional.empty(),
                Optional.empty());
    }

    private static String refused(Appraisal found) {
        return assertInstanceOf(Appraisal.Refused.class, found).why();
    }

    @CanIgnoreReturnValue
    private static Appraisal.Questioned questioned(Appraisal found) {
        return assertInstanceOf(Appraisal.Questioned.class, found);
    }

    @ParameterizedTest
    @ValueSource(strings = {"45.3", "45,3", "44.9", "+45.3"})
    void a_figure_near_the_reference_is_accepted_with_either_decimal_sign(String text) {
        assertEquals(new Appraisal.Accepted(), first(text, 45.1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "abc", "4 5.3", "45..3", "1e3", ".5", "--4.0", "45.", "١٢.٣", "12345678.0"})
    void what_is_no_number_is_refused(String text) {
        assertTrue(refused(first(text, 45)).contains("is no number"));
    }

    @ParameterizedTest
    @CsvSource({"45, no decimals", "45.31, 2 decimals", "45.300, 3 decimals"})
    void a_figure_has_as_many_decimals_as_the_display(String text, String said) {
        assertTrue(refused(first(text, 45)).contains(said));
    }

    @Test
    void the_last_digit_goes_in_the_steps_of_the_display() {
        DisplayedChannel halves =
                new DisplayedChannel("H-1/temperature", new BigDecimal("0.5"), Duration.ZERO, 2, 1, 0);
        Plausibility now = new Plausibility(halves, OptionalDouble.of(23), List.of());
        assertEquals(new Appraisal.Accepted(), now.of("23.5", START));
        assertEquals(new Appraisal.Accepted(), now.of("23.0", START));
        assertTrue(refused(now.of("23.4", START)).contains("steps of 0.5"));
    }

    @Test
    void a_frost_is_typed_with_either_minus_sign() {
        DisplayedChannel cold = new DisplayedChannel("H-1/temperature", new BigDecimal("0.1"), Duration.ZERO, 2, 1, 0);
        Plausibility now = new Plausibility(cold, OptionalDouble.of(-10.2), List.of());
        assertEquals(new Appraisal.Accepted(), now.of("-10.0", START));
        assertEquals(new Appraisal.Accepted(), now.of("\u221210.0", START));
        questioned(now.of("10.0", START));
    }

    /** The update time is 2 s. */
    @Test
    void an_entry_before_the_display_is_renewed_is_too_soon_even_after_one_that_was_taken_back() {
        List<DisplayEntry> before = List.of(entry("45.3", 45.1));
        assertTrue(refused(after(before, "45.3", 45.1, 1900)).contains("Wait 0.1 s"));
        assertEquals(new Appraisal.Accepted(), after(before, "45.3", 45.1, 2000));
        List<DisplayEntry> back = List.of(entry("45.3", 45.1).takenBack("mistyped"));
        assertTrue(refused(after(back, "45.3", 45.1, 1000)).contains("Too soon"));
    }

    /** Three tolerances are 6 % RH; two digits of 51.3 the other way round make 15.3 or 53.1, which lie as far. */
    @Test
    void what_lies_far_from_the_reference_is_questioned_without_a_suggestion_where_no_swap_explains_it() {
        assertEquals(new Appraisal.Accepted(), first("50.2", 45.0));
        Appraisal.Questioned found = questioned(first("51.3", 45.0));
        assertEquals("51.3 lies 6.3 % RH from the reference.", found.why());
        assertEquals(Optional.empty(), found.suggestion());
    }

    @Test
    void two_digits_the_other_way_round_are_suspected() {
        assertEquals(Optional.of("45.3"), questioned(first("54.3", 45.1)).suggestion());
        assertEquals(Optional.of("45,3"), questioned(first("54,3", 45.1)).suggestion());
    }

    /** 47.5 lies 2.4 % RH off, beyond one tolerance and within three; 45.7 lies 0.6 % RH off, within half of one. */
    @Test
    void a_swap_over_the_decimal_sign_is_suspected_once_the_figure_lies_beyond_its_tolerance() {
        assertEquals(Optional.of("45.7"), questioned(first("47.5", 45.1)).suggestion());
        assertEquals(new Appraisal.Accepted(), first("47.9", 45.1), "49.7 is no better");
    }

    /** Half a tolerance is 1 % RH; beside the reference alone 43.5 would pass. */
    @Test
    void a_jump_from_the_entries_before_is_questioned_although_the_reference_would_allow_it() {
        List<DisplayEntry> before = List.of(entry("45.3", 45.1));
        assertEquals(new Appraisal.Accepted(), first("43.5", 45.1));
        assertEquals(
                Optional.of("45.3"),
                questioned(after(before, "43.5", 45.1, 3000)).suggestion());
        assertEquals(new Appraisal.Accepted(), after(before, "46.2", 45.1, 3000));
    }

    @Test
    void what_the_reference_moved_since_is_no_jump() {
        List<DisplayEntry> before = List.of(entry("45.3", 45.1));
        questioned(after(before, "46.9", 45.1, 3000));
        assertEquals(new Appraisal.Accepted(), after(before, "46.9", 46.6, 3000));
    }

    @Test
    void entries_that_were_taken_back_are_no_measure() {
        List<DisplayEntry> before = new ArrayList<>(List.of(entry("54.3", 45.1).takenBack("swapped")));
        assertEquals(new Appraisal.Accepted(), after(before, "45.3", 45.1, 3000));
    }

    @Test
    void an_instrument_that_is_known_to_be_far_off_is_asked_about_once() {
        List<DisplayEntry> before = List.of(entry("55.0", 45.1));
        assertEquals(new Appraisal.Accepted(), after(before, "55.1", 45.1, 3000));
    }

    @Test
    void a_coarse_display_may_flicker_by_some_digits() {
        DisplayedChannel coarse =
                new DisplayedChannel("H-1/relative_humidity", BigDecimal.ONE, Duration.ZERO, 2, 0.5, 0);
        Plausibility now = new Plausibility(coarse, OptionalDouble.of(45), List.of());
        assertEquals(new Appraisal.Accepted(), now.of("50", START));
        questioned(now.of("51", START));
    }

    @Test
    void without_a_reference_and_entries_nothing_is_odd() {
        Plausibility now = new Plausibility(HANDHELD, OptionalDouble.empty(), List.of());
        assertEquals(new Appraisal.Accepted(), now.of("99.9", START));
    }
}
