// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A table gone through row by row: each row that is evidence is compared here, named with the test that compares it, or
 * named with the reason why it cannot be. {@link #close} fails if one was forgotten. Inputs and rules are no figures to
 * compare; what is from memory is no evidence.
 */
public final class RowByRow implements AutoCloseable {
    private static final double TEN_DIGITS = 1e-9; // what recomputed figures are given to

    private final String table;
    private final Map<String, Printed.Row> open = new LinkedHashMap<>();
    private final List<String> wrong = new ArrayList<>();

    private RowByRow(String table) {
        this.table = table;
        for (Printed.Row row : Printed.table(table)) {
            boolean figure =
                    !row.cells().containsKey("role") || row.text("role").equals("output");
            if (figure && !row.text("provenance").equals("memory")) {
                open.put(row.text("id"), row);
            }
        }
    }

    public static RowByRow of(String table) {
        return new RowByRow(table);
    }

    /** Compares a row's recomputed figures, or its printed ones if it has no others, to ten digits. */
    public void is(String id, double... found) {
        within(TEN_DIGITS, id, found);
    }

    /** The same to so many parts of the figure, for rows that are given to fewer digits. */
    public void within(double relative, String id, double... found) {
        double[] expected = expected(id);
        assertEquals(expected.length, found.length, id);
        for (int i = 0; i < found.length; i++) {
            compare(id, expected[i], found[i], relative * Math.abs(expected[i]) + Double.MIN_NORMAL);
        }
        settle(id);
    }

    /** Compares a row whose figure is zero, or a probability near it. */
    public void near(double absolute, String id, double found) {
        compare(id, expected(id)[0], found, absolute);
        settle(id);
    }

    private void compare(String id, double expected, double found, double tolerance) {
        if (!(Math.abs(found - expected) <= tolerance)) {
            wrong.add(id + " expected " + expected + " within " + tolerance + ", found " + found);
        }
    }

    /** Names the test that compares all rows of this pattern. */
    public void elsewhere(String pattern, String test) {
        assertTrue(test.contains("."), "a class and its method: " + test);
        settle(pattern);
    }

    /** Names why rows of this pattern cannot be compared. */
    public void without(String pattern, String why) {
        assertTrue(why.length() > 10, "a reason that a reader can judge: " + why);
        settle(pattern);
    }

    private double[] expected(String id) {
        Printed.Row row = Printed.row(table, id);
        return row.numbers(row.cells().containsKey("check_value") && row.has("check_value") ? "check_value" : "value");
    }

    private void settle(String pattern) {
        Pattern whole = Pattern.compile(open.containsKey(pattern) ? Pattern.quote(pattern) : pattern);
        assertTrue(
                open.keySet().removeIf(id -> whole.matcher(id).matches()), pattern + " names no row left of " + table);
    }

    @Override
    public void close() {
        assertTrue(wrong.isEmpty(), "rows of " + table + ": " + wrong);
        assertTrue(open.isEmpty(), "rows of " + table + " that nothing was said about: " + open.keySet());
    }
}
