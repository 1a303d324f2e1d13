// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

/**
 * A density that falls on both sides of zero, cut into layers of equal area. A draw picks a layer and a place in it; nine in
 * ten lie where the whole layer is under the density, and cost one random number and one product.
 *
 * <p>Arrays are not copied, and not to be changed.
 */
interface Layers {
    int COUNT = 128;

    /** Half-widths from the base, which counts with its tail as one rectangle, to the top, which is 0. */
    double[] edges();

    /** Of each layer, the part of its half-width up to which it lies wholly under the density. */
    double[] ratios();

    /**
     * The variate when the first try fell outside that part.
     *
     * @param u the place that was tried, in half-widths of the layer
     */
    double outside(int layer, double u, RandomStream stream);

    static double[] ratios(double[] edges) {
        double[] ratios = new double[COUNT];
        for (int i = 0; i < COUNT; i++) {
            ratios[i] = edges[i + 1] / edges[i];
        }
        return ratios;
    }
}
