// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import isohume.quantity.Phase;

/** Dries one stream, the worse the more it has taken up. */
final class DryingAgent {
    private static final double RISE_WHEN_FULL = 45; // K from fresh to full; common practice, no source
    private static final double SPENT_SHARE = 0.75; // 15 % of the mass where 20 % is the most

    private final double capacityGrams;
    private final double freshFrostPoint;
    private double loadGrams;

    DryingAgent(Streams streams) {
        capacityGrams = streams.agentGrams() * streams.agentUptake();
        freshFrostPoint = streams.freshFrostPoint();
        loadGrams = streams.agentLoadGrams();
    }

    /** Vapour per dry gas behind it; never more than came in. */
    double ratio(double incoming, double total) {
        double point = frostPoint();
        double vapour = Air.vapour(point, total, point < 0 ? Phase.ICE : Phase.WATER);
        return Math.min(incoming, Air.ratio(vapour, total));
    }

    /** °C; a dew point once it is above 0 °C. */
    double frostPoint() {
        double share = Math.min(loadGrams / capacityGrams, 1);
        return freshFrostPoint + RISE_WHEN_FULL * share * share;
    }

    void take(double moles) {
        loadGrams += moles * Air.WATER_GRAMS;
    }

    void renew() {
        loadGrams = 0;
    }

    void loadTo(double share) {
        loadGrams = Math.max(loadGrams, share * capacityGrams);
    }

    double loadGrams() {
        return loadGrams;
    }

    boolean spent() {
        return loadGrams >= SPENT_SHARE * capacityGrams;
    }
}
