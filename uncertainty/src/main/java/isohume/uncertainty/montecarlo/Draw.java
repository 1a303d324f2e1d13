// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

import isohume.uncertainty.Distribution;
import isohume.uncertainty.Input;
import org.hipparchus.special.Erf;

/**
 * Draws deviations of one input from its estimate (JCGM 101, 6.4). A finite number of degrees of freedom makes a normal
 * distribution a scaled t (6.4.9), and limits inexact by the part 1/√(2ν) of the half-width (6.4.3 with GUM G.4.2).
 */
interface Draw {
    /** A deviation; a drawn value depends on the stream alone. */
    double from(RandomStream stream);

    /** A deviation made from a given standard normal variate, so that correlations pass from the normal to the shape. */
    double from(double normal, RandomStream stream);

    /** Draws values of the input, its estimate and a deviation each, for the trials from one up to, not including, another. */
    default void fill(double[] column, int from, int to, double estimate, RandomStream stream) {
        for (int i = from; i < to; i++) {
            column[i] = estimate + from(stream);
        }
    }

    static Draw of(Input input) {
        double freedom = input.degreesOfFreedom();
        return switch (input.distribution()) {
            case Distribution.Normal n -> bell(n.standardUncertainty(), freedom);
            case Distribution.Expanded e -> bell(e.standardUncertainty(), freedom);
            case Distribution.StudentT t -> bell(t.scale(), freedom);
            case Distribution.MeanOfReadings m -> bell(m.standardUncertainty(), freedom);
            case Distribution.Rectangular r -> limits(r.halfWidth(), reliability(freedom) * r.halfWidth());
            case Distribution.InexactLimits c -> limits(c.halfWidth(), c.doubt());
            case Distribution.Triangular t -> trapezoid(t.halfWidth(), 0);
            case Distribution.Trapezoidal t -> trapezoid(t.halfWidth(), t.beta());
            case Distribution.UShaped u -> arcsine(u.halfWidth());
        };
    }

    private static double reliability(double freedom) {
        return Math.min(1, Math.sqrt(0.5 / freedom));
    }

    private static Draw bell(double scale, double freedom) {
        if (Double.isInfinite(freedom)) {
            return normal(scale);
        }
        return freedom < StudentLayers.LEAST_FREEDOM ? student(scale, freedom) : layered(scale, freedom);
    }

    private static Draw layered(double scale, double freedom) {
        StudentLayers layers = new StudentLayers(freedom);
        Draw correlated = student(scale, freedom);
        return new Draw() {
            @Override
            public double from(RandomStream stream) {
                return scale * stream.layered(layers);
            }

            @Override
            public double from(double normal, RandomStream stream) {
                return correlated.from(normal, stream);
            }

            @Override
            public void fill(double[] column, int from, int to, double estimate, RandomStream stream) {
                stream.layered(layers, column, from, to);
                for (int i = from; i < to; i++) {
                    column[i] = estimate + scale * column[i];
                }
            }
        };
    }

    // those that budgets are full of fill columns in loops of their own, which compile to straight code

    private static Draw normal(double scale) {
        return new Draw() {
            @Override
            public double from(RandomStream stream) {
                return scale * stream.normal();
            }

            @Override
            public double from(double normal, RandomStream stream) {
                return scale * normal;
            }

            @Override
            public void fill(double[] column, int from, int to, double estimate, RandomStream stream) {
                stream.layered(NormalLayers.STANDARD, column, from, to);
                for (int i = from; i < to; i++) {
                    column[i] = estimate + scale * column[i];
                }
            }
        };
    }

    private static Draw student(double scale, double freedom) {
        ChiSquared square = new ChiSquared(freedom);
        return new Draw() {
            @Override
            public double from(RandomStream stream) {
                return from(stream.normal(), stream);
            }

            @Override
            public double from(double normal, RandomStream stream) {
                return scale * normal * Math.sqrt(freedom / square.draw(stream));
            }

            @Override
            public void fill(double[] column, int from, int to, double estimate, RandomStream stream) {
                stream.layered(NormalLayers.STANDARD, column, from, to);
                for (int i = from; i < to; i++) {
                    column[i] = estimate + from(column[i], stream);
                }
            }
        };
    }

    private static Draw limits(double halfWidth, double doubt) {
        return new Draw() {
            @Override
            public double from(RandomStream stream) {
                return width(stream) * stream.symmetric();
            }

            @Override
            public double from(double normal, RandomStream stream) {
                return width(stream) * (2 * probability(normal) - 1);
            }

            @Override
            public void fill(double[] column, int from, int to, double estimate, RandomStream stream) {
                stream.symmetric(column, from, to);
                if (doubt == 0) {
                    for (int i = from; i < to; i++) {
                        column[i] = estimate + halfWidth * column[i];
                    }
                } else {
                    for (int i = from; i < to; i++) {
                        column[i] = estimate + width(stream) * column[i];
                    }
                }
            }

            private double width(RandomStream stream) {
                return doubt == 0 ? halfWidth : halfWidth + doubt * stream.symmetric();
            }
        };
    }

    private static Draw trapezoid(double halfWidth, double beta) {
        double wide = halfWidth * (1 + beta) / 2;
        double narrow = halfWidth * (1 - beta) / 2;
        return new Draw() {
            @Override
            public double from(RandomStream stream) {
                return wide * stream.symmetric() + narrow * stream.symmetric();
            }

            @Override
            public double from(double normal, RandomStream stream) {
                double p = probability(normal);
                double tail = Math.min(p, 1 - p);
                double flank = (1 - beta) / (2 * (1 + beta)); // probability of one sloping side
                double inward = tail < flank
                        ? halfWidth * Math.sqrt(2 * tail * (1 - beta * beta))
                        : halfWidth * (1 - beta) + (tail - flank) * halfWidth * (1 + beta);
                return p < 0.5 ? inward - halfWidth : halfWidth - inward;
            }
        };
    }

    private static Draw arcsine(double halfWidth) {
        return new Draw() {
            @Override
            public double from(RandomStream stream) {
                while (true) { // the cosine of twice the angle of a point in the unit disc
                    double x = stream.symmetric();
                    double y = stream.symmetric();
                    double square = x * x + y * y;
                    if (square <= 1) {
                        return halfWidth * (x * x - y * y) / square;
                    }
                }
            }

            @Override
            public double from(double normal, RandomStream stream) {
                return halfWidth * StrictMath.sin(Math.PI * (probability(normal) - 0.5));
            }
        };
    }

    private static double probability(double normal) {
        return 0.5 * Erf.erfc(-normal / Math.sqrt(2));
    }
}
