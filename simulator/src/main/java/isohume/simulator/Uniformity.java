// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/**
 * How the air at an instrument may differ from the air at the reference thermometer; half-widths of rectangular
 * distributions in K, from which each seed draws.
 *
 * @param atRoom with the chamber at room temperature
 * @param perKelvinBelow what is added for each kelvin below the room
 * @param perKelvinAbove what is added for each kelvin above the room
 * @param loading from the load in the chamber
 * @param flutter standard deviation of the turbulence at one place; not drawn but noise
 */
public record Uniformity(double atRoom, double perKelvinBelow, double perKelvinAbove, double loading, double flutter) {
    public Uniformity {
        Limits.between("uniformity at room temperature", atRoom, 0, 2, "K");
        Limits.between("uniformity per kelvin below the room", perKelvinBelow, 0, 0.1, "K/K");
        Limits.between("uniformity per kelvin above the room", perKelvinAbove, 0, 0.1, "K/K");
        Limits.between("effect of the load", loading, 0, 1, "K");
        Limits.between("turbulence", flutter, 0, 0.2, "K");
    }

    /** 0.10 K at 23 °C, 0.15 K at 10 °C, 0.20 K at 40 °C, load 0.03 K. Common practice, no source. */
    public static Uniformity portable() {
        return new Uniformity(0.10, 0.05 / 13, 0.10 / 17, 0.03, 0.005);
    }

    /** Half-width without the load, at a chamber temperature that is so far above the room. */
    public double halfWidth(double aboveRoom) {
        return atRoom + (aboveRoom < 0 ? -aboveRoom * perKelvinBelow : aboveRoom * perKelvinAbove);
    }
}
