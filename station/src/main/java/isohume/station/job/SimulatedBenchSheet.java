// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.device.sheet.Sheet;
import isohume.simulator.BenchParameters;
import isohume.simulator.Enclosure;
import isohume.simulator.HumidityResponse;
import isohume.simulator.MirrorSpecification;
import isohume.simulator.Sorption;
import isohume.simulator.Streams;
import isohume.simulator.Surroundings;
import isohume.simulator.TemperatureResponse;
import isohume.simulator.ThermometerSpecification;
import isohume.simulator.TransmitterSpecification;
import isohume.simulator.Uniformity;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A simulated bench as a person writes it: any parameter that differs from the portable bench's. The form is described in
 * {@code docs/formats/simulated-bench.md}.
 */
public final class SimulatedBenchSheet {
    private SimulatedBenchSheet() {}

    /**
     * The parameters in a file.
     *
     * @throws isohume.device.sheet.SheetError where the file is wrong, or a parameter is one for which the model says
     *     nothing
     */
    public static BenchParameters read(Path file) {
        return read(Sheet.read(file));
    }

    static BenchParameters read(Sheet sheet) {
        BenchParameters usual = BenchParameters.portable();
        String unused = sheet.textOr("simulated-bench", ""); // a title for people
        return read(
                sheet,
                numbers -> new BenchParameters(
                        sheet.optional("enclosure")
                                .map(s -> enclosure(s, usual.enclosure()))
                                .orElse(usual.enclosure()),
                        sheet.optional("sorption")
                                .map(s -> sorption(s, usual.sorption()))
                                .orElse(usual.sorption()),
                        sheet.optional("streams")
                                .map(s -> streams(s, usual.streams()))
                                .orElse(usual.streams()),
                        sheet.optional("surroundings")
                                .map(s -> surroundings(s, usual.surroundings()))
                                .orElse(usual.surroundings()),
                        sheet.optional("uniformity")
                                .map(s -> uniformity(s, usual.uniformity()))
                                .orElse(usual.uniformity()),
                        sheet.optional("mirror")
                                .map(s -> mirror(s, usual.mirror()))
                                .orElse(usual.mirror()),
                        sheet.optional("thermometer")
                                .map(s -> thermometer(s, usual.thermometer()))
                                .orElse(usual.thermometer()),
                        transmitters(sheet, usual.transmitters()),
                        numbers.of("noise", "", usual.noise()),
                        numbers.of("drawn", "", usual.drawn())));
    }

    private static List<TransmitterSpecification> transmitters(Sheet sheet, List<TransmitterSpecification> usual) {
        List<String> ids = usual.stream().map(TransmitterSpecification::id).toList();
        List<TransmitterSpecification> all = new ArrayList<>(usual);
        for (Sheet one : sheet.optionalList("transmitters")) {
            int place = ids.indexOf(one.oneOf("id", ids));
            all.set(place, transmitter(one, usual.get(place)));
        }
        return all;
    }

    private static TransmitterSpecification transmitter(Sheet sheet, TransmitterSpecification usual) {
        return read(
                sheet,
                numbers -> new TransmitterSpecification(
                        usual.id(),
                        sheet.optional("humidity")
                                .map(s -> humidity(s, usual.humidity()))
                                .orElse(usual.humidity()),
                        sheet.optional("temperature")
                                .map(s -> temperature(s, usual.temperature()))
                                .orElse(usual.temperature()),
                        numbers.of("scatter", "% RH", usual.scatter())));
    }

    private static Enclosure enclosure(Sheet sheet, Enclosure usual) {
        return read(
                sheet,
                numbers -> new Enclosure(
                        numbers.of("volume-litres", "L", usual.volumeLitres()),
                        numbers.of("air-heat-capacity", "J/K", usual.airHeatCapacity()),
                        numbers.of("wall-heat-capacity", "J/K", usual.wallHeatCapacity()),
                        numbers.of("air-to-wall", "W/K", usual.airToWall()),
                        numbers.of("air-to-room", "W/K", usual.airToRoom()),
                        numbers.of("wall-to-room", "W/K", usual.wallToRoom()),
                        numbers.of("door-chill", "", usual.doorChill()),
                        numbers.of("fan-watts", "W", usual.fanWatts()),
                        numbers.of("heating-watts", "W", usual.heatingWatts()),
                        numbers.of("cooling-watts", "W", usual.coolingWatts())));
    }

    private static Sorption sorption(Sheet sheet, Sorption usual) {
        return read(
                sheet,
                numbers -> new Sorption(
                        numbers.of("fast-share", "", usual.fastShare()),
                        numbers.of("fast-seconds", "s", usual.fastSeconds()),
                        numbers.of("slow-share", "", usual.slowShare()),
                        numbers.of("slow-seconds", "s", usual.slowSeconds()),
                        numbers.of("dry-slowing", "", usual.drySlowing())));
    }

    private static Streams streams(Sheet sheet, Streams usual) {
        return read(
                sheet,
                numbers -> new Streams(
                        numbers.of("hold-flow", "L/min", usual.holdFlow()),
                        numbers.of("change-flow", "L/min", usual.changeFlow()),
                        numbers.of("leak-flow", "L/min", usual.leakFlow()),
                        numbers.of("saturator-lowest", "°C", usual.saturatorLowest()),
                        numbers.of("saturator-highest", "°C", usual.saturatorHighest()),
                        numbers.of("saturator-seconds", "s", usual.saturatorSeconds()),
                        numbers.of("saturator-efficiency", "", usual.saturatorEfficiency()),
                        numbers.of("tank-grams", "g", usual.tankGrams()),
                        numbers.of("agent-grams", "g", usual.agentGrams()),
                        numbers.of("agent-uptake", "", usual.agentUptake()),
                        numbers.of("agent-load-grams", "g", usual.agentLoadGrams()),
                        numbers.of("fresh-frost-point", "°C", usual.freshFrostPoint())));
    }

    private static Surroundings surroundings(Sheet sheet, Surroundings usual) {
        return read(
                sheet,
                numbers -> new Surroundings(
                        numbers.of("temperature", "°C", usual.temperature()),
                        numbers.of("temperature-wander", "K", usual.temperatureWander()),
                        numbers.of("humidity", "% RH", usual.humidity()),
                        numbers.of("pressure", "Pa", usual.pressure()),
                        numbers.of("pressure-wander", "Pa", usual.pressureWander()),
                        numbers.of("overpressure", "Pa", usual.overpressure()),
                        numbers.of("mirror-drop", "Pa", usual.mirrorDrop())));
    }

    private static Uniformity uniformity(Sheet sheet, Uniformity usual) {
        return read(
                sheet,
                numbers -> new Uniformity(
                        numbers.of("at-room", "K", usual.atRoom()),
                        numbers.of("per-kelvin-below", "K/K", usual.perKelvinBelow()),
                        numbers.of("per-kelvin-above", "K/K", usual.perKelvinAbove()),
                        numbers.of("loading", "K", usual.loading()),
                        numbers.of("flutter", "K", usual.flutter())));
    }

    private static MirrorSpecification mirror(Sheet sheet, MirrorSpecification usual) {
        return read(
                sheet,
                numbers -> new MirrorSpecification(
                        numbers.of("seconds", "s", usual.seconds()),
                        numbers.of("resolution", "K", usual.resolution()),
                        numbers.of("wander", "K", usual.wander()),
                        numbers.of("noise", "K", usual.noise()),
                        numbers.of("certificate", "K", usual.certificate()),
                        numbers.of("drift", "K", usual.drift()),
                        numbers.of("condensate", "K", usual.condensate()),
                        numbers.of("line", "K", usual.line())));
    }

    private static ThermometerSpecification thermometer(Sheet sheet, ThermometerSpecification usual) {
        return read(
                sheet,
                numbers -> new ThermometerSpecification(
                        numbers.of("seconds", "s", usual.seconds()),
                        numbers.of("resolution", "K", usual.resolution()),
                        numbers.of("noise", "K", usual.noise()),
                        numbers.of("certificate", "K", usual.certificate()),
                        numbers.of("drift", "K", usual.drift()),
                        numbers.of("self-heating", "K", usual.selfHeating()),
                        numbers.of("radiation", "K", usual.radiation()),
                        numbers.of("pressure-certificate", "Pa", usual.pressureCertificate()),
                        numbers.of("pressure-difference", "Pa", usual.pressureDifference())));
    }

    private static HumidityResponse humidity(Sheet sheet, HumidityResponse usual) {
        return read(
                sheet,
                numbers -> new HumidityResponse(
                        numbers.of("resolution", "% RH", usual.resolution()),
                        numbers.of("offset", "% RH", usual.offset()),
                        numbers.of("gain", "% RH", usual.gain()),
                        numbers.of("curvature", "% RH", usual.curvature()),
                        numbers.of("wet-rise", "% RH", usual.wetRise()),
                        numbers.of("per-kelvin", "% RH/K", usual.perKelvin()),
                        numbers.of("loop-width", "% RH", usual.loopWidth()),
                        numbers.of("creep-share", "", usual.creepShare()),
                        numbers.of("creep-seconds", "s", usual.creepSeconds()),
                        numbers.of("seconds", "s", usual.seconds()),
                        numbers.of("noise", "% RH", usual.noise())));
    }

    private static TemperatureResponse temperature(Sheet sheet, TemperatureResponse usual) {
        return read(
                sheet,
                numbers -> new TemperatureResponse(
                        numbers.of("resolution", "K", usual.resolution()),
                        numbers.of("offset", "K", usual.offset()),
                        numbers.of("gain", "K/K", usual.gain()),
                        numbers.of("self-heating", "K", usual.selfHeating()),
                        numbers.of("seconds", "s", usual.seconds()),
                        numbers.of("noise", "K", usual.noise())));
    }

    private static <T> T read(Sheet sheet, Function<Numbers, T> reader) {
        T read;
        try {
            read = reader.apply(new Numbers(sheet));
        } catch (IllegalArgumentException beyond) {
            throw sheet.wrongHere(
                    String.valueOf(beyond.getMessage()), "the model says nothing beyond; choose a value within");
        }
        sheet.refuseOthers();
        return read;
    }

    /** Numbers of a section, each with what it is when it is not there. */
    private record Numbers(Sheet sheet) {
        double of(String key, String unit, double usual) {
            return sheet.numberOr(key, unit, BigDecimal.valueOf(usual)).doubleValue();
        }
    }
}
