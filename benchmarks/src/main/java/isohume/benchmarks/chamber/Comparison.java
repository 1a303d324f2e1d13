// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.chamber;

import isohume.benchmarks.Figure;
import isohume.benchmarks.Parts;
import isohume.quantity.Quantity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Both ways of working on the same jobs, bench by bench and pooled. */
record Comparison(List<Pair> pairs) {
    private static final double TIME = 0.55;
    private static final double COVERAGE = 94; // %
    private static final double COVERAGE_OF_ANY = 90;
    private static final double FORETOLD = 80;

    /** One job done twice, from the same beginning. */
    record Pair(Job job, Outcome clock, Outcome isohume) {}

    Comparison {
        pairs = List.copyOf(pairs);
    }

    private List<String> benches() {
        return pairs.stream().map(p -> p.job().bench()).distinct().toList();
    }

    private Comparison on(String bench) {
        return new Comparison(
                pairs.stream().filter(p -> p.job().bench().equals(bench)).toList());
    }

    private Tally clock() {
        return new Tally(pairs.stream().map(Pair::clock).toList());
    }

    private Tally isohume() {
        return new Tally(pairs.stream().map(Pair::isohume).toList());
    }

    Parts parts() {
        Map<String, List<Figure>> lines = new LinkedHashMap<>();
        benches().forEach(bench -> lines.put(bench, on(bench).line()));
        return new Parts("bench", lines);
    }

    private List<Figure> line() {
        Tally clock = clock();
        Tally own = isohume();
        return List.of(
                Figure.of("clock", clock.medianHours(), "h"),
                Figure.of("Isohume", own.medianHours(), "h"),
                Figure.of("U clock", clock.meanExpanded(Quantity.RELATIVE_HUMIDITY), "% RH"),
                Figure.of("U Isohume", own.meanExpanded(Quantity.RELATIVE_HUMIDITY), "% RH"),
                Figure.of("U clock", clock.meanExpanded(Quantity.TEMPERATURE), "K"),
                Figure.of("U Isohume", own.meanExpanded(Quantity.TEMPERATURE), "K"),
                Figure.of("RH covered: clock", clock.covered(Quantity.RELATIVE_HUMIDITY), "%"),
                Figure.of("Isohume", own.covered(Quantity.RELATIVE_HUMIDITY), "%"),
                Figure.of("T covered: clock", clock.covered(Quantity.TEMPERATURE), "%"),
                Figure.of("Isohume", own.covered(Quantity.TEMPERATURE), "%"),
                Figure.of("no result: clock", clock.missingShare(), "%"),
                Figure.of("Isohume", own.missingShare(), "%"),
                Figure.of("end foretold", own.foretoldNear(), "%"));
    }

    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        figures.add(Figure.of("time in the chamber, median: by the clock", clock().medianHours(), "h"));
        figures.add(Figure.of("time in the chamber, median: Isohume", isohume().medianHours(), "h"));
        figures.add(Figure.atMost(TIME, "time in the chamber, median: ratio", ratio(Tally::medianHours), ""));
        uncertainty(figures, "RH", Quantity.RELATIVE_HUMIDITY);
        uncertainty(figures, "T", Quantity.TEMPERATURE);
        coverage(figures, "RH", Quantity.RELATIVE_HUMIDITY);
        coverage(figures, "T", Quantity.TEMPERATURE);
        figures.add(Figure.of("without a result: by the clock", clock().missingShare(), "%"));
        figures.add(Figure.of("without a result: Isohume", isohume().missingShare(), "%"));
        figures.add(Figure.atLeast(
                FORETOLD,
                "runs whose end was foretold within 15 % at half-time",
                isohume().foretoldNear(),
                "%"));
        return figures;
    }

    private void uncertainty(List<Figure> figures, String name, Quantity quantity) {
        String unit = quantity.differenceUnit();
        figures.add(Figure.of("U of " + name + ", mean: by the clock", clock().meanExpanded(quantity), unit));
        figures.add(Figure.of("U of " + name + ", mean: Isohume", isohume().meanExpanded(quantity), unit));
        figures.add(Figure.atMost(1, "U of " + name + ", mean: ratio", ratio(t -> t.meanExpanded(quantity)), ""));
        figures.add(Figure.of("U of " + name + ", median: by the clock", clock().medianExpanded(quantity), unit));
        figures.add(Figure.of("U of " + name + ", median: Isohume", isohume().medianExpanded(quantity), unit));
        figures.add(Figure.atMost(1, "U of " + name + ", median: ratio", ratio(t -> t.medianExpanded(quantity)), ""));
    }

    private void coverage(List<Figure> figures, String name, Quantity quantity) {
        figures.add(Figure.of("truth of " + name + " within U: by the clock", clock().covered(quantity), "%"));
        figures.add(Figure.atLeast(
                COVERAGE, "truth of " + name + " within U: Isohume", isohume().covered(quantity), "%"));
        String worst = benches().stream()
                .min((a, b) -> Double.compare(
                        on(a).isohume().covered(quantity), on(b).isohume().covered(quantity)))
                .orElseThrow();
        figures.add(Figure.atLeast(
                COVERAGE_OF_ANY,
                "truth of " + name + " within U: Isohume, worst bench (" + worst + ")",
                on(worst).isohume().covered(quantity),
                "%"));
    }

    private double ratio(java.util.function.ToDoubleFunction<Tally> of) {
        return of.applyAsDouble(isohume()) / of.applyAsDouble(clock());
    }

    /** What a person would have been asked, by job. */
    Stream<String> remarks() {
        return pairs.stream()
                .flatMap(pair -> pair.isohume().remarks().stream()
                        .map(remark ->
                                pair.job().bench() + ", seed " + pair.job().seed() + ": skipped " + remark));
    }
}
