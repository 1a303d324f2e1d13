// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/**
 * The body of the chamber.
 *
 * @param volumeLitres free volume, 0.5 to 200 L
 * @param airHeatCapacity heat capacity of air, fins and fittings, J/K
 * @param wallHeatCapacity heat capacity of the walls, J/K
 * @param airToWall heat transfer between air and walls with the fan on, W/K
 * @param airToRoom heat transfer between air and room through the door, W/K
 * @param wallToRoom heat transfer between walls and room through the insulation, W/K
 * @param doorChill how far the door's inner face is from the air towards the room, as a share
 * @param fanWatts heat from the fan and the instruments, W
 * @param heatingWatts most heat that the thermoelectric drive gives to the walls, W
 * @param coolingWatts most heat that it takes from them at room temperature, W; it takes less the colder they are
 */
public record Enclosure(
        double volumeLitres,
        double airHeatCapacity,
        double wallHeatCapacity,
        double airToWall,
        double airToRoom,
        double wallToRoom,
        double doorChill,
        double fanWatts,
        double heatingWatts,
        double coolingWatts) {
    public Enclosure {
        Limits.between("chamber volume", volumeLitres, 0.5, 200, "L");
        Limits.between("heat capacity of the air", airHeatCapacity, 20, 1e5, "J/K");
        Limits.between("heat capacity of the walls", wallHeatCapacity, 200, 1e6, "J/K");
        Limits.between("heat transfer from air to walls", airToWall, 0.5, 100, "W/K");
        Limits.between("heat transfer from air to room", airToRoom, 0, 20, "W/K");
        Limits.between("heat transfer from walls to room", wallToRoom, 0, 20, "W/K");
        Limits.between("chill of the door", doorChill, 0, 1, "");
        Limits.between("heat of the fan", fanWatts, 0, 10, "W");
        Limits.between("heating power", heatingWatts, 0, 500, "W");
        Limits.between("cooling power", coolingWatts, 0, 500, "W");
    }

    /** A chamber that one person carries. Common practice, no source. */
    public static Enclosure portable() {
        return new Enclosure(3, 120, 1200, 5, 0.10, 0.15, 0.03, 1, 60, 40);
    }

    public Enclosure withVolumeLitres(double litres) {
        return new Enclosure(
                litres,
                airHeatCapacity,
                wallHeatCapacity,
                airToWall,
                airToRoom,
                wallToRoom,
                doorChill,
                fanWatts,
                heatingWatts,
                coolingWatts);
    }
}
