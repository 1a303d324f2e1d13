// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * An uncertainty budget by the law of propagation of uncertainty.
 *
 * <p>Source: JCGM 100:2008, 5.1 and 5.2 (combined uncertainty, with correlations), G.4 (Welch-Satterthwaite), G.6
 * (expanded uncertainty). Of correlated inputs, the effective degrees of freedom are formed with the same formula,
 * which the GUM derives for independent ones. Value, contributions and uncertainties are in the measurand's unit.
 */
public final class Budget {
    private final String measurand;
    private final String unit;
    private final List<Input> inputs;
    private final Model model;
    private final Correlations correlations;
    private final double coverageProbability;
    private final double value;
    private final List<Contribution> contributions;
    private final double combined;
    private final double effectiveDegreesOfFreedom;

    private Budget(
            String measurand,
            String unit,
            List<Input> inputs,
            Model model,
            Correlations correlations,
            double coverageProbability) {
        this.measurand = measurand;
        this.unit = unit;
        this.inputs = List.copyOf(inputs);
        this.model = model;
        this.correlations = correlations;
        this.coverageProbability = coverageProbability;
        Coverage.requireProbability(coverageProbability);
        requireSoundInputs();
        double[] estimates = estimates();
        this.value = finite(model.of(estimates), "the model at the estimates");
        double[] sensitivities = sensitivities(estimates);
        this.combined = Math.sqrt(variance(sensitivities));
        this.contributions = contributions(sensitivities);
        this.effectiveDegreesOfFreedom = welchSatterthwaite();
    }

    /**
     * Evaluates a budget.
     *
     * @param coverageProbability of the expanded uncertainty, e.g. {@link Coverage#TWO_SIGMA}
     * @throws IllegalArgumentException if two inputs share a symbol, correlations contradict each other, or the model
     *     has no finite value at the estimates or one standard uncertainty beside them
     */
    public static Budget of(
            String measurand,
            String unit,
            List<Input> inputs,
            Model model,
            Correlations correlations,
            double coverageProbability) {
        return new Budget(measurand, unit, inputs, model, correlations, coverageProbability);
    }

    /** A budget of uncorrelated inputs with a coverage of two standard deviations. */
    public static Budget of(String measurand, String unit, List<Input> inputs, Model model) {
        return new Budget(measurand, unit, inputs, model, Correlations.none(), Coverage.TWO_SIGMA);
    }

    public String measurand() {
        return measurand;
    }

    public String unit() {
        return unit;
    }

    public List<Input> inputs() {
        return inputs;
    }

    public Model model() {
        return model;
    }

    public Correlations correlations() {
        return correlations;
    }

    public double coverageProbability() {
        return coverageProbability;
    }

    /** The best estimate of the measurand. */
    public double value() {
        return value;
    }

    /** One per input, in their order. */
    public List<Contribution> contributions() {
        return contributions;
    }

    /** The combined standard uncertainty. */
    public double combined() {
        return combined;
    }

    /** By Welch-Satterthwaite, not truncated; infinite if no contribution has finite ones. */
    public double effectiveDegreesOfFreedom() {
        return effectiveDegreesOfFreedom;
    }

    /** Student's t for the coverage probability and the effective degrees of freedom truncated to an integer. */
    public double coverageFactor() {
        return Coverage.factorTruncated(coverageProbability, effectiveDegreesOfFreedom);
    }

    /** The expanded uncertainty U. */
    public double expanded() {
        return coverageFactor() * combined;
    }

    private void requireSoundInputs() {
        Set<String> seen = new HashSet<>();
        for (Input input : inputs) {
            if (!seen.add(input.symbol())) {
                throw new IllegalArgumentException("two inputs of " + measurand + " are called " + input.symbol());
            }
        }
        correlations.factor(symbols()); // refuses unknown symbols and contradictions
    }

    private List<String> symbols() {
        return inputs.stream().map(Input::symbol).toList();
    }

    private double[] estimates() {
        return inputs.stream().mapToDouble(Input::estimate).toArray();
    }

    private double[] sensitivities(double[] estimates) {
        double[] sensitivities = new double[estimates.length];
        for (int i = 0; i < estimates.length; i++) {
            Input input = inputs.get(i);
            double sensitivity = Sensitivity.of(model, estimates, i, input.standardUncertainty());
            sensitivities[i] = finite(sensitivity, "the sensitivity to " + input.symbol());
        }
        return sensitivities;
    }

    private double variance(double[] sensitivities) {
        double sum = 0;
        for (int i = 0; i < sensitivities.length; i++) {
            double own = sensitivities[i] * inputs.get(i).standardUncertainty();
            sum += own * own;
        }
        for (Correlations.Pair pair : correlations.pairs()) {
            int i = symbols().indexOf(pair.first());
            int j = symbols().indexOf(pair.second());
            double own = sensitivities[i] * inputs.get(i).standardUncertainty();
            double other = sensitivities[j] * inputs.get(j).standardUncertainty();
            sum += 2 * own * other * pair.coefficient();
        }
        return Math.max(0, sum); // full cancellation may leave a rounding error below zero
    }

    private List<Contribution> contributions(double[] sensitivities) {
        List<Contribution> lines = new ArrayList<>();
        for (int i = 0; i < sensitivities.length; i++) {
            Input input = inputs.get(i);
            double contribution = sensitivities[i] * input.standardUncertainty();
            double share = combined == 0 ? 0 : contribution / combined;
            lines.add(new Contribution(
                    input, input.standardUncertainty(), sensitivities[i], contribution, 100 * share * share));
        }
        return List.copyOf(lines);
    }

    private double welchSatterthwaite() {
        double sum = 0;
        for (Contribution line : contributions) {
            double share = combined == 0 ? 0 : line.contribution() / combined;
            sum += share * share * share * share / line.input().degreesOfFreedom();
        }
        return 1 / sum; // infinite when nothing finite was added
    }

    private double finite(double number, String what) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException(what + " is not finite in the budget of " + measurand + " (" + unit
                    + "): " + number + "; check the estimates against the model's range");
        }
        return number;
    }
}
