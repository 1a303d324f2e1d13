// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.runs;

import isohume.quantity.Quantity;
import isohume.result.PointResult;
import isohume.station.web.Figure;
import isohume.uncertainty.Budget;
import isohume.uncertainty.Contribution;
import isohume.uncertainty.Input;
import isohume.uncertainty.Origin;
import isohume.uncertainty.Rounded;
import isohume.uncertainty.montecarlo.Propagation;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;

/**
 * The budget of one result. Contributions stand in the order of their size, all in the error's unit.
 *
 * @param readings how many pairs of readings, and how many independent ones they are worth
 */
public record BudgetView(
        String run,
        String instrument,
        Quantity quantity,
        int point,
        String at,
        String unit,
        ResultRow result,
        List<Row> rows,
        String combined,
        String degreesOfFreedom,
        String coverageFactor,
        String expanded,
        SecondMethod second,
        int readings,
        String effectiveReadings,
        String readingsAt) {

    /** One contribution. */
    public record Row(
            String symbol,
            String description,
            String estimate,
            String unit,
            String shape,
            String stated,
            String divisor,
            String standard,
            String degreesOfFreedom,
            String sensitivity,
            String contribution,
            Figure percent,
            Origin origin,
            String evidence) {}

    /** The Monte Carlo method beside the budget, and what is reported after it. */
    public record SecondMethod(
            String trials,
            String seed,
            String low,
            String high,
            boolean agrees,
            String reported,
            String coverageFactor,
            String lowDifference,
            String highDifference,
            String tolerance,
            boolean settled) {
        static SecondMethod of(Propagation found) {
            int place = Rounded.of(0, found.expanded(), 2).uncertainty().scale() + 1;
            return new SecondMethod(
                    Figure.of(found.trials(), 0).toString(),
                    Long.toString(found.settings().seed()),
                    Figure.signed(found.found().low(), place).toString(),
                    Figure.signed(found.found().high(), place).toString(),
                    found.validatesBudget(),
                    digits(found.expanded(), 3),
                    Figure.of(found.coverageFactor(), 3).toString(),
                    digits(found.lowDifference(), 2),
                    digits(found.highDifference(), 2),
                    digits(found.tolerance(), 1),
                    found.settled());
        }
    }

    static BudgetView of(String run, PointResult p) {
        Budget budget = p.budget();
        return new BudgetView(
                run,
                p.instrument(),
                p.quantity(),
                p.point().number(),
                ResultRow.direction(p.point()) + " " + ResultRow.at(p.point()),
                p.quantity().differenceUnit(),
                ResultRow.of(run, p),
                budget.contributions().stream()
                        .sorted(Comparator.comparingDouble(Contribution::indexPercent)
                                .reversed())
                        .map(BudgetView::row)
                        .toList(),
                digits(budget.combined(), 3),
                freedom(budget.effectiveDegreesOfFreedom()),
                Figure.of(budget.coverageFactor(), 3).toString(),
                digits(budget.expanded(), 3),
                SecondMethod.of(p.propagation()),
                p.readings(),
                Figure.of(p.effectiveReadings(), 1).toString(),
                "/runs/" + run + "/readings/" + p.point().number());
    }

    private static Row row(Contribution c) {
        Input input = c.input();
        return new Row(
                input.symbol(),
                input.description(),
                digits(input.estimate(), 6),
                input.unit(),
                input.distribution().shape(),
                digits(input.distribution().stated(), 3),
                input.distribution().divisor(),
                digits(c.standardUncertainty(), 3),
                freedom(input.degreesOfFreedom()),
                digits(c.sensitivity(), 3),
                digits(Math.abs(c.contribution()), 3),
                Figure.of(c.indexPercent(), 1),
                input.origin(),
                input.evidence());
    }

    /** Above a thousand they no longer matter and are written as infinite. */
    private static String freedom(double degrees) {
        return degrees > 1000 ? "∞" : Figure.of(Math.floor(degrees), 0).toString();
    }

    /** To a number of significant digits, plainly written. */
    static String digits(double value, int digits) {
        if (value == 0 || !Double.isFinite(value)) {
            return Figure.of(value, 0).toString();
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
        return Figure.of(rounded.scale() < 0 ? rounded.setScale(0) : rounded).toString();
    }
}
