// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** Water that the walls hold: two reservoirs in exchange with the air, and liquid where a surface was below dew point. */
final class WallFilm {
    private static final double FULL_AT_CELSIUS = 23;
    private static final double CONDENSING_SECONDS = 20; // common practice, no source
    private static final double DRYING_SECONDS = 300;

    private final Sorption sorption;
    private final double saturatedMoles;
    private double fast;
    private double slow;
    private double liquid;

    WallFilm(Sorption sorption, double litres, double total, double percent) {
        this.sorption = sorption;
        saturatedMoles = Air.moles(Air.saturation(FULL_AT_CELSIUS, total), litres, FULL_AT_CELSIUS);
        fast = sorption.fastShare() * saturatedMoles * percent / 100;
        slow = sorption.slowShare() * saturatedMoles * percent / 100;
    }

    /** Moles taken from the air in a part of a step; negative when given back. */
    double sorb(double humidityShare, double seconds) {
        double dry = 1 - Math.min(humidityShare, 1);
        double slowing = 1 + sorption.drySlowing() * dry * dry;
        double held = saturatedMoles * Math.min(humidityShare, 1);
        double toFast = (sorption.fastShare() * held - fast) * approach(seconds, slowing * sorption.fastSeconds());
        double toSlow = (sorption.slowShare() * held - slow) * approach(seconds, slowing * sorption.slowSeconds());
        fast += toFast;
        slow += toSlow;
        return toFast + toSlow;
    }

    /**
     * Moles that condense in a part of a step; negative when liquid dries off.
     *
     * @param overSurface what the air holds beyond saturation at the coldest surface, negative below it
     * @param overAir the same at the temperature of the air; that much becomes dew at once
     */
    double condense(double overSurface, double overAir, double seconds) {
        double taken;
        if (overSurface > 0) {
            taken = Math.max(overSurface * approach(seconds, CONDENSING_SECONDS), overAir);
        } else {
            taken = -Math.min(liquid, -overSurface * approach(seconds, DRYING_SECONDS));
        }
        liquid += taken;
        return taken;
    }

    private static double approach(double seconds, double timeConstant) {
        return 1 - StrictMath.exp(-seconds / timeConstant);
    }

    /** All that is on the walls. */
    double moles() {
        return fast + slow + liquid;
    }

    double liquidMoles() {
        return liquid;
    }
}
