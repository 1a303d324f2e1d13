// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import isohume.quantity.Phase;

/**
 * The reference dew-point mirror. Below 0 °C it cools hard for a moment, so that the deposit freezes; while it does, the
 * deposit is not known and what it shows means nothing.
 */
final class Mirror {
    /** What the register tells: 0 not known, 1 water, 2 ice. */
    enum Deposit {
        UNKNOWN(0),
        WATER(1),
        ICE(2);

        private final int register;

        Deposit(int register) {
            this.register = register;
        }

        int register() {
            return register;
        }
    }

    private static final double FREEZES_BELOW = -0.1; // °C
    private static final double MELTS_ABOVE = 0.02; // °C, dew point of the vapour
    private static final double ICE_ENDS = 0; // °C
    private static final double FORCING_KELVIN = 8;
    private static final double SHORTEST_FORCING = 60; // s
    private static final double LONGEST_FORCING = 180; // s
    private static final double MELTING = 30; // s
    private static final double SETTLED_WITHIN = 1; // K, to call the deposit known again
    private static final double LONGEST_SETTLING = 600; // s

    private final MirrorSpecification specification;
    private final MirrorTrueness trueness;
    private final Wander wander;
    private final Wander noise;
    private final Chance chance;
    private final Lag surface;
    private Climate air;
    private Phase phase;
    private double target;
    private double forcing;
    private double settling;

    Mirror(BenchParameters parameters, Chance chance, Climate start) {
        specification = parameters.mirror();
        trueness = new MirrorTrueness(specification, parameters.drawn(), chance);
        wander = new Wander(parameters.noise() * specification.wander(), 20, chance);
        noise = new Wander(parameters.noise() * specification.noise(), 0, chance);
        this.chance = chance;
        air = start;
        phase = start.vapour() < Air.saturation(0, start.pascals()) ? Phase.ICE : Phase.WATER;
        target = point(0);
        surface = new Lag(target);
    }

    /** @param atMirror the chamber's air at the pressure of the mirror */
    void step(Climate atMirror) {
        air = atMirror;
        wander.step();
        noise.step();
        target = point(target);
        if (forcing > 0) {
            forcing -= World.STEP_SECONDS;
            surface.follow(target - (phase == Phase.ICE ? FORCING_KELVIN : 0), lag());
        } else {
            surface.follow(target, lag());
            settling = Math.abs(surface.value() - target) < SETTLED_WITHIN ? 0 : settling - World.STEP_SECONDS;
            changePhase();
        }
    }

    private void changePhase() {
        if (phase == Phase.WATER && target < FREEZES_BELOW && surface.value() < FREEZES_BELOW) {
            phase = Phase.ICE;
            forcing = SHORTEST_FORCING + (LONGEST_FORCING - SHORTEST_FORCING) * chance.share();
            settling = LONGEST_SETTLING;
        } else if (phase == Phase.ICE && air.vapour() > Air.saturation(MELTS_ABOVE, air.pascals())) {
            phase = Phase.WATER;
            forcing = MELTING;
            settling = LONGEST_SETTLING;
        }
    }

    /** The temperature at which the present deposit is in equilibrium; ice is no warmer than 0 °C. */
    private double point(double guess) {
        if (phase == Phase.ICE && air.vapour() >= Air.vapour(ICE_ENDS, air.pascals(), Phase.ICE)) {
            return ICE_ENDS;
        }
        return Air.point(air.vapour(), air.pascals(), phase, guess);
    }

    private double lag() {
        double below = Math.max(0, 10 - surface.value());
        return specification.seconds() * StrictMath.pow(6, below / 40);
    }

    Deposit deposit() {
        if (forcing > 0 || settling > 0) {
            return Deposit.UNKNOWN;
        }
        return phase == Phase.ICE ? Deposit.ICE : Deposit.WATER;
    }

    Shown dewPoint() {
        return new Shown(this::shown, () -> target, () -> trueness.error(target));
    }

    private double shown() {
        double at = surface.value();
        return Shown.rounded(at + trueness.error(at) + wander.value() + noise.value(), specification.resolution());
    }
}
