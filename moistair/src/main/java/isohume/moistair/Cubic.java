// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/** {@code c0 + c1 x + c2 x² + c3 x³}, with the digits of the source. */
record Cubic(double c0, double c1, double c2, double c3) {
    double at(double x) {
        return (c3 * x + c2) * (x * x) + (c1 * x + c0); // in this shape its two halves run side by side
    }

    double slopeAt(double x) {
        return (3 * c3 * x + 2 * c2) * x + c1;
    }
}
