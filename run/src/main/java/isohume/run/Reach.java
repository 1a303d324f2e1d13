// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.moistair.MoistAir;
import isohume.moistair.OutsideRange;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Point;
import isohume.quantity.Pressure;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.util.Locale;
import java.util.Optional;

/**
 * What a bench can attain, at standard pressure.
 *
 * @param coldest lowest chamber temperature
 * @param warmest highest chamber temperature
 * @param lowest lowest relative humidity of the chamber's own range
 * @param highest highest relative humidity of the chamber's own range
 * @param driest frost point of the dry stream, about as dry as the chamber gets
 * @param wettest dew point of the wet stream, about as wet as the chamber gets
 */
public record Reach(
        Temperature coldest,
        Temperature warmest,
        RelativeHumidity lowest,
        RelativeHumidity highest,
        DewPoint driest,
        DewPoint wettest) {

    /** Why a point cannot be had and what is the nearest that can; empty when it can be had. */
    public Optional<String> hindrance(Point point, MoistAir air) {
        Temperature t = point.temperature();
        if (t.compareTo(coldest) < 0 || t.compareTo(warmest) > 0) {
            return Optional.of(String.format(
                    Locale.ROOT,
                    "%.1f °C is beyond the chamber, which goes from %.1f to %.1f °C",
                    t.celsius(),
                    coldest.celsius(),
                    warmest.celsius()));
        }
        double least = Math.max(lowest.percent(), humidityOf(driest, t, air));
        double most = Math.min(highest.percent(), humidityOf(wettest, t, air));
        double wanted = point.humidity().percent();
        if (wanted < least) {
            boolean dryAir = least > lowest.percent();
            return Optional.of(
                    tooFar(wanted, t, dryAir ? "the dry air is too wet for it" : "the chamber ends there", least));
        }
        if (wanted > most) {
            boolean wetAir = most < highest.percent();
            return Optional.of(
                    tooFar(wanted, t, wetAir ? "the wet air is too dry for it" : "the chamber ends there", most));
        }
        return Optional.empty();
    }

    private static String tooFar(double wanted, Temperature t, String why, double nearest) {
        return String.format(
                Locale.ROOT,
                "%.1f %% RH at %.1f °C cannot be reached: %s; the nearest is %.1f %% RH",
                wanted,
                t.celsius(),
                why,
                nearest);
    }

    /** Beyond 100 % RH nothing binds but condensation, so the figure need not be exact there. */
    private static double humidityOf(DewPoint point, Temperature t, MoistAir air) {
        if (point.deposit() == Phase.WATER && point.temperature().compareTo(t) >= 0) {
            return 100;
        }
        try {
            return air.relativeHumidity(point, Pressure.STANDARD, t, Pressure.STANDARD)
                    .percent();
        } catch (OutsideRange tooCold) {
            return 0;
        }
    }
}
