// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

/**
 * An instrument under test. The figures are invented; their sizes are those that careful technicians meet.
 *
 * @param id the serial number, by which the bench knows it
 * @param scatter half-width of what a seed adds to both offsets, in % RH; a tenth of it in K
 */
public record TransmitterSpecification(
        String id, HumidityResponse humidity, TemperatureResponse temperature, double scatter) {
    public TransmitterSpecification {
        Limits.between("scatter of the offsets", scatter, 0, 5, "% RH");
    }

    /** A good one: within about half a per cent everywhere. */
    public static TransmitterSpecification good() {
        return new TransmitterSpecification(
                "A-1042",
                new HumidityResponse(0.01, 0.15, 0.25, -0.10, 0, 0.004, 0.40, 0.002, 1500, 15, 0.02),
                new TemperatureResponse(0.01, 0.04, 0.001, 0.02, 60, 0.004),
                0.15);
    }

    /** One that has aged: it reads far too high in the wet. */
    public static TransmitterSpecification highInTheWet() {
        return new TransmitterSpecification(
                "B-2077",
                new HumidityResponse(0.1, 0.45, 0.50, 0.10, 2.4, 0.010, 0.60, 0.003, 1800, 22, 0.03),
                new TemperatureResponse(0.1, -0.12, -0.002, 0.05, 90, 0.006),
                0.15);
    }

    /** One whose reading depends on where it comes from. */
    public static TransmitterSpecification withHysteresis() {
        return new TransmitterSpecification(
                "C-3310",
                new HumidityResponse(0.1, -0.60, -0.40, 0.20, 0, -0.015, 1.50, 0.005, 2400, 30, 0.03),
                new TemperatureResponse(0.01, 0.10, 0.003, 0.10, 120, 0.006),
                0.15);
    }

    public TransmitterSpecification with(HumidityResponse response) {
        return new TransmitterSpecification(id, response, temperature, scatter);
    }

    public TransmitterSpecification with(TemperatureResponse response) {
        return new TransmitterSpecification(id, humidity, response, scatter);
    }

    /** This one as a seed has made it. */
    TransmitterSpecification drawn(Chance chance, double share) {
        return new TransmitterSpecification(
                id,
                humidity.shiftedBy(share * scatter * chance.rectangular()),
                temperature.shiftedBy(share * scatter / 10 * chance.rectangular()),
                scatter);
    }
}
