// SPDX-License-Identifier: Apache-2.0
package isohume.quantity;

/**
 * One condition at which readings are taken.
 *
 * @param number its place in the plan, from 1
 */
public record Point(int number, Temperature temperature, RelativeHumidity humidity, Direction direction) {
    public Point {
        if (number < 1) {
            throw new IllegalArgumentException("points are numbered from 1, was " + number);
        }
    }
}
