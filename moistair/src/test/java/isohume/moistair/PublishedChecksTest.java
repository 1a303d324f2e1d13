// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.quantity.PublishedCheck;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class PublishedChecksTest {
    private final List<PublishedCheck> all = PublishedChecks.all();

    @TestFactory
    Stream<DynamicTest> every_published_figure_is_reproduced() {
        return all.stream()
                .map(check -> dynamicTest(
                        check.what(),
                        () -> assertTrue(check.holds(), () -> check + " is off by " + check.deviation())));
    }

    @Test
    void no_figure_stands_there_twice_and_each_has_a_source() {
        long names = all.stream().map(PublishedCheck::what).distinct().count();
        assertEquals(all.size(), (int) names);
        assertTrue(all.stream().noneMatch(check -> check.source().isBlank()));
        assertTrue(all.size() >= 30);
    }

    /** A check that could not fail would be no check: each is asked with a figure moved by twice its limit. */
    @TestFactory
    Stream<DynamicTest> a_wrong_figure_would_be_noticed() {
        return all.stream()
                .map(check -> dynamicTest(check.what(), () -> {
                    double moved = check.expected() + 3 * check.limit();
                    assertFalse(new PublishedCheck(
                                    check.what(), check.source(), moved, check.unit(), check.limit(), check.found())
                            .holds());
                }));
    }
}
