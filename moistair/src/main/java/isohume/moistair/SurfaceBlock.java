// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/**
 * The columns of a block of temperatures over one surface: short loops over one operation each, of which the processor
 * takes several rounds at once. Filled by {@link Surface#reckon}; for one thread.
 */
final class SurfaceBlock {
    static final int MOST = 256; // all columns of two surfaces stay in the first-level cache

    final double[] kelvin;
    final double[] log; // ln(e/Pa)
    final double[] e; // Pa, without air
    final double[] logFactor; // ln f

    SurfaceBlock(int size) {
        kelvin = new double[size];
        log = new double[size];
        e = new double[size];
        logFactor = new double[size];
    }

    /** Takes temperatures in from a place of an array on. */
    void take(double[] celsius, int from, int count) {
        for (int i = 0; i < count; i++) {
            kelvin[i] = celsius[from + i] + Celsius.ZERO;
        }
    }
}
