// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Reading;
import isohume.moistair.MoistAir;
import isohume.moistair.OutsideRange;
import isohume.quantity.DewPoint;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Quantity;
import isohume.quantity.Temperature;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one poll says, with the reference humidity worked out. Doubtful readings count as missing here; they stay in the
 * journal.
 *
 * @param shown good values by channel id, in their quantity's unit
 * @param steps one unit of the last digit shown, by channel id
 * @param doubtful why a value that came is not used, by channel id
 * @param absent why no value came, by channel id
 * @param deposit the phase that the mirror reports, if it does
 * @param humidity reference relative humidity in % RH, from uncorrected references; absent when one of them is
 */
public record Moment(
        Instant at,
        Map<String, Double> shown,
        Map<String, Double> steps,
        Map<String, String> doubtful,
        Map<String, String> absent,
        Optional<Phase> deposit,
        OptionalDouble humidity) {

    /** Reads a poll with the bench's roles. */
    public static Moment of(RunFact.Observed observed, Roles roles, MoistAir air) {
        Map<String, Double> shown = new LinkedHashMap<>();
        Map<String, Double> steps = new LinkedHashMap<>();
        Map<String, String> doubtful = new LinkedHashMap<>();
        Map<String, String> absent = new LinkedHashMap<>();
        for (Reading reading : observed.readings()) {
            String id = reading.channel().id();
            switch (reading) {
                case Reading.Value value -> {
                    shown.put(id, value.shown().doubleValue());
                    steps.put(id, value.shown().ulp().doubleValue());
                }
                case Reading.Doubtful doubt -> doubtful.put(id, doubt.flag());
                case Reading.Absent gap -> absent.put(id, gap.detail());
            }
        }
        Optional<Phase> deposit = depositOf(shown.get(roles.deposit()));
        return new Moment(observed.at(), shown, steps, doubtful, absent, deposit, humidity(shown, deposit, roles, air));
    }

    private static Optional<Phase> depositOf(@org.jspecify.annotations.Nullable Double state) {
        if (state == null) {
            return Optional.empty();
        }
        return switch (state.intValue()) {
            case 1 -> Optional.of(Phase.WATER);
            case 2 -> Optional.of(Phase.ICE);
            default -> Optional.empty();
        };
    }

    private static OptionalDouble humidity(
            Map<String, Double> shown, Optional<Phase> deposit, Roles roles, MoistAir air) {
        Double dewPoint = shown.get(roles.dewPoint());
        Double temperature = shown.get(roles.temperature());
        Double pressure = shown.get(roles.pressure());
        Double mirror = shown.get(roles.mirrorPressure());
        if (deposit.isEmpty() || dewPoint == null || temperature == null || pressure == null || mirror == null) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(air.relativeHumidity(
                            new DewPoint(Temperature.ofCelsius(dewPoint), deposit.get()),
                            Pressure.ofPascals(mirror),
                            Temperature.ofCelsius(temperature),
                            Pressure.ofPascals(pressure))
                    .percent());
        } catch (OutsideRange outside) {
            return OptionalDouble.empty(); // a mirror still on its way; nothing can be said yet
        }
    }

    /** Why a channel has no good value, by channel id; empty when all have. */
    public Map<String, String> missing() {
        Map<String, String> missing = new LinkedHashMap<>(doubtful);
        missing.putAll(absent);
        return missing;
    }

    /** Whether every reference has a good value and the humidity follows from them. */
    public boolean referencesWhole() {
        return humidity.isPresent();
    }

    /** What the references say of a quantity, uncorrected, in its unit; empty while one is missing. */
    OptionalDouble reference(Quantity quantity, Roles roles) {
        return switch (quantity) {
            case RELATIVE_HUMIDITY -> humidity;
            case TEMPERATURE -> referencesWhole() ? value(roles.temperature()) : OptionalDouble.empty();
            case DEW_POINT, PRESSURE, DEPOSIT, WATER_LEVEL -> OptionalDouble.empty();
        };
    }

    /** Whether nothing that the run judges is missing. */
    boolean whole(Roles roles) {
        return referencesWhole() && shown.keySet().containsAll(roles.instruments());
    }

    /** One unit of the last digit that a channel shows; 0 while it shows nothing. */
    double step(String channel) {
        return steps.getOrDefault(channel, 0.0);
    }

    OptionalDouble value(String channel) {
        Double value = shown.get(channel);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
