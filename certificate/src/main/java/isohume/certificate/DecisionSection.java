// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import isohume.quantity.Quantity;
import isohume.result.PointResult;
import isohume.result.Specification;
import isohume.uncertainty.conformity.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * To what the statements of conformity apply, which specification was used and by which rule (ISO/IEC 17025:2017,
 * 7.8.6.2). The rules are those of JCGM 106:2012 and ILAC-G8:09/2019.
 */
final class DecisionSection {
    private static final String BAR = "|error|";
    private static final String SIMPLE = "Decision rule: simple acceptance; the acceptance limit equals the tolerance"
            + " (w = 0). The probability that an accepted value lies outside the tolerance is up to 50" + Figures.THIN
            + "%. Values are compared unrounded.";
    private static final String GUARDED = "Decision rule: the acceptance limit equals the tolerance minus the expanded"
            + " uncertainty (guard band w = U). The probability that a value with the answer \u201Cconforms\u201D"
            + " lies outside the tolerance does not exceed 2.5" + Figures.THIN + "%. Values are compared unrounded.";

    private final Certificate certificate;

    DecisionSection(Certificate certificate) {
        this.certificate = certificate;
    }

    void write(Markup to) {
        to.element("h2", "Conformity");
        switch (certificate.job().decision()) {
            case NONE -> to.element("p", "No statement of conformity was asked for.");
            case SIMPLE_ACCEPTANCE -> {
                specifications(to);
                to.sentence("p", SIMPLE);
                simple(to);
                counts(to);
            }
            case GUARD_BAND -> {
                specifications(to);
                to.sentence("p", GUARDED);
                guarded(to);
                counts(to);
            }
            case GUARD_BAND_FOUR_ANSWERS -> {
                specifications(to);
                to.sentence("p", GUARDED);
                fourAnswers(to);
                counts(to);
            }
        }
    }

    private void specifications(Markup to) {
        to.open("ul");
        for (Quantity quantity : certificate.quantities()) {
            certificate
                    .item()
                    .channel(quantity)
                    .ifPresent(s -> to.element(
                            "li",
                            Names.capital(Names.of(quantity)) + ": tolerance " + tolerance(s) + "; specification from: "
                                    + s.toleranceFrom() + "; applied to points " + numbers(quantity) + "."));
        }
        to.close();
    }

    /** As it was agreed: ±a, or ±(a + b × |reading|). */
    static String tolerance(Specification s) {
        String constant = Figures.withUnit(
                Figures.brief(s.toleranceConstant(), 4), s.quantity().differenceUnit());
        if (s.toleranceShare() == 0) {
            return "\u00B1" + constant;
        }
        return "\u00B1(" + constant + " + " + Figures.brief(s.toleranceShare(), 6) + Figures.NO_BREAK + "\u00D7"
                + Figures.NO_BREAK + "|reading|)";
    }

    private String numbers(Quantity quantity) {
        List<Integer> numbers = certificate.of(quantity).stream()
                .filter(Verdicts::given)
                .map(p -> p.point().number())
                .distinct()
                .sorted()
                .toList();
        return ranges(numbers);
    }

    /** 1 to 5, 7, 9 to 11. */
    static String ranges(List<Integer> rising) {
        List<String> ranges = new ArrayList<>();
        for (int from = 0, to; from < rising.size(); from = to + 1) {
            to = from;
            while (to + 1 < rising.size() && rising.get(to + 1) == rising.get(to) + 1) {
                to++;
            }
            int first = rising.get(from);
            ranges.add(from == to ? "" + first : first + " to " + rising.get(to));
        }
        return String.join(", ", ranges);
    }

    private static void simple(Markup to) {
        String less = "tolerance " + Figures.MINUS + " U";
        to.open("ul", "class", "verdicts");
        meaning(to, Verdict.CONFORMS, BAR + " \u2264 " + less);
        meaning(to, Verdict.CONFORMS_IN_GUARD_BAND, less + " < " + BAR + " \u2264 tolerance: accepted too");
        meaning(to, Verdict.DOES_NOT_CONFORM, BAR + " > tolerance");
        to.close();
    }

    private static void guarded(Markup to) {
        String less = "tolerance " + Figures.MINUS + " U";
        to.open("ul", "class", "verdicts");
        meaning(to, Verdict.CONFORMS, BAR + " \u2264 " + less);
        meaning(to, Verdict.DOES_NOT_CONFORM, BAR + " > " + less + ": conformity is not shown");
        to.close();
    }

    private static void fourAnswers(Markup to) {
        String less = "tolerance " + Figures.MINUS + " U";
        String more = "tolerance + U";
        to.open("ul", "class", "verdicts");
        meaning(to, Verdict.CONFORMS, BAR + " \u2264 " + less);
        meaning(
                to,
                Verdict.CONFORMS_IN_GUARD_BAND,
                less + " < " + BAR + " \u2264 tolerance: inside the tolerance, with a probability of up to 50"
                        + Figures.THIN + "% of lying outside it");
        meaning(to, Verdict.NOT_DECIDED, "tolerance < " + BAR + " \u2264 " + more);
        meaning(to, Verdict.DOES_NOT_CONFORM, BAR + " > " + more);
        to.close();
    }

    private static void meaning(Markup to, Verdict verdict, String when) {
        Verdicts.write(to.open("li"), Optional.of(verdict))
                .sentence("span", ": " + when)
                .close();
    }

    private void counts(Markup to) {
        for (Quantity quantity : certificate.quantities()) {
            List<PointResult> judged =
                    certificate.of(quantity).stream().filter(Verdicts::given).toList();
            if (judged.isEmpty()) {
                continue;
            }
            String counts = judged.stream()
                    .collect(Collectors.groupingBy(
                            p -> p.verdict().orElseThrow(), java.util.TreeMap::new, Collectors.counting()))
                    .entrySet()
                    .stream()
                    .map(e -> Verdicts.words(Optional.of(e.getKey())) + ": " + e.getValue())
                    .collect(Collectors.joining("; "));
            to.element("p", Names.capital(Names.of(quantity)) + ", " + judged.size() + " points: " + counts + ".");
        }
    }
}
