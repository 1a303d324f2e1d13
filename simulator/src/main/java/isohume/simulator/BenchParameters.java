// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import java.util.List;

/**
 * All that can be chosen about a simulated bench.
 *
 * @param transmitters the three instruments under test, in the order of their Modbus units 11, 12 and 13
 * @param guard the share of saturation at the coldest surface beyond which the chamber's own controller does not humidify;
 *     above 1 it does not keep itself from dew
 * @param noise factor on every noise and wandering: 1 as specified, 0 for none
 * @param drawn factor on every systematic part that a seed draws: 1 as specified, 0 for none
 */
public record BenchParameters(
        Enclosure enclosure,
        Sorption sorption,
        Streams streams,
        Surroundings surroundings,
        Uniformity uniformity,
        MirrorSpecification mirror,
        ThermometerSpecification thermometer,
        List<TransmitterSpecification> transmitters,
        double guard,
        double noise,
        double drawn) {
    private static final int TRANSMITTERS = 3;

    public BenchParameters {
        transmitters = List.copyOf(transmitters);
        if (transmitters.size() != TRANSMITTERS) {
            throw new IllegalArgumentException(
                    "a bench holds " + TRANSMITTERS + " instruments under test, was given " + transmitters.size());
        }
        Limits.between("guard against dew", guard, 0.5, 10, "");
        Limits.between("factor on the noise", noise, 0, 100, "");
        Limits.between("factor on the drawn parts", drawn, 0, 10, "");
    }

    /** A portable chamber in a laboratory, 5 to 50 °C, 3 to 97 % RH, dew points up to about 34 °C. */
    public static BenchParameters portable() {
        return new BenchParameters(
                Enclosure.portable(),
                Sorption.portable(),
                Streams.portable(),
                Surroundings.laboratory(),
                Uniformity.portable(),
                MirrorSpecification.standard(),
                ThermometerSpecification.standard(),
                List.of(
                        TransmitterSpecification.good(),
                        TransmitterSpecification.highInTheWet(),
                        TransmitterSpecification.withHysteresis()),
                0.98,
                1,
                1);
    }

    public BenchParameters with(Enclosure other) {
        return new BenchParameters(
                other,
                sorption,
                streams,
                surroundings,
                uniformity,
                mirror,
                thermometer,
                transmitters,
                guard,
                noise,
                drawn);
    }

    public BenchParameters with(Sorption other) {
        return new BenchParameters(
                enclosure,
                other,
                streams,
                surroundings,
                uniformity,
                mirror,
                thermometer,
                transmitters,
                guard,
                noise,
                drawn);
    }

    public BenchParameters with(Streams other) {
        return new BenchParameters(
                enclosure,
                sorption,
                other,
                surroundings,
                uniformity,
                mirror,
                thermometer,
                transmitters,
                guard,
                noise,
                drawn);
    }

    public BenchParameters with(Surroundings other) {
        return new BenchParameters(
                enclosure,
                sorption,
                streams,
                other,
                uniformity,
                mirror,
                thermometer,
                transmitters,
                guard,
                noise,
                drawn);
    }

    public BenchParameters with(Uniformity other) {
        return new BenchParameters(
                enclosure,
                sorption,
                streams,
                surroundings,
                other,
                mirror,
                thermometer,
                transmitters,
                guard,
                noise,
                drawn);
    }

    public BenchParameters with(MirrorSpecification other) {
        return new BenchParameters(
                enclosure,
                sorption,
                streams,
                surroundings,
                uniformity,
                other,
                thermometer,
                transmitters,
                guard,
                noise,
                drawn);
    }

    public BenchParameters with(ThermometerSpecification other) {
        return new BenchParameters(
                enclosure,
                sorption,
                streams,
                surroundings,
                uniformity,
                mirror,
                other,
                transmitters,
                guard,
                noise,
                drawn);
    }

    public BenchParameters withTransmitters(List<TransmitterSpecification> others) {
        return new BenchParameters(
                enclosure,
                sorption,
                streams,
                surroundings,
                uniformity,
                mirror,
                thermometer,
                others,
                guard,
                noise,
                drawn);
    }

    public BenchParameters withGuard(double share) {
        return new BenchParameters(
                enclosure,
                sorption,
                streams,
                surroundings,
                uniformity,
                mirror,
                thermometer,
                transmitters,
                share,
                noise,
                drawn);
    }

    public BenchParameters withNoise(double factor) {
        return new BenchParameters(
                enclosure,
                sorption,
                streams,
                surroundings,
                uniformity,
                mirror,
                thermometer,
                transmitters,
                guard,
                factor,
                drawn);
    }

    public BenchParameters withDrawn(double factor) {
        return new BenchParameters(
                enclosure,
                sorption,
                streams,
                surroundings,
                uniformity,
                mirror,
                thermometer,
                transmitters,
                guard,
                noise,
                factor);
    }
}
