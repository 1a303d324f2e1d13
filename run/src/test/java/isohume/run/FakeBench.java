// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Answer;
import isohume.device.Chamber;
import isohume.device.Channel;
import isohume.device.Instrument;
import isohume.device.Reading;
import isohume.device.Setpoint;
import isohume.device.Trouble;
import isohume.moistair.Formulation;
import isohume.moistair.MoistAir;
import isohume.quantity.Phase;
import isohume.quantity.Pressure;
import isohume.quantity.Quantity;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.watch.Bounds;
import isohume.run.watch.Policies;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Air that follows its target exponentially, a mirror and a thermometer that show it, and one probe that lags behind and
 * shows half a per cent too much. Obeys the contracts of the device module.
 */
final class FakeBench {
    static final Roles ROLES = new Roles(
            "mirror/dew_point",
            "mirror/deposit",
            "thermometer/temperature",
            "thermometer/pressure",
            "thermometer/mirror_pressure",
            List.of("P-1/relative_humidity", "P-1/temperature"));

    private static final double AIR_SECONDS = 60;
    private static final double PROBE_SECONDS = 120;
    private static final Pressure PRESSURE = Pressure.STANDARD;

    private final Timekeeper clock;
    private final MoistAir moist = MoistAir.by(Formulation.SONNTAG_1990);
    final List<String> calls = new ArrayList<>();
    Runnable onRequest = () -> {};
    boolean refusing;
    boolean deaf;
    boolean probeSilent;
    boolean probeFrozen;
    double mirrorOff;
    String chamberFlag = "";
    Answer restAnswer = new Answer.AtRest();

    @Nullable
    Answer holds;

    private Duration reached;
    private double celsius = 23;
    private double percent = 40;
    private double probePercent = 40;
    private double shownPercent = 40;
    private double wantedCelsius = 23;
    private double wantedPercent = 40;
    private boolean atRest = true;

    FakeBench(Timekeeper clock) {
        this.clock = clock;
        this.reached = clock.elapsed();
    }

    boolean isAtRest() {
        return atRest;
    }

    /** Something opens the door: the air changes at once. */
    void disturb() {
        disturb(10);
    }

    void disturb(double byPercent) {
        percent += byPercent;
    }

    Bench bench() {
        return bench(Bounds.usual(), Policies.usual());
    }

    Bench bench(Bounds bounds, Policies policies) {
        return new Bench(new FakeChamber(), List.of(new References(), new Probe())).watched(bounds, policies);
    }

    private void follow() {
        double seconds = clock.elapsed().minus(reached).toMillis() / 1000.0;
        reached = clock.elapsed();
        double left = Math.exp(-seconds / AIR_SECONDS);
        celsius = wantedCelsius + (celsius - wantedCelsius) * left;
        percent = wantedPercent + (percent - wantedPercent) * left;
        probePercent = percent + (probePercent - percent) * Math.exp(-seconds / PROBE_SECONDS);
    }

    private Reading value(String instrument, Quantity quantity, String name, double value, int digits) {
        return new Reading.Value(
                new Channel(instrument, name, quantity),
                clock.instant(),
                BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_EVEN),
                "fake");
    }

    private final class FakeChamber implements Chamber {
        @Override
        public String id() {
            return "chamber";
        }

        @Override
        public List<Channel> channels() {
            return List.of();
        }

        @Override
        public List<Reading> read() {
            follow();
            Reading shown = value("chamber", Quantity.RELATIVE_HUMIDITY, "relative_humidity", percent + 0.2, 2);
            return chamberFlag.isEmpty()
                    ? List.of(shown, value("chamber", Quantity.TEMPERATURE, "temperature", celsius + 0.05, 2))
                    : List.of(new Reading.Doubtful(
                            shown.channel(), clock.instant(), BigDecimal.TEN, "fake", chamberFlag));
        }

        @Override
        public Answer holds() {
            return holds == null ? new Answer.None(Trouble.REFUSED, "cannot tell") : holds;
        }

        @Override
        public Answer request(Setpoint target) {
            onRequest.run();
            calls.add("request");
            if (refusing) {
                return new Answer.Refused("out of limits");
            }
            if (deaf) {
                return new Answer.None(Trouble.SILENCE, "no reply within 1000 ms");
            }
            follow();
            atRest = false;
            wantedCelsius = target.temperature().celsius();
            wantedPercent = target.humidity().percent();
            return new Answer.Taken(target);
        }

        @Override
        public Answer rest() {
            calls.add("rest");
            atRest = restAnswer instanceof Answer.AtRest;
            return restAnswer;
        }

        @Override
        public void close() {}
    }

    private final class References implements Instrument {
        @Override
        public String id() {
            return "mirror";
        }

        @Override
        public List<Channel> channels() {
            return List.of();
        }

        @Override
        public List<Reading> read() {
            double dewPoint = moist.dewPoint(
                            RelativeHumidity.ofPercent(percent),
                            Temperature.ofCelsius(celsius),
                            PRESSURE,
                            PRESSURE,
                            Phase.WATER)
                    .celsius();
            return List.of(
                    value("mirror", Quantity.DEW_POINT, "dew_point", dewPoint + mirrorOff, 3),
                    value("mirror", Quantity.DEPOSIT, "deposit", 1, 0),
                    value("thermometer", Quantity.TEMPERATURE, "temperature", celsius, 3),
                    value("thermometer", Quantity.PRESSURE, "pressure", PRESSURE.pascals(), 0),
                    value("thermometer", Quantity.PRESSURE, "mirror_pressure", PRESSURE.pascals(), 0));
        }

        @Override
        public void close() {}
    }

    private final class Probe implements Instrument {
        @Override
        public String id() {
            return "P-1";
        }

        @Override
        public List<Channel> channels() {
            return List.of();
        }

        @Override
        public List<Reading> read() {
            Reading temperature = value("P-1", Quantity.TEMPERATURE, "temperature", celsius + 0.1, 2);
            if (probeSilent) {
                Channel humidity = new Channel("P-1", "relative_humidity", Quantity.RELATIVE_HUMIDITY);
                return List.of(
                        new Reading.Absent(humidity, clock.instant(), Trouble.SILENCE, "no reply within 1000 ms"),
                        temperature);
            }
            shownPercent = probeFrozen ? shownPercent : probePercent + 0.5;
            return List.of(value("P-1", Quantity.RELATIVE_HUMIDITY, "relative_humidity", shownPercent, 2), temperature);
        }

        @Override
        public void close() {}
    }
}
