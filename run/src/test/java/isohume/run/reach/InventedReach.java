// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

import isohume.quantity.DewPoint;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.util.List;
import java.util.Optional;

/** Reaches of invented chambers, with the usual surfaces. */
public final class InventedReach {
    private InventedReach() {}

    /** 5 to 60 °C, 5 to 96 % RH. */
    public static Reach usual() {
        return of(5, 5, 96, -30, 58);
    }

    /** As far as its streams go: 0 to 60 °C, 0 to 100 % RH. */
    static Reach ofStreams(double frost, double dew) {
        return of(0, 0, 100, frost, dew);
    }

    private static Reach of(double coldest, double lowest, double highest, double frost, double dew) {
        return new Reach(
                Temperature.ofCelsius(coldest),
                Temperature.ofCelsius(60),
                RelativeHumidity.ofPercent(lowest),
                RelativeHumidity.ofPercent(highest),
                new Streams(
                        DewPoint.overIce(Temperature.ofCelsius(frost)),
                        DewPoint.overWater(Temperature.ofCelsius(dew)),
                        Optional.empty()),
                Surfaces.usual(),
                List.of());
    }
}
