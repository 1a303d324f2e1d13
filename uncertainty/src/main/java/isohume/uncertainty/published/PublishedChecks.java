// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.published;

import isohume.uncertainty.PublishedCheck;
import java.util.List;
import java.util.stream.Stream;

/** A selection of published figures; the full comparison is in this module's tests. */
public final class PublishedChecks {
    private PublishedChecks() {}

    /** All checks; together they take a few seconds, most of it for Monte Carlo runs. */
    public static List<PublishedCheck> all() {
        return Stream.of(GumChecks.all(), MonteCarloChecks.all(), ConformityChecks.all(), StatisticsChecks.all())
                .flatMap(List::stream)
                .toList();
    }
}
