// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** Where an instrument is in the chamber: the vapour is the same everywhere, the temperature is not. */
final class Place {
    private static final double FAR_KELVIN = 17; // over this the pattern of temperatures becomes another
    private static final double FLUTTER_SECONDS = 12;

    private final Uniformity uniformity;
    private final double share;
    private final Drawn gradient;
    private final double load;
    private final Wander flutter;

    Place(BenchParameters parameters, Chance chance) {
        uniformity = parameters.uniformity();
        share = parameters.drawn();
        gradient = Drawn.rectangular(chance);
        load = chance.rectangular() * uniformity.loading();
        flutter = new Wander(parameters.noise() * uniformity.flutter(), FLUTTER_SECONDS, chance);
    }

    void step() {
        flutter.step();
    }

    /** The air here, from the air at the reference thermometer. */
    Climate climate(Climate reference, double room) {
        return reference.warmerBy(flutter.value() + difference(reference.celsius() - room));
    }

    /** How much warmer it is here than at the reference thermometer, K, without turbulence. */
    double difference(double aboveRoom) {
        return share * (gradient.at(aboveRoom / FAR_KELVIN) * uniformity.halfWidth(aboveRoom) + load);
    }
}
