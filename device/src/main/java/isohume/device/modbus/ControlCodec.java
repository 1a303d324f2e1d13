// SPDX-License-Identifier: Apache-2.0
package isohume.device.modbus;

import isohume.device.Answer;
import isohume.device.Setpoint;
import isohume.device.Trouble;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Setpoints to registers and back. Pure. */
final class ControlCodec {
    private static final int DECIMALS = 9; // takes the noise of binary fractions away, far below any controller's step

    private final Controls controls;

    ControlCodec(Controls controls) {
        this.controls = controls;
    }

    /** Why the chamber must not be asked for this; empty if it may. */
    Optional<String> refusal(Setpoint target) {
        return refusal("temperature", celsius(target), controls.temperature(), controls.temperatures(), "°C")
                .or(() -> refusal("humidity", percent(target), controls.humidity(), controls.humidities(), "% RH"));
    }

    /** The writes that set the target, then the one that starts the drives; for a target that is not refused. */
    List<Ask.Write> request(Setpoint target) {
        Ask.Write temperature = write(controls.temperature(), celsius(target));
        Ask.Write humidity = write(controls.humidity(), percent(target));
        List<Ask.Write> writes = new ArrayList<>();
        if (temperature.address() + temperature.words().size() == humidity.address()) {
            writes.add(joined(temperature, humidity));
        } else if (humidity.address() + humidity.words().size() == temperature.address()) {
            writes.add(joined(humidity, temperature));
        } else {
            writes.add(temperature);
            writes.add(humidity);
        }
        writes.add(new Ask.Write(controls.run(), List.of(controls.on())));
        return writes;
    }

    /** The write that stops the drives. */
    Ask.Write rest() {
        return new Ask.Write(controls.run(), List.of(controls.off()));
    }

    /** The registers that tell what the controller holds. */
    List<Span> spans() {
        return List.of(controls.temperature().span(), controls.humidity().span(), controls.runSpan());
    }

    Span runSpan() {
        return controls.runSpan();
    }

    /** What the controller holds after a request. */
    Answer held(Image image) {
        List<List<Integer>> registers = new ArrayList<>();
        for (Span span : spans()) {
            switch (image.of(span)) {
                case Reply.Words(List<Integer> words) -> registers.add(words);
                case Reply.No no -> {
                    return answer(no, "the target was written, but could not be read back: ");
                }
            }
        }
        int run = registers.get(2).getFirst();
        if (run != controls.on()) {
            return new Answer.Refused("the controller does not drive: its run register holds " + run + ", "
                    + controls.on() + " was written");
        }
        return setpoint(registers.get(0), registers.get(1));
    }

    /** What the controller is set to, whoever set it. */
    Answer holds(Image image) {
        boolean off =
                image.of(runSpan()) instanceof Reply.Words(List<Integer> words) && words.getFirst() == controls.off();
        return off ? new Answer.AtRest() : held(image);
    }

    /** Whether the drives are off after {@link #rest}. */
    Answer rested(Image image) {
        return switch (image.of(runSpan())) {
            case Reply.Words(List<Integer> words) when words.getFirst() == controls.off() -> new Answer.AtRest();
            case Reply.Words(List<Integer> words) ->
                new Answer.Refused("the controller does not rest: its run register holds " + words.getFirst() + ", "
                        + controls.off() + " was written");
            case Reply.No no -> answer(no, "rest was written, but could not be read back: ");
        };
    }

    /** Trouble as an answer. */
    static Answer answer(Reply.No no, String context) {
        return no.trouble() == Trouble.REFUSED
                ? new Answer.Refused(context + no.detail())
                : new Answer.None(no.trouble(), context + no.detail());
    }

    private Answer setpoint(List<Integer> temperature, List<Integer> humidity) {
        Optional<BigDecimal> celsius = controls.temperature().value(temperature);
        Optional<BigDecimal> percent = controls.humidity().value(humidity);
        if (celsius.isEmpty() || percent.isEmpty()) {
            return new Answer.None(Trouble.GARBLED, "the controller holds no number as its target");
        }
        try {
            return new Answer.Taken(new Setpoint(
                    Temperature.ofCelsius(celsius.get().doubleValue()),
                    RelativeHumidity.ofPercent(percent.get().doubleValue())));
        } catch (IllegalArgumentException e) {
            return new Answer.None(
                    Trouble.GARBLED, "the controller holds a target that no air can have: " + e.getMessage());
        }
    }

    private static Optional<String> refusal(String what, BigDecimal value, Field field, Limits limits, String unit) {
        String asked = value.stripTrailingZeros().toPlainString() + " " + unit + " was asked";
        if (!limits.hold(value)) {
            return Optional.of(what + ": " + asked + "; this chamber goes from " + limits.in(unit));
        }
        return field.registers(value).isEmpty()
                ? Optional.of(what + ": " + asked + "; the controller's register cannot hold it")
                : Optional.empty();
    }

    private static Ask.Write write(Field field, BigDecimal value) {
        return new Ask.Write(field.address(), field.registers(value).orElseThrow());
    }

    private static Ask.Write joined(Ask.Write first, Ask.Write second) {
        List<Integer> words = new ArrayList<>(first.words());
        words.addAll(second.words());
        return new Ask.Write(first.address(), List.copyOf(words));
    }

    private static BigDecimal celsius(Setpoint target) {
        return decimal(target.temperature().celsius());
    }

    private static BigDecimal percent(Setpoint target) {
        return decimal(target.humidity().percent());
    }

    private static BigDecimal decimal(double value) {
        return new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    }
}
