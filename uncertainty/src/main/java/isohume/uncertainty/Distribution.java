// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty;

import java.util.Locale;

/**
 * The state of knowledge about one input, centred on its estimate; all lengths in the input's unit.
 *
 * <p>Source: JCGM 100:2008 4.3 and JCGM 101:2008 6.4. A width of zero is allowed and means a constant.
 */
public sealed interface Distribution {
    /** The standard uncertainty u of the GUM, zero or more. */
    double standardUncertainty();

    /** What the source states: an expanded uncertainty, a half-width, a standard deviation. */
    double stated();

    /** By what the stated figure is divided to give the standard uncertainty, as printed in a budget. */
    String divisor();

    /** The shape's name in the trade, as printed in a budget. */
    String shape();

    /** A normal distribution known by its standard uncertainty. */
    record Normal(double standardUncertainty) implements Distribution {
        public Normal {
            require("standard uncertainty", standardUncertainty);
        }

        @Override
        public double stated() {
            return standardUncertainty;
        }

        @Override
        public String divisor() {
            return "1";
        }

        @Override
        public String shape() {
            return "normal";
        }
    }

    /** An expanded uncertainty with its coverage factor, as certificates state it (GUM 4.3.3). */
    record Expanded(double expanded, double coverageFactor) implements Distribution {
        public Expanded {
            require("expanded uncertainty", expanded);
            if (!(coverageFactor >= 1) || Double.isInfinite(coverageFactor)) {
                throw new IllegalArgumentException(
                        "coverage factor must be a number from 1 up, was " + coverageFactor + "; see the certificate");
            }
        }

        @Override
        public double standardUncertainty() {
            return expanded / coverageFactor;
        }

        @Override
        public double stated() {
            return expanded;
        }

        @Override
        public String divisor() {
            return number(coverageFactor);
        }

        @Override
        public String shape() {
            return "normal";
        }
    }

    /** Limits between which all values are equally likely (GUM 4.3.7): u = a/√3. */
    record Rectangular(double halfWidth) implements Distribution {
        public Rectangular {
            require("half-width", halfWidth);
        }

        @Override
        public double standardUncertainty() {
            return halfWidth / Math.sqrt(3);
        }

        @Override
        public double stated() {
            return halfWidth;
        }

        @Override
        public String divisor() {
            return "√3";
        }

        @Override
        public String shape() {
            return "rectangular";
        }
    }

    /** Limits with values near the middle more likely (GUM 4.3.9): u = a/√6. */
    record Triangular(double halfWidth) implements Distribution {
        public Triangular {
            require("half-width", halfWidth);
        }

        @Override
        public double standardUncertainty() {
            return halfWidth / Math.sqrt(6);
        }

        @Override
        public double stated() {
            return halfWidth;
        }

        @Override
        public String divisor() {
            return "√6";
        }

        @Override
        public String shape() {
            return "triangular";
        }
    }

    /** A quantity that swings between its limits like a sine (JCGM 101 6.4.6): u = a/√2. */
    record UShaped(double halfWidth) implements Distribution {
        public UShaped {
            require("half-width", halfWidth);
        }

        @Override
        public double standardUncertainty() {
            return halfWidth / Math.sqrt(2);
        }

        @Override
        public double stated() {
            return halfWidth;
        }

        @Override
        public String divisor() {
            return "√2";
        }

        @Override
        public String shape() {
            return "U-shaped";
        }
    }

    /**
     * A symmetric trapezoid (GUM 4.3.9): base half-width a, top half-width βa with β from 0 (a triangle) to 1 (a
     * rectangle); u = a·√((1 + β²)/6).
     */
    record Trapezoidal(double halfWidth, double beta) implements Distribution {
        public Trapezoidal {
            require("half-width", halfWidth);
            if (!(beta >= 0 && beta <= 1)) {
                throw new IllegalArgumentException(
                        "beta is the top width over the base width, from 0 to 1, was " + beta);
            }
        }

        @Override
        public double standardUncertainty() {
            return halfWidth * Math.sqrt((1 + beta * beta) / 6);
        }

        @Override
        public double stated() {
            return halfWidth;
        }

        @Override
        public String divisor() {
            return number(Math.sqrt(6 / (1 + beta * beta)));
        }

        @Override
        public String shape() {
            return "trapezoidal";
        }
    }

    /**
     * Limits ±a that are themselves known only to ±d (JCGM 101 6.4.3, the curvilinear trapezoid); u = √(a²/3 + d²/9).
     */
    record InexactLimits(double halfWidth, double doubt) implements Distribution {
        public InexactLimits {
            require("half-width", halfWidth);
            require("doubt about the half-width", doubt);
            if (doubt > halfWidth) {
                throw new IllegalArgumentException(
                        "the doubt about a half-width cannot exceed it: half-width " + halfWidth + ", doubt " + doubt);
            }
        }

        @Override
        public double standardUncertainty() {
            return Math.sqrt(halfWidth * halfWidth / 3 + doubt * doubt / 9);
        }

        @Override
        public double stated() {
            return halfWidth;
        }

        @Override
        public String divisor() {
            return halfWidth == 0 ? "√3" : number(halfWidth / standardUncertainty());
        }

        @Override
        public String shape() {
            return "curvilinear trapezoidal";
        }
    }

    /**
     * A scaled t distribution (JCGM 101 6.4.9). Its standard uncertainty is the scale, as the GUM has it, and the
     * heavier tails enter by the degrees of freedom.
     */
    record StudentT(double scale, double degreesOfFreedom) implements Distribution {
        public StudentT {
            require("scale", scale);
            Input.requireDegreesOfFreedom(degreesOfFreedom);
        }

        @Override
        public double standardUncertainty() {
            return scale;
        }

        @Override
        public double stated() {
            return scale;
        }

        @Override
        public String divisor() {
            return "1";
        }

        @Override
        public String shape() {
            return "Student t";
        }
    }

    /**
     * The mean of readings (Type A, GUM 4.2): their standard deviation s and the number of independent readings they
     * are worth; u = s/√n, with n - 1 degrees of freedom but never fewer than one.
     */
    record MeanOfReadings(double standardDeviation, double effectiveNumber) implements Distribution {
        public MeanOfReadings {
            require("standard deviation", standardDeviation);
            if (!(effectiveNumber >= 1) || Double.isInfinite(effectiveNumber)) {
                throw new IllegalArgumentException(
                        "readings are worth at least one independent reading, was " + effectiveNumber);
            }
        }

        @Override
        public double standardUncertainty() {
            return standardDeviation / Math.sqrt(effectiveNumber);
        }

        public double degreesOfFreedom() {
            return Math.max(1, effectiveNumber - 1);
        }

        @Override
        public double stated() {
            return standardDeviation;
        }

        @Override
        public String divisor() {
            return "√" + number(effectiveNumber);
        }

        @Override
        public String shape() {
            return "Student t";
        }
    }

    private static void require(String what, double width) {
        if (!(width >= 0) || Double.isInfinite(width)) { // the negation also catches NaN
            throw new IllegalArgumentException(what + " must be a finite number, zero or more, was " + width);
        }
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.4f", value);
        return text.replaceFirst("\\.?0+$", "");
    }
}
