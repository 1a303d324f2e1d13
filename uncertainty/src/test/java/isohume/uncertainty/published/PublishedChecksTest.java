// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import isohume.uncertainty.PublishedCheck;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class PublishedChecksTest {
    @TestFactory
    Stream<DynamicTest> every_published_figure_is_met() {
        return PublishedChecks.all().stream()
                .map(check -> dynamicTest(check.name(), () -> {
                    double found = check.found().getAsDouble();
                    assertTrue(check.agrees(found), check + " found " + found);
                }));
    }

    @Test
    void names_are_unique_and_sources_given() {
        assertEquals(
                PublishedChecks.all().size(),
                PublishedChecks.all().stream()
                        .map(PublishedCheck::name)
                        .distinct()
                        .count());
        assertTrue(
                PublishedChecks.all().stream().noneMatch(check -> check.source().isBlank()));
    }

    @Test
    void what_is_not_a_number_does_not_agree() {
        assertFalse(new PublishedCheck("x", "test", 1, "1", 1, () -> 1).agrees(Double.NaN));
    }
}
