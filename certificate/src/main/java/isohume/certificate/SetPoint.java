// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import isohume.quantity.Point;

/** What was asked of the chamber, free of the rounding that a conversion to kelvin and back leaves. */
record SetPoint(double celsius, double percent) {
    private static final double GRAIN = 1e6;

    static SetPoint of(Point point) {
        return new SetPoint(
                settle(point.temperature().celsius()), settle(point.humidity().percent()));
    }

    private static double settle(double value) {
        return Math.rint(value * GRAIN) / GRAIN;
    }
}
