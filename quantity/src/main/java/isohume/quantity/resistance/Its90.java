// SPDX-License-Identifier: Apache-2.0
package isohume.quantity.resistance;

import isohume.quantity.Temperature;
import java.util.List;

/**
 * A standard platinum resistance thermometer by the International Temperature Scale of 1990: W = R / R(0.01 °C), less a
 * deviation of its own, is the reference function Wr(T).
 *
 * <p>Source: H. Preston-Thomas, "The International Temperature Scale of 1990 (ITS-90)", Metrologia 27 (1990) 3–10, eqs. 9a,
 * 10a (reference functions), 9b, 10b (their inverses) and 12 to 14 (deviations); coefficients of its table 4. Range: 83.8058 K (argon)
 * to 933.473 K (aluminium). Check values: Wr at the fixed points, its table 1.
 *
 * @param rTriplePoint resistance at the triple point of water, in ohms
 * @param above a, b, c of the deviation a(W−1) + b(W−1)² + c(W−1)³ above 0.01 °C; those that are not given count as zero
 * @param below a, b of the deviation a(W−1) + b(W−1)ln W below it; those that are not given count as zero
 */
public record Its90(double rTriplePoint, List<Double> above, List<Double> below) implements ResistanceThermometer {
    private static final double TRIPLE_POINT = 273.16;
    private static final double LOWEST = 83.8058;
    private static final double HIGHEST = 933.473;
    private static final int MOST_STEPS = 50;
    private static final double[] A = {
        -2.13534729,
        3.18324720,
        -1.80143597,
        0.71727204,
        0.50344027,
        -0.61899395,
        -0.05332322,
        0.28021362,
        0.10715224,
        -0.29302865,
        0.04459872,
        0.11868632,
        -0.05248134
    };
    private static final double[] C = {
        2.78157254,
        1.64650916,
        -0.13714390,
        -0.00649767,
        -0.00234444,
        0.00511868,
        0.00187982,
        -0.00204472,
        -0.00046122,
        0.00045724
    };
    private static final double[] B = {
        0.183324722,
        0.240975303,
        0.209108771,
        0.190439972,
        0.142648498,
        0.077993465,
        0.012475611,
        -0.032267127,
        -0.075291522,
        -0.056470670,
        0.076201285,
        0.123893204,
        -0.029201193,
        -0.091173542,
        0.001317696,
        0.026025526
    };
    private static final double[] D = {
        439.932854, 472.418020, 37.684494, 7.472018, 2.920828, 0.005184, -0.963864, -0.188732, 0.191203, 0.049025
    };

    /** Refuses a thermometer without resistance, and more coefficients than there are. */
    public Its90 {
        above = List.copyOf(above);
        below = List.copyOf(below);
        if (!(rTriplePoint > 0) || !Double.isFinite(rTriplePoint) || above.size() > 3 || below.size() > 2) {
            throw new IllegalArgumentException(
                    "R(0.01 °C) is above 0 Ω, and there are at most three coefficients above and two"
                            + " below 0.01 °C; given were " + rTriplePoint + " Ω, " + above + " and " + below);
        }
    }

    /** The reference function Wr. */
    static double reference(double kelvin) {
        return kelvin < TRIPLE_POINT
                ? Math.exp(polynomial(A, (Math.log(kelvin / TRIPLE_POINT) + 1.5) / 1.5))
                : polynomial(C, (kelvin - 754.15) / 481);
    }

    /** Its inverse, to 0.1 mK below and 0.13 mK above the triple point of water. */
    private static double inverse(double ratio) {
        return ratio < 1
                ? TRIPLE_POINT * polynomial(B, (Math.pow(ratio, 1.0 / 6) - 0.65) / 0.35)
                : polynomial(D, (ratio - 2.64) / 1.64) + (TRIPLE_POINT - 0.01);
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x + coefficients[i];
        }
        return sum;
    }

    @Override
    public Temperature at(double ohms) {
        double w = ohms / rTriplePoint;
        double wanted = w - deviation(w);
        if (!(wanted >= reference(LOWEST) && wanted <= reference(HIGHEST))) {
            throw new IllegalArgumentException("the scale is realised here from " + LOWEST + " to " + HIGHEST + " K; "
                    + ohms + " Ω is beyond it for a thermometer of " + rTriplePoint + " Ω");
        }
        double kelvin = inverse(wanted);
        for (int step = 0; step < 3; step++) { // the inverse is good to 0.1 mK, the slope to a part in a thousand
            double slope = (reference(kelvin + 0.01) - reference(kelvin - 0.01)) / 0.02;
            kelvin += (wanted - reference(kelvin)) / slope;
        }
        return new Temperature(kelvin);
    }

    @Override
    public double ohms(Temperature temperature) {
        double kelvin = temperature.kelvin();
        if (!(kelvin >= LOWEST && kelvin <= HIGHEST)) {
            throw new IllegalArgumentException(
                    "the scale is realised here from " + LOWEST + " to " + HIGHEST + " K; asked was " + kelvin + " K");
        }
        double reference = reference(kelvin);
        double w = reference;
        for (int step = 0; step < MOST_STEPS; step++) {
            w = reference + deviation(w);
        }
        return w * rTriplePoint;
    }

    private double deviation(double w) {
        double x = w - 1;
        return w < 1
                ? x * (coefficient(below, 0) + coefficient(below, 1) * Math.log(Math.max(w, Double.MIN_NORMAL)))
                : x * (coefficient(above, 0) + x * (coefficient(above, 1) + x * coefficient(above, 2)));
    }

    private static double coefficient(List<Double> of, int index) {
        return index < of.size() ? of.get(index) : 0;
    }
}
