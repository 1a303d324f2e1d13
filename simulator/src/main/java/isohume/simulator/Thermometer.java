// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/** The reference thermometer in the chamber's air, with the gauges for the pressures in chamber and mirror. */
final class Thermometer {
    private static final double FAR_KELVIN = 30; // the calibration error over this has little to do with itself
    private static final double FLUTTER_SECONDS = 12;
    private static final double GAUGE_NOISE = 1.5; // Pa

    private final ThermometerSpecification specification;
    private final double share;
    private final Drawn calibration;
    private final Drawn radiation;
    private final double steady;
    private final double chamberGauge;
    private final double mirrorGauge;
    private final Lag sensor;
    private final Wander flutter;
    private final Wander noise;
    private final Wander chamberNoise;
    private final Wander mirrorNoise;
    private Climate chamber;
    private double mirrorPascals;

    Thermometer(BenchParameters parameters, Chance chance, Climate start, double mirrorPascals) {
        specification = parameters.thermometer();
        share = parameters.drawn();
        calibration = Drawn.normal(chance);
        radiation = Drawn.rectangular(chance);
        steady = chance.rectangular() * specification.drift() + chance.rectangular() * specification.selfHeating();
        double common = chance.normal() * specification.pressureCertificate() / 2;
        double difference = chance.rectangular() * specification.pressureDifference();
        chamberGauge = share * (common + difference / 2);
        mirrorGauge = share * (common - difference / 2);
        sensor = new Lag(start.celsius());
        flutter = new Wander(parameters.noise() * parameters.uniformity().flutter(), FLUTTER_SECONDS, chance);
        noise = new Wander(parameters.noise() * specification.noise(), 0, chance);
        chamberNoise = new Wander(parameters.noise() * GAUGE_NOISE, 0, chance);
        mirrorNoise = new Wander(parameters.noise() * GAUGE_NOISE, 0, chance);
        chamber = start;
        this.mirrorPascals = mirrorPascals;
    }

    void step(Climate air, double pascalsAtMirror) {
        flutter.step();
        noise.step();
        chamberNoise.step();
        mirrorNoise.step();
        chamber = air.warmerBy(flutter.value());
        mirrorPascals = pascalsAtMirror;
        sensor.follow(chamber.celsius(), specification.seconds());
    }

    Shown temperature() {
        return new Shown(
                () -> Shown.rounded(sensor.value() + error(sensor.value()) + noise.value(), specification.resolution()),
                () -> chamber.celsius(),
                () -> error(chamber.celsius()));
    }

    private double error(double celsius) {
        double condition = celsius / FAR_KELVIN;
        return share
                * (calibration.at(condition) * specification.certificate() / 2
                        + radiation.at(condition) * specification.radiation()
                        + steady);
    }

    Shown pressure() {
        return new Shown(
                () -> Math.rint(chamber.pascals() + chamberGauge + chamberNoise.value()),
                () -> chamber.pascals(),
                () -> chamberGauge);
    }

    Shown mirrorPressure() {
        return new Shown(
                () -> Math.rint(mirrorPascals + mirrorGauge + mirrorNoise.value()),
                () -> mirrorPascals,
                () -> mirrorGauge);
    }
}
