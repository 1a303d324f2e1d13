// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Variates of Student's t by layers of equal area under its density, as {@link NormalLayers} are under the normal one.
 *
 * <p>Marsaglia and Tsang's ziggurat, J. Stat. Softw. 5 (2000) 8, applied to {@code f(x) = (1 + x²/ν)^(-(ν+1)/2)}, which
 * falls from x = 0 on. Beyond the last layer {@code w = 1/(1 + x²/ν)} has the density {@code w^(ν/2-1) (1-w)^(-1/2)}, of
 * which the first factor is drawn and the second thins; that takes little more than one try whatever ν is. The tables and
 * the rare branches go through {@code StrictMath}, so a seed gives the same bits on every machine.
 */
final class StudentLayers implements Layers {
    static final double LEAST_FREEDOM = 1; // below, the tail holds too much for layers to be worth it

    private static final int BISECTIONS = 44;

    private final double freedom;
    private final double power;
    private final double[] edges = new double[COUNT + 1]; // from the outermost, the last one 0
    private final double[] heights = new double[COUNT + 1];
    private final double[] ratios;

    StudentLayers(double freedom) {
        this.freedom = freedom;
        this.power = (freedom + 1) / 2;
        TDistribution known = new TDistribution(freedom);
        double low = 0.5;
        double high = 1e6;
        for (int i = 0; i < BISECTIONS; i++) { // the farther out the layers begin, the less area each has
            double middle = Math.sqrt(low * high);
            if (fits(middle, known)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        boolean unused = fits(high, known);
        edges[COUNT] = 0;
        heights[COUNT] = 1;
        ratios = Layers.ratios(edges);
    }

    /** Stacks layers on a base that begins at an edge; false if they reach the top before they are all there. */
    private boolean fits(double from, TDistribution known) {
        double scale = 1 / known.density(0);
        double area = from * density(from) + known.cumulativeProbability(-from) * scale;
        edges[0] = area / density(from); // the base with its tail, as one rectangle
        edges[1] = from;
        heights[1] = density(from);
        for (int i = 2; i < COUNT; i++) {
            heights[i] = heights[i - 1] + area / edges[i - 1];
            if (heights[i] >= 1) {
                return false;
            }
            edges[i] = inverse(heights[i]);
        }
        return heights[COUNT - 1] + area / edges[COUNT - 1] <= 1 + 1e-12;
    }

    private double density(double x) {
        return StrictMath.exp(-power * StrictMath.log1p(x * x / freedom));
    }

    private double inverse(double height) {
        return Math.sqrt(freedom * StrictMath.expm1(-StrictMath.log(height) / power));
    }

    @Override
    public double[] edges() {
        return edges;
    }

    @Override
    public double[] ratios() {
        return ratios;
    }

    @Override
    public double outside(int layer, double u, RandomStream stream) {
        if (layer == 0) {
            return u < 0 ? -tail(stream) : tail(stream);
        }
        double x = u * edges[layer];
        double height = heights[layer] + stream.uniform() * (heights[layer + 1] - heights[layer]);
        return height < density(x) ? x : stream.layered(this);
    }

    private double tail(RandomStream stream) {
        double square = edges[1] * edges[1] / freedom;
        double most = 1 / (1 + square);
        double thinnest = square / (1 + square); // 1 - most
        while (true) {
            double w = most * StrictMath.pow(1 - stream.uniform(), 2 / freedom);
            double u = stream.uniform();
            if (u * u * (1 - w) < thinnest) {
                return Math.sqrt(freedom * (1 - w) / w);
            }
        }
    }
}
