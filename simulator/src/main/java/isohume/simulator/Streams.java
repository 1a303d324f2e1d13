// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/**
 * The dry and the wet stream. Flows are of dry gas, in litres per minute as metered at 23 °C and 1013.25 hPa; what
 * leaves the chamber goes back through the drying agent and the saturator.
 *
 * @param holdFlow flow of both streams together while the humidity stands, L/min
 * @param changeFlow the same while the humidity is being changed, L/min
 * @param leakFlow exchange with the room through leaks, L/min
 * @param saturatorLowest lowest temperature of the saturator, °C
 * @param saturatorHighest highest temperature of the saturator, °C
 * @param saturatorSeconds time constant with which it follows the chamber
 * @param saturatorEfficiency vapour pressure of the wet stream as a share of saturation, 0.5 to 1
 * @param tankGrams water that a full tank holds, g
 * @param agentGrams mass of dry drying agent, g
 * @param agentUptake what it can take up, as a share of its mass
 * @param agentLoadGrams what it has taken up already, g
 * @param freshFrostPoint frost point behind fresh drying agent, °C
 */
public record Streams(
        double holdFlow,
        double changeFlow,
        double leakFlow,
        double saturatorLowest,
        double saturatorHighest,
        double saturatorSeconds,
        double saturatorEfficiency,
        double tankGrams,
        double agentGrams,
        double agentUptake,
        double agentLoadGrams,
        double freshFrostPoint) {
    public Streams {
        Limits.between("flow while holding", holdFlow, 0.01, 100, "L/min");
        Limits.between("flow while changing", changeFlow, holdFlow, 100, "L/min");
        Limits.between("leak", leakFlow, 0, 10, "L/min");
        Limits.between("lowest saturator temperature", saturatorLowest, 1, 60, "°C");
        Limits.between("highest saturator temperature", saturatorHighest, saturatorLowest, 60, "°C");
        Limits.between("time constant of the saturator", saturatorSeconds, 1, 1e5, "s");
        Limits.between("saturator efficiency", saturatorEfficiency, 0.5, 1, "");
        Limits.between("water in the tank", tankGrams, 1, 1e5, "g");
        Limits.between("mass of drying agent", agentGrams, 1, 1e5, "g");
        Limits.between("uptake of the drying agent", agentUptake, 0.01, 1, "");
        Limits.between("load of the drying agent", agentLoadGrams, 0, 1e5, "g");
        Limits.between("frost point behind fresh drying agent", freshFrostPoint, -80, -5, "°C");
    }

    /** A sieve takes up 20 % of its mass; everything else is common practice, no source. */
    public static Streams portable() {
        return new Streams(1, 4, 0.005, 5, 35, 240, 0.97, 80, 500, 0.20, 15, -38);
    }

    public Streams withLeak(double litresPerMinute) {
        return new Streams(
                holdFlow,
                changeFlow,
                litresPerMinute,
                saturatorLowest,
                saturatorHighest,
                saturatorSeconds,
                saturatorEfficiency,
                tankGrams,
                agentGrams,
                agentUptake,
                agentLoadGrams,
                freshFrostPoint);
    }

    public Streams withSaturator(double lowest, double highest, double efficiency) {
        return new Streams(
                holdFlow,
                changeFlow,
                leakFlow,
                lowest,
                highest,
                saturatorSeconds,
                efficiency,
                tankGrams,
                agentGrams,
                agentUptake,
                agentLoadGrams,
                freshFrostPoint);
    }

    public Streams withTank(double grams) {
        return new Streams(
                holdFlow,
                changeFlow,
                leakFlow,
                saturatorLowest,
                saturatorHighest,
                saturatorSeconds,
                saturatorEfficiency,
                grams,
                agentGrams,
                agentUptake,
                agentLoadGrams,
                freshFrostPoint);
    }

    public Streams withDryingAgent(double grams, double loadGrams, double frostPointWhenFresh) {
        return new Streams(
                holdFlow,
                changeFlow,
                leakFlow,
                saturatorLowest,
                saturatorHighest,
                saturatorSeconds,
                saturatorEfficiency,
                tankGrams,
                grams,
                agentUptake,
                loadGrams,
                frostPointWhenFresh);
    }
}
