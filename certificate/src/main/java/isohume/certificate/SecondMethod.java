// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import isohume.quantity.Quantity;
import isohume.result.PointResult;
import java.util.ArrayList;
import java.util.List;

/** What the Monte Carlo method said to each result, in one sentence (JCGM 101:2008, clause 8). */
final class SecondMethod {
    private SecondMethod() {}

    static String sentence(Certificate certificate) {
        List<String> apart = new ArrayList<>();
        for (Quantity quantity : certificate.quantities()) {
            List<Integer> numbers = certificate.of(quantity).stream()
                    .filter(p -> !p.propagation().validatesBudget())
                    .map(p -> p.point().number())
                    .sorted()
                    .toList();
            if (!numbers.isEmpty()) {
                apart.add(Names.of(quantity) + " at points " + DecisionSection.ranges(numbers));
            }
        }
        String checked = "Each result was compared with the Monte Carlo method (JCGM 101:2008, 8; at least "
                + fewestTrials(certificate.points()) + " trials, one digit of the standard uncertainty)";
        return apart.isEmpty()
                ? checked + "; it validates every one."
                : checked + "; where it does not validate the result, U and k are those of its interval: "
                        + String.join("; ", apart) + ".";
    }

    private static String fewestTrials(List<PointResult> points) {
        return Figures.of(
                points.stream().mapToInt(p -> p.propagation().trials()).min().orElseThrow(), 0);
    }
}
