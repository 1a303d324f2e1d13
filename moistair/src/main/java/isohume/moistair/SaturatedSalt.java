// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Air in equilibrium with a saturated salt solution: a check value on the bench, never a reference.
 *
 * <p>Source: Greenspan 1977, J. Res. NBS 81A, 89: polynomials of table 1, uncertainties of table 2. The values were
 * read except where {@link #basis()} says otherwise; all uncertainties are from memory. Carelessly prepared solutions
 * have been found more than 5 % RH away (Carotenuto and Dell'Isola 1996).
 */
@SuppressWarnings("ImmutableEnumChecker") // the functions capture nothing that changes
public enum SaturatedSalt {
    LITHIUM_BROMIDE(
            "lithium bromide",
            "LiBr",
            0,
            List.of(0.83, 0.76, 0.69, 0.63, 0.58, 0.52, 0.47, 0.43, 0.39, 0.35, 0.31, 0.28, 0.25),
            Values.cubic(7.75437, -0.0654994, 0.420737e-3, 0, Basis.READ)),
    /** The sign of the linear term is the one that reproduces the tables; a public copy prints the other. */
    LITHIUM_CHLORIDE(
            "lithium chloride",
            "LiCl",
            0,
            List.of(0.54, 0.47, 0.41, 0.35, 0.31, 0.27, 0.24, 0.22, 0.21, 0.21, 0.22, 0.23, 0.26),
            Values.cubic(11.2323, 0.00824245, -0.214890e-3, 0, Basis.READ)),
    /** The quadratic term is from memory. */
    POTASSIUM_ACETATE(
            "potassium acetate",
            "CH₃COOK",
            10,
            List.of(0.53, 0.32, 0.25, 0.32, 0.53),
            Values.cubic(22.4388, 0.156288, -0.612868e-2, 0, Basis.MEMORY)),
    MAGNESIUM_CHLORIDE(
            "magnesium chloride",
            "MgCl₂",
            0,
            List.of(0.33, 0.28, 0.24, 0.21, 0.18, 0.16, 0.14, 0.13, 0.13, 0.13, 0.14, 0.16, 0.18),
            Values.cubic(33.6686, -0.00797397, -0.108988e-2, 0, Basis.READ)),
    /** The sign of the linear term is the one that reproduces the tables; a public copy prints the other. */
    POTASSIUM_CARBONATE(
            "potassium carbonate",
            "K₂CO₃",
            0,
            List.of(0.66, 0.50, 0.39, 0.33, 0.33, 0.39, 0.50),
            Values.cubic(43.1315, 0.00147523, 0, 0, Basis.READ)),
    /** From memory. */
    MAGNESIUM_NITRATE(
            "magnesium nitrate",
            "Mg(NO₃)₂",
            0,
            List.of(0.55, 0.43, 0.33, 0.27, 0.23, 0.22, 0.24, 0.29, 0.37, 0.47, 0.60),
            Values.cubic(60.3514, -0.297890, 0, 0, Basis.MEMORY)),
    /** Interpolated between tabulated values from memory. */
    SODIUM_BROMIDE(
            "sodium bromide",
            "NaBr",
            5,
            List.of(0.72, 0.60, 0.51, 0.44, 0.40, 0.38, 0.38, 0.41, 0.47, 0.55, 0.65, 0.78),
            Values.table(5, 63.51, 62.15, 60.68, 59.14, 57.57, 56.03, 54.55, 53.17, 51.95, 50.93, 50.15, 49.66)),
    SODIUM_CHLORIDE(
            "sodium chloride",
            "NaCl",
            0,
            List.of(0.34, 0.27, 0.22, 0.18, 0.14, 0.12, 0.11, 0.12, 0.13, 0.16, 0.19, 0.24, 0.30),
            Values.cubic(75.5164, 0.0398321, -0.265459e-2, 0.2848e-4, Basis.READ)),
    /** Interpolated between tabulated values from memory. */
    AMMONIUM_SULFATE(
            "ammonium sulfate",
            "(NH₄)₂SO₄",
            0,
            List.of(0.90, 0.68, 0.51, 0.38, 0.31, 0.28, 0.30, 0.37, 0.49, 0.65, 0.87),
            Values.table(0, 82.77, 82.42, 82.06, 81.70, 81.34, 80.99, 80.63, 80.27, 79.91, 79.56, 79.20)),
    POTASSIUM_CHLORIDE(
            "potassium chloride",
            "KCl",
            0,
            List.of(0.53, 0.45, 0.39, 0.33, 0.29, 0.26, 0.25, 0.25, 0.25, 0.28, 0.31, 0.35, 0.41),
            Values.cubic(88.6190, -0.193340, 0.899706e-3, 0, Basis.READ)),
    POTASSIUM_NITRATE(
            "potassium nitrate",
            "KNO₃",
            0,
            List.of(2.9, 2.1, 1.4, 0.96, 0.66, 0.55, 0.60, 0.83, 1.2, 1.8, 2.5),
            Values.cubic(96.3361, 0.0112371, -0.484514e-2, 0, Basis.READ)),
    POTASSIUM_SULFATE(
            "potassium sulfate",
            "K₂SO₄",
            0,
            List.of(1.1, 0.91, 0.76, 0.63, 0.53, 0.45, 0.40, 0.38, 0.38, 0.40, 0.45),
            Values.cubic(98.7792, -0.0590502, 0, 0, Basis.READ));

    private static final double STEP_CELSIUS = 5;

    private final String title;
    private final String formula;
    private final List<Double> uncertainties;
    private final Values values;
    private final Span span;

    SaturatedSalt(String title, String formula, double coldest, List<Double> uncertainties, Values values) {
        this.title = title;
        this.formula = formula;
        this.uncertainties = uncertainties;
        this.values = values;
        this.span = Span.ofCelsius(
                "equilibrium over saturated " + title, coldest, coldest + STEP_CELSIUS * (uncertainties.size() - 1));
    }

    /** The name in words. */
    public String title() {
        return title;
    }

    /** The chemical formula. */
    public String formula() {
        return formula;
    }

    public Temperature coldest() {
        return Temperature.ofCelsius(span.lowestCelsius());
    }

    public Temperature warmest() {
        return Temperature.ofCelsius(span.highestCelsius());
    }

    public RelativeHumidity relativeHumidity(Temperature t) {
        return RelativeHumidity.ofPercent(values.at().applyAsDouble(span.requireCelsius(t.kelvin())));
    }

    /** Uncertainty of the value in % RH as tabulated, coverage not said, from memory; lines between 5 K steps. */
    public double uncertaintyPercent(Temperature t) {
        return between(span.lowestCelsius(), uncertainties, span.requireCelsius(t.kelvin()));
    }

    /** Whether the value was read or remembered. */
    public Basis basis() {
        return values.basis();
    }

    private static double between(double coldest, List<Double> steps, double celsius) {
        double place = Math.max(0, Math.min((celsius - coldest) / STEP_CELSIUS, steps.size() - 1));
        int below = Math.min((int) place, steps.size() - 2);
        double share = place - below;
        return steps.get(below) * (1 - share) + steps.get(below + 1) * share;
    }

    /** Values in % RH against degrees Celsius. */
    private record Values(DoubleUnaryOperator at, Basis basis) {
        static Values cubic(double a0, double a1, double a2, double a3, Basis basis) {
            return new Values(new Cubic(a0, a1, a2, a3)::at, basis);
        }

        static Values table(double coldest, Double... percent) {
            List<Double> steps = List.of(percent);
            return new Values(celsius -> between(coldest, steps, celsius), Basis.MEMORY);
        }
    }
}
