// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** Heat in two masses: the air with its fittings, and the walls, which the thermoelectric drive heats and cools. */
final class HeatBalance {
    private static final double OPEN_DOOR = 4; // W/K more between air and room; common practice, no source
    private static final double COLDEST_BELOW_ROOM = 55; // K, where the drive pumps no more; common practice, no source
    private static final double FINEST_SHARE = 0.1; // of the shortest time constant, for one explicit step

    private final Enclosure enclosure;
    private double air;
    private double wall;

    HeatBalance(Enclosure enclosure, double celsius) {
        this.enclosure = enclosure;
        air = celsius;
        wall = celsius;
    }

    void step(double driveWatts, double room, boolean doorOpen) {
        double pumped = driveWatts < 0 ? driveWatts * fading(room - wall) : driveWatts;
        double toRoom = enclosure.airToRoom() + (doorOpen ? OPEN_DOOR : 0);
        int parts = parts(toRoom);
        double h = World.STEP_SECONDS / parts;
        for (int i = 0; i < parts; i++) {
            double exchanged = enclosure.airToWall() * (wall - air);
            double airWatts = exchanged + toRoom * (room - air) + enclosure.fanWatts();
            double wallWatts = pumped - exchanged + enclosure.wallToRoom() * (room - wall);
            air += h * airWatts / enclosure.airHeatCapacity();
            wall += h * wallWatts / enclosure.wallHeatCapacity();
        }
    }

    /** Share of the cooling power that is left with the walls so far below the room. */
    static double fading(double kelvin) {
        return Math.clamp(1 - kelvin / COLDEST_BELOW_ROOM, 0, 1);
    }

    private int parts(double toRoom) {
        double airRate = (enclosure.airToWall() + toRoom) / enclosure.airHeatCapacity();
        double wallRate = (enclosure.airToWall() + enclosure.wallToRoom()) / enclosure.wallHeatCapacity();
        return (int) Math.ceil(World.STEP_SECONDS * Math.max(airRate, wallRate) / FINEST_SHARE);
    }

    double air() {
        return air;
    }

    double wall() {
        return wall;
    }

    /** The coldest surface that the air touches: the walls or the door's inner face. */
    double coldest(double room) {
        return Math.min(wall, air + enclosure.doorChill() * (room - air));
    }
}
