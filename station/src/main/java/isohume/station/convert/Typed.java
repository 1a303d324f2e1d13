// SPDX-License-Identifier: Apache-2.0
package isohume.station.convert;

/**
 * A number as it was typed, perhaps with its uncertainty: {@code 12.03±0.1}.
 *
 * @param expanded U at k = 2; 0 when none was given
 */
public record Typed(double value, double expanded) {
    static Typed exact(double value) {
        return new Typed(value, 0);
    }

    double standard() {
        return expanded / 2;
    }
}
