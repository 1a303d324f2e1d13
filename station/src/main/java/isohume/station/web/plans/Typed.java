// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.plans;

import isohume.device.Setpoint;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.util.Optional;

/** Numbers as people type them: with a comma or a point, and a minus sign of either kind. */
final class Typed {
    private static final double COLDEST = -60; // °C, as the plan's form has it
    private static final double WARMEST = 180;
    private static final int LONGEST = 12;

    private Typed() {}

    static String plain(String typed) {
        String plain = typed.strip().replace(',', '.').replace('\u2212', '-').replaceAll("[;|]", "");
        return plain.substring(0, Math.min(plain.length(), LONGEST));
    }

    static Optional<Double> number(String typed) {
        return typed.matches("-?\\d{1,6}(\\.\\d{1,6})?") ? Optional.of(Double.valueOf(typed)) : Optional.empty();
    }

    static Optional<Setpoint> condition(String temperature, String humidity) {
        Optional<Double> celsius = number(temperature).filter(t -> t >= COLDEST && t <= WARMEST);
        Optional<Double> percent = number(humidity).filter(h -> h > 0 && h <= 100);
        return celsius.flatMap(
                t -> percent.map(h -> new Setpoint(Temperature.ofCelsius(t), RelativeHumidity.ofPercent(h))));
    }

    /** What is wrong with a row, in words; empty when nothing is. */
    static Optional<String> trouble(int number, String temperature, String humidity) {
        if (condition(temperature, humidity).isPresent()) {
            return Optional.empty();
        }
        boolean cold =
                number(temperature).filter(t -> t >= COLDEST && t <= WARMEST).isEmpty();
        String what = cold
                ? "“" + temperature + "” is no temperature from −60 to 180 °C"
                : "“" + humidity + "” is no relative humidity above 0 and up to 100 % RH";
        return Optional.of("Point " + number + ": " + what + ".");
    }
}
