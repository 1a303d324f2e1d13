// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/**
 * Vapour in the chamber. What the streams and the leak exchange is followed exactly over a part of a step; the walls and
 * the change of the amount of gas come after it. Every mole that leaves one account enters another.
 */
final class VapourBalance {
    private static final double OPEN_DOOR_FLOW = 40; // L/min; common practice, no source
    private static final double COARSEST_SHARE = 0.25; // of the change-over time, for one part of a step

    private final double litres;
    private final double leakFlow;
    private final WallFilm walls;
    private final Saturator saturator;
    private final DryingAgent agent;
    private double dryMoles;
    private double vapourMoles;
    private double fromRoomMoles;

    VapourBalance(Enclosure enclosure, Streams streams, WallFilm walls, Climate start) {
        litres = enclosure.volumeLitres();
        leakFlow = Air.flow(streams.leakFlow());
        this.walls = walls;
        saturator = new Saturator(streams, start.celsius());
        agent = new DryingAgent(streams);
        double gas = Air.moles(start.pascals(), litres, start.celsius());
        vapourMoles = gas * start.vapour() / start.pascals();
        dryMoles = gas - vapourMoles;
    }

    /** What surrounds the vapour during a step: °C, Pa, and vapour per dry gas in the room. */
    record Surround(double air, double coldest, double total, double roomRatio, boolean doorOpen) {}

    /**
     * @param flow of both streams together, L/min
     * @param wetShare share of the wet one, 0 to 1
     */
    void step(Surround now, double flow, double wetShare) {
        breathe(now);
        double streams = Air.flow(flow);
        double room = leakFlow + (now.doorOpen() ? Air.flow(OPEN_DOOR_FLOW) : 0);
        int parts = (int) Math.max(1, Math.ceil(World.STEP_SECONDS * (streams + room) / dryMoles / COARSEST_SHARE));
        for (int i = 0; i < parts; i++) {
            double seconds = World.STEP_SECONDS / parts;
            exchange(now, streams * wetShare, streams * (1 - wetShare), room, seconds);
            touchWalls(now, seconds);
        }
    }

    /** Warming air leaves the chamber with its vapour; cooling air draws in the room's. */
    private void breathe(Surround now) {
        double ratio = ratio();
        double change = Air.moles(now.total(), litres, now.air()) / (1 + ratio) - dryMoles;
        double vapour = change * (change > 0 ? now.roomRatio() : ratio);
        dryMoles += change;
        vapourMoles += vapour;
        fromRoomMoles += vapour;
    }

    private void exchange(Surround now, double wet, double dry, double room, double seconds) {
        double flow = wet + dry + room;
        if (flow <= 0) {
            return;
        }
        double before = ratio();
        double wetRatio = saturator.ratio(before, now.total());
        double dryRatio = agent.ratio(before, now.total());
        double mixed = (wet * wetRatio + dry * dryRatio + room * now.roomRatio()) / flow;
        double after = mixed + (before - mixed) * StrictMath.exp(-flow * seconds / dryMoles);
        double leaving = mixed - (after - before) * dryMoles / (flow * seconds); // mean ratio over the part
        double given = wet * seconds * (wetRatio - leaving);
        double taken = dry * seconds * (leaving - dryRatio);
        double leaked = room * seconds * (now.roomRatio() - leaving);
        saturator.give(given);
        agent.take(taken);
        fromRoomMoles += leaked;
        vapourMoles += given - taken + leaked;
    }

    private void touchWalls(Surround now, double seconds) {
        double atSurface = saturated(now.coldest(), now.total());
        vapourMoles -= walls.sorb(vapourMoles / atSurface, seconds);
        double overAir = vapourMoles - saturated(now.air(), now.total());
        vapourMoles -= walls.condense(vapourMoles - atSurface, overAir, seconds);
    }

    private double saturated(double celsius, double total) {
        return Air.ratio(Air.saturation(celsius, total), total) * dryMoles;
    }

    /** Vapour per dry gas. */
    double ratio() {
        return vapourMoles / dryMoles;
    }

    double vapourPascals(double total) {
        return total * vapourMoles / (vapourMoles + dryMoles);
    }

    Saturator saturator() {
        return saturator;
    }

    DryingAgent agent() {
        return agent;
    }

    /** Water in air and on walls, g. */
    double heldGrams() {
        return (vapourMoles + walls.moles()) * Air.WATER_GRAMS;
    }

    double liquidGrams() {
        return walls.liquidMoles() * Air.WATER_GRAMS;
    }

    /** Water that has come in from the room, less what went out, g. */
    double fromRoomGrams() {
        return fromRoomMoles * Air.WATER_GRAMS;
    }
}
