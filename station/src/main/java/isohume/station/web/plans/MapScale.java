// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.plans;

import isohume.certificate.Axis;
import isohume.device.Setpoint;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.reach.Attainment;
import isohume.run.reach.Reach;

/** Where a condition lies on the map: temperature across; relative humidity or dew point up. */
final class MapScale {
    static final int WIDTH = 520;
    static final int HEIGHT = 400;
    static final int LEFT = 58;
    static final int RIGHT = WIDTH - 12;
    static final int TOP = 12;
    static final int BOTTOM = HEIGHT - 48;
    private static final double ASIDE = 5; // K beyond the chamber that are shown

    private final Attainment attainment;
    private final boolean dew;
    private final Axis across;
    private final Axis up;

    MapScale(Attainment attainment, boolean dew) {
        this.attainment = attainment;
        this.dew = dew;
        Reach reach = attainment.reach();
        double coldest = reach.coldest().celsius();
        double warmest = reach.warmest().celsius();
        across = Axis.covering(coldest - ASIDE, warmest + ASIDE, 8);
        up = dew
                ? Axis.covering(reach.streams().driest().celsius() - ASIDE, warmest + ASIDE, 10)
                : Axis.covering(0, 100, 11);
    }

    Axis across() {
        return across;
    }

    Axis up() {
        return up;
    }

    boolean dew() {
        return dew;
    }

    double x(double celsius) {
        return across.place(Math.clamp(celsius, across.low(), across.high()), LEFT, RIGHT);
    }

    double y(double celsius, double percent) {
        return up.place(Math.clamp(height(celsius, percent), up.low(), up.high()), BOTTOM, TOP);
    }

    /** On the axis, in its unit. */
    private double height(double celsius, double percent) {
        if (!dew) {
            return percent;
        }
        Setpoint at = new Setpoint(Temperature.ofCelsius(celsius), RelativeHumidity.ofPercent(Math.max(0, percent)));
        return attainment.demand(at).map(d -> d.point().celsius()).orElse(up.low());
    }

    /** The humidity of a height on the axis: itself, or what a dew point makes at a temperature, up to saturation. */
    double percent(double celsius, double height) {
        if (!dew) {
            return height;
        }
        double low = 0;
        double high = 100;
        for (int i = 0; i < 40; i++) { // bisection: the dew point rises with the humidity
            double middle = (low + high) / 2;
            if (height(celsius, middle) < height) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
