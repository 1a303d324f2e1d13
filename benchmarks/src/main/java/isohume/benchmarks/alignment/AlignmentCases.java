// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.alignment;

import isohume.benchmarks.Figure;
import isohume.benchmarks.Machine;
import isohume.benchmarks.Options;
import isohume.benchmarks.Program;
import isohume.benchmarks.Report;
import isohume.benchmarks.alignment.SimulatedPair.Course;
import isohume.result.alignment.Alignment;
import isohume.result.alignment.ClockAlignment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Clocks that are known, and what is found of them: 500 records with steps, and 100 each in which nothing happens, in
 * which the humidity only rises evenly, and in which the same cycle comes again and again.
 */
public final class AlignmentCases {
    private static final long SEED = 20_260_331;
    private static final int CASES = 500;
    private static final int FEATURELESS = 100;
    private static final int QUICK = 5;

    private int found;
    private int withinHalf;
    private int withinStated;
    private int good;
    private int refused;

    private AlignmentCases() {}

    public static void main(String[] arguments) {
        Program program = AlignmentCases::measure;
        System.exit(program.run(arguments));
    }

    static Report measure(Options options) {
        AlignmentCases steps = run(Course.STEPS, options.quick() ? QUICK : CASES);
        List<Figure> figures = new ArrayList<>();
        figures.add(Figure.of("steps: records", steps.found + steps.refused, ""));
        figures.add(Figure.atMost(
                5,
                "steps: refused, or not within U and half an interval",
                100 - share(steps.good, steps.total()),
                "%"));
        figures.add(Figure.of("steps: refused", share(steps.refused, steps.total()), "%"));
        figures.add(
                Figure.of("steps: of those found, not within U", 100 - share(steps.withinStated, steps.found), "%"));
        figures.add(Figure.of(
                "steps: of those found, not within half an interval", 100 - share(steps.withinHalf, steps.found), "%"));
        for (Course course : List.of(Course.FLAT, Course.RAMP, Course.CYCLES)) {
            AlignmentCases none = run(course, options.quick() ? QUICK : FEATURELESS);
            figures.add(Figure.atMost(
                    5,
                    course.name().toLowerCase(Locale.ROOT) + ": accepted, and not within U and half an interval",
                    share(none.found - none.good, none.total()),
                    "%"));
            figures.add(Figure.of(
                    course.name().toLowerCase(Locale.ROOT) + ": refused", share(none.refused, none.total()), "%"));
        }
        return new Report(Machine.here(), Map.of("first seed", String.valueOf(SEED)), figures);
    }

    private static AlignmentCases run(Course course, int count) {
        AlignmentCases cases = new AlignmentCases();
        for (int i = 0; i < count; i++) {
            cases.add(new SimulatedPair(SEED + i, course));
        }
        return cases;
    }

    private void add(SimulatedPair pair) {
        switch (ClockAlignment.of(pair.reference(), pair.logger())) {
            case Alignment.Refused none -> refused++;
            case Alignment.Found one -> {
                double error = Math.abs(one.offset() - pair.offsetAt(one.at()));
                boolean half = error <= pair.interval() / 2;
                boolean stated = error <= one.expanded();
                found++;
                withinHalf += half ? 1 : 0;
                withinStated += stated ? 1 : 0;
                good += half && stated ? 1 : 0;
            }
        }
    }

    private int total() {
        return found + refused;
    }

    private static double share(int some, int all) {
        return all == 0 ? 100 : 100.0 * some / all;
    }
}
