// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.montecarlo;

/**
 * Pseudo-random numbers that come out the same on every machine.
 *
 * <p>Generator: xoshiro256++ 1.0 of Blackman and Vigna, period 2^256 - 1, seeded by SplitMix64; {@link #fork} takes
 * streams 2^128 numbers apart. Not safe for several threads; fork one stream for each.
 */
final class RandomStream {
    private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;
    private static final long[] JUMP = {
        0x180ec6d33cfd0abaL, 0xd5a61266f0c9392cL, 0xa9582618e03fc9aaL, 0x39abdc4529b1661cL
    };

    private long s0;
    private long s1;
    private long s2;
    private long s3;

    private RandomStream(long s0, long s1, long s2, long s3) {
        this.s0 = s0;
        this.s1 = s1;
        this.s2 = s2;
        this.s3 = s3;
    }

    static RandomStream seeded(long seed) {
        long[] state = new long[4];
        long counter = seed;
        for (int i = 0; i < state.length; i++) {
            counter += GOLDEN_GAMMA;
            state[i] = splitMix(counter);
        }
        return ofState(state[0], state[1], state[2], state[3]);
    }

    static RandomStream ofState(long s0, long s1, long s2, long s3) {
        return new RandomStream(s0, s1, s2, s3);
    }

    /** A stream that starts here, while this one jumps 2^128 numbers ahead. */
    RandomStream fork() {
        RandomStream here = new RandomStream(s0, s1, s2, s3);
        long t0 = 0;
        long t1 = 0;
        long t2 = 0;
        long t3 = 0;
        for (long word : JUMP) {
            for (int bit = 0; bit < Long.SIZE; bit++) {
                if ((word & (1L << bit)) != 0) {
                    t0 ^= s0;
                    t1 ^= s1;
                    t2 ^= s2;
                    t3 ^= s3;
                }
                step();
            }
        }
        s0 = t0;
        s1 = t1;
        s2 = t2;
        s3 = t3;
        return here;
    }

    long nextLong() {
        long result = Long.rotateLeft(s0 + s3, 23) + s0;
        step();
        return result;
    }

    /** Evenly from 0 up to, not including, 1. */
    double uniform() {
        return (nextLong() >>> 11) * 0x1p-53;
    }

    /** Evenly between -1 and 1, neither included. */
    double symmetric() {
        return symmetric(nextLong());
    }

    /** Fills the places of a column from one up to another with what {@link #symmetric()} would give one after the other. */
    void symmetric(double[] column, int from, int to) {
        long a = s0; // in variables of its own the state stays in registers
        long b = s1;
        long c = s2;
        long d = s3;
        for (int i = from; i < to; i++) {
            column[i] = symmetric(Long.rotateLeft(a + d, 23) + a);
            long t = b << 17;
            c ^= a;
            d ^= b;
            b ^= c;
            a ^= d;
            c ^= t;
            d = Long.rotateLeft(d, 45);
        }
        s0 = a;
        s1 = b;
        s2 = c;
        s3 = d;
    }

    /** A standard normal variate. */
    double normal() {
        return layered(NormalLayers.STANDARD);
    }

    /** A variate of the density that was cut into layers. */
    double layered(Layers layers) {
        long bits = nextLong();
        int layer = layer(bits);
        double u = symmetric(bits);
        return Math.abs(u) < layers.ratios()[layer] ? u * layers.edges()[layer] : layers.outside(layer, u, this);
    }

    /** Fills the places of a column from one up to another with what {@link #layered} would give one after the other. */
    void layered(Layers layers, double[] column, int from, int to) {
        double[] edges = layers.edges();
        double[] ratios = layers.ratios();
        long a = s0;
        long b = s1;
        long c = s2;
        long d = s3;
        for (int i = from; i < to; i++) {
            long bits = Long.rotateLeft(a + d, 23) + a;
            long t = b << 17;
            c ^= a;
            d ^= b;
            b ^= c;
            a ^= d;
            c ^= t;
            d = Long.rotateLeft(d, 45);
            int layer = layer(bits);
            double u = symmetric(bits);
            if (Math.abs(u) < ratios[layer]) {
                column[i] = u * edges[layer];
            } else {
                s0 = a;
                s1 = b;
                s2 = c;
                s3 = d;
                column[i] = layers.outside(layer, u, this);
                a = s0;
                b = s1;
                c = s2;
                d = s3;
            }
        }
        s0 = a;
        s1 = b;
        s2 = c;
        s3 = d;
    }

    private static int layer(long bits) {
        return (int) (bits & (Layers.COUNT - 1)); // the lowest bits, which symmetric() does not use
    }

    private void step() {
        long t = s1 << 17;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= t;
        s3 = Long.rotateLeft(s3, 45);
    }

    private static double symmetric(long bits) {
        return ((bits >> 11) + 0.5) * 0x1p-52;
    }

    private static long splitMix(long state) {
        long z = state;
        z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }
}
