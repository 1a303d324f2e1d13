// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

/**
 * Standard normal variates by the ziggurat of Marsaglia and Tsang as repaired by Doornik (2005), its rare branches through
 * {@code StrictMath}.
 */
final class NormalLayers implements Layers {
    static final NormalLayers STANDARD = new NormalLayers();

    private static final double TAIL_FROM = 3.442619855899;
    private static final double LAYER_AREA = 9.91256303526217e-3;

    private final double[] edges = cut();
    private final double[] ratios = Layers.ratios(edges);

    private NormalLayers() {}

    private static double[] cut() {
        double[] edges = new double[COUNT + 1];
        double density = StrictMath.exp(-0.5 * TAIL_FROM * TAIL_FROM);
        edges[0] = LAYER_AREA / density;
        edges[1] = TAIL_FROM;
        for (int i = 2; i < COUNT; i++) {
            density += LAYER_AREA / edges[i - 1];
            edges[i] = Math.sqrt(-2 * StrictMath.log(density));
        }
        return edges;
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
            return tail(u < 0, stream);
        }
        double x = u * edges[layer];
        double low = StrictMath.exp(-0.5 * (edges[layer] * edges[layer] - x * x));
        double high = StrictMath.exp(-0.5 * (edges[layer + 1] * edges[layer + 1] - x * x));
        return high + stream.uniform() * (low - high) < 1 ? x : stream.normal();
    }

    private static double tail(boolean negative, RandomStream stream) {
        double x;
        double y;
        do {
            x = StrictMath.log(1 - stream.uniform()) / TAIL_FROM;
            y = StrictMath.log(1 - stream.uniform());
        } while (-2 * y < x * x);
        return negative ? x - TAIL_FROM : TAIL_FROM - x;
    }
}
