// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/** {@code c0 + c1 x + … + c6 x⁶}, with the digits of the source. */
record Sextic(double c0, double c1, double c2, double c3, double c4, double c5, double c6) {
    /** Even and odd powers apart: the processor works on both at once. */
    double at(double x) {
        double square = x * x;
        double even = ((c6 * square + c4) * square + c2) * square + c0;
        double odd = (c5 * square + c3) * square + c1;
        return odd * x + even;
    }

    /** The coefficient of {@code x^power}. */
    double coefficient(int power) {
        return switch (power) {
            case 0 -> c0;
            case 1 -> c1;
            case 2 -> c2;
            case 3 -> c3;
            case 4 -> c4;
            case 5 -> c5;
            case 6 -> c6;
            default -> 0;
        };
    }
}
