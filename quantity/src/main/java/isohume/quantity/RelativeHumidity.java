// SPDX-License-Identifier: Apache-2.0
package isohume.quantity;

/**
 * Relative humidity, held as a fraction of saturation; finite and not negative. Saturation is over liquid water at
 * every temperature unless the place that uses it says otherwise. Values above 1 are possible where a noisy
 * measurement meets saturated air, so they are kept and not clamped.
 */
public record RelativeHumidity(double fraction) implements Comparable<RelativeHumidity> {
    public RelativeHumidity {
        if (!(fraction >= 0) || Double.isInfinite(fraction)) {
            throw new IllegalArgumentException(
                    "relative humidity must be finite and not negative, was " + fraction * 100 + " % RH");
        }
    }

    public static RelativeHumidity ofFraction(double fraction) {
        return new RelativeHumidity(fraction);
    }

    public static RelativeHumidity ofPercent(double percent) {
        return new RelativeHumidity(percent / 100);
    }

    public double percent() {
        return fraction * 100;
    }

    @Override
    public int compareTo(RelativeHumidity other) {
        return Double.compare(fraction, other.fraction);
    }
}
