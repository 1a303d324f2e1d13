// SPDX-License-Identifier: Apache-2.0
package isohume.quantity;

/** Absolute pressure, total or of vapour alone, held in pascals; finite and not negative. */
public record Pressure(double pascals) implements Comparable<Pressure> {
    /** One standard atmosphere, 101 325 Pa. */
    public static final Pressure STANDARD = new Pressure(101_325);

    public Pressure {
        if (!(pascals >= 0) || Double.isInfinite(pascals)) {
            throw new IllegalArgumentException("pressure must be finite and not negative, was " + pascals + " Pa");
        }
    }

    public static Pressure ofPascals(double pascals) {
        return new Pressure(pascals);
    }

    public static Pressure ofHectopascals(double hectopascals) {
        return new Pressure(hectopascals * 100);
    }

    public double hectopascals() {
        return pascals / 100;
    }

    @Override
    public int compareTo(Pressure other) {
        return Double.compare(pascals, other.pascals);
    }
}
