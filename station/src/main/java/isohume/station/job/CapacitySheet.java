// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.device.sheet.Sheet;
import isohume.quantity.DewPoint;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.order.Pace;
import isohume.run.reach.Flows;
import isohume.run.reach.Reach;
import isohume.run.reach.Streams;
import isohume.run.reach.Supplies;
import isohume.run.reach.Surfaces;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** The sections {@code reach}, {@code flow}, {@code supplies} and {@code pace} of a bench. */
final class CapacitySheet {
    private static final List<String> SURFACES =
            List.of("surface-below", "surface-share", "surface-below-while-changing", "line-above", "line-temperature");

    private CapacitySheet() {}

    static Capacity read(Sheet bench) {
        Reach reach = reach(bench.section("reach"));
        Optional<Sheet> flow = bench.optional("flow");
        Flows flows = flow.map(CapacitySheet::flows).orElse(Flows.usual());
        return new Capacity(
                reach,
                flows,
                flow.isPresent(),
                bench.optional("supplies").map(CapacitySheet::supplies).orElse(Supplies.NOT_STATED),
                pace(bench.optional("pace"), Pace.of(flows)));
    }

    static List<BigDecimal> range(Sheet sheet, String key, String unit) {
        List<BigDecimal> range = sheet.numbers(key, unit);
        if (range.size() != 2 || range.get(0).compareTo(range.get(1)) >= 0) {
            throw sheet.wrong(key, "a range has a lower and a higher end", "write it as [5, 50], in " + unit);
        }
        return range;
    }

    private static Reach reach(Sheet sheet) {
        List<BigDecimal> celsius = range(sheet, "temperature", "°C");
        List<BigDecimal> percent = range(sheet, "humidity", "% RH");
        Streams streams = new Streams(
                DewPoint.overIce(Temperature.ofCelsius(
                        sheet.number("driest-frost-point", "°C").doubleValue())),
                DewPoint.overWater(Temperature.ofCelsius(
                        sheet.number("wettest-dew-point", "°C").doubleValue())),
                saturator(sheet));
        Reach reach = new Reach(
                Temperature.ofCelsius(celsius.get(0).doubleValue()),
                Temperature.ofCelsius(celsius.get(1).doubleValue()),
                RelativeHumidity.ofPercent(percent.get(0).doubleValue()),
                RelativeHumidity.ofPercent(percent.get(1).doubleValue()),
                streams,
                surfaces(sheet),
                List.of());
        sheet.refuseOthers();
        return reach;
    }

    private static Optional<Streams.Follows> saturator(Sheet sheet) {
        if (!sheet.has("saturator-temperature")) {
            return Optional.empty();
        }
        List<BigDecimal> ends = range(sheet, "saturator-temperature", "°C");
        return Optional.of(new Streams.Follows(
                Temperature.ofCelsius(ends.get(0).doubleValue()),
                Temperature.ofCelsius(ends.get(1).doubleValue())));
    }

    private static Surfaces surfaces(Sheet sheet) {
        Surfaces usual = Surfaces.usual();
        boolean stated = SURFACES.stream().anyMatch(sheet::has);
        return sensible(
                sheet,
                () -> new Surfaces(
                        or(sheet, "surface-below", "K", usual.below()),
                        or(sheet, "surface-share", "", usual.share()),
                        or(sheet, "surface-below-while-changing", "K", usual.changing()),
                        or(sheet, "room-temperature", "°C", usual.room()),
                        or(sheet, "line-above", "K", usual.lineAbove()),
                        maybe(sheet, "line-temperature", "°C"),
                        stated));
    }

    private static Flows flows(Sheet sheet) {
        double changing = sheet.number("changing", "L/min").doubleValue();
        Flows flows = sensible(
                sheet,
                () -> new Flows(
                        sheet.number("volume", "L").doubleValue(),
                        or(sheet, "holding", "L/min", changing),
                        changing,
                        sheet.oneOfOr("feed", Flows.Feed.class, Flows.Feed.DRIED)));
        sheet.refuseOthers();
        return flows;
    }

    private static Supplies supplies(Sheet sheet) {
        Supplies supplies = new Supplies(notNegative(sheet, "water", "mL"), notNegative(sheet, "drying-agent", "g"));
        sheet.refuseOthers();
        return supplies;
    }

    private static Pace pace(Optional<Sheet> given, Pace usual) {
        if (given.isEmpty()) {
            return usual;
        }
        Sheet sheet = given.get();
        Pace pace = sensible(
                sheet,
                () -> new Pace(
                        or(sheet, "humidity-minutes", "min", usual.humidity()),
                        or(sheet, "wall-minutes", "min", usual.wall()),
                        or(sheet, "kelvin-per-minute", "K/min", usual.kelvinPerMinute()),
                        or(sheet, "temperature-minutes", "min", usual.temperature())));
        sheet.refuseOthers();
        return pace;
    }

    private static OptionalDouble notNegative(Sheet sheet, String key, String unit) {
        OptionalDouble amount = maybe(sheet, key, unit);
        if (amount.isPresent() && amount.getAsDouble() < 0) {
            throw sheet.wrong(key, "nothing is left of it", "write 0, or refill it and write how much there is");
        }
        return amount;
    }

    private static OptionalDouble maybe(Sheet sheet, String key, String unit) {
        return sheet.has(key) ? OptionalDouble.of(sheet.number(key, unit).doubleValue()) : OptionalDouble.empty();
    }

    private static double or(Sheet sheet, String key, String unit, double usual) {
        return sheet.numberOr(key, unit, BigDecimal.valueOf(usual)).doubleValue();
    }

    /** What the type refuses is told with its place. */
    private static <T> T sensible(Sheet sheet, Supplier<T> made) {
        try {
            return made.get();
        } catch (IllegalArgumentException wrong) {
            throw sheet.wrongHere(String.valueOf(wrong.getMessage()), "change it so that this holds");
        }
    }
}
