// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.sheet.Sheet;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** The {@code rules} of a plan as a person writes them. */
final class RulesSheet {
    private static final List<String> ONLY_FIXED =
            List.of("window-minutes", "soak-minutes", "temperature-soak-minutes", "settled");
    private static final String TO_COME = "still-to-come";

    /** The rules that a plan can ask for. */
    private enum Rule {
        FIXED,
        TAIL
    }

    private RulesSheet() {}

    static Rules read(Sheet sheet) {
        Rules rules;
        try {
            rules = switch (rule(sheet)) {
                case FIXED -> fixed(sheet);
                case TAIL -> tail(sheet);
            };
        } catch (IllegalArgumentException wrong) {
            throw sheet.wrongHere(String.valueOf(wrong.getMessage()), "change the rules so that this holds");
        }
        sheet.refuseOthers();
        return rules;
    }

    /** Plans from before there was a choice have fixed limits and no word for it. */
    private static Rule rule(Sheet sheet) {
        boolean fixed = ONLY_FIXED.stream().anyMatch(sheet::has);
        return sheet.oneOfOr("rule", Rule.class, fixed ? Rule.FIXED : Rule.TAIL);
    }

    private static Rules fixed(Sheet sheet) {
        Rules usual = Rules.fixed();
        SettlingRule.Fixed settling = SettlingRule.Fixed.usual();
        Sheet settled = sheet.optional("settled").orElse(null);
        int readings = sheet.wholeOr("readings", 2, 10_000, usual.mostReadings());
        Rules rules = new Rules(
                seconds(sheet, "interval-seconds", usual.interval()),
                new SettlingRule.Fixed(
                        minutes(sheet, "window-minutes", settling.window()),
                        limits(settled, "temperature", settling.temperature()),
                        limits(settled, "dew-point", settling.dewPoint()),
                        limits(settled, "humidity", settling.humidity()),
                        limits(settled, "humidity-difference", settling.humidityDifference()),
                        limits(settled, "temperature-difference", settling.temperatureDifference()),
                        minutes(sheet, "soak-minutes", settling.soak()),
                        minutes(sheet, "temperature-soak-minutes", settling.temperatureSoak())),
                readings,
                readings,
                usual.noiseShare(),
                minutes(sheet, "longest-minutes", usual.longest()),
                seconds(sheet, "patience-seconds", usual.patience()));
        if (settled != null) {
            settled.refuseOthers();
        }
        return rules;
    }

    private static Rules tail(Sheet sheet) {
        Rules usual = Rules.usual();
        int most = sheet.wholeOr("readings", 2, 10_000, usual.mostReadings());
        return new Rules(
                seconds(sheet, "interval-seconds", usual.interval()),
                sheet.optional(TO_COME).map(RulesSheet::toCome).orElse(SettlingRule.Tail.usual()),
                sheet.wholeOr("least-readings", 2, 10_000, Math.min(most, usual.leastReadings())),
                most,
                orUsual(sheet, "noise-share", usual.noiseShare()),
                minutes(sheet, "longest-minutes", usual.longest()),
                seconds(sheet, "patience-seconds", usual.patience()));
    }

    private static SettlingRule.Tail toCome(Sheet sheet) {
        SettlingRule.Tail usual = SettlingRule.Tail.usual();
        SettlingRule.Tail rule = new SettlingRule.Tail(
                orUsual(sheet, "share", usual.share()),
                minutes(sheet, "least-minutes", usual.least()),
                orUsual(sheet, "temperature-band", usual.temperatureBand()),
                orUsual(sheet, "humidity-band", usual.humidityBand()),
                number(sheet, "target-humidity"),
                number(sheet, "target-temperature"));
        sheet.refuseOthers();
        return rule;
    }

    private static OptionalDouble number(Sheet sheet, String key) {
        return sheet.has(key) ? OptionalDouble.of(sheet.number(key).doubleValue()) : OptionalDouble.empty();
    }

    private static Limits limits(@Nullable Sheet settled, String key, Limits usual) {
        Optional<Sheet> given = settled == null ? Optional.empty() : settled.optional(key);
        if (given.isEmpty()) {
            return usual;
        }
        Sheet limits = given.get();
        Limits read = new Limits(
                orUsual(limits, "band", usual.band()),
                orUsual(limits, "spread", usual.spread()),
                orUsual(limits, "drift", usual.drift()));
        limits.refuseOthers();
        return read;
    }

    private static double orUsual(Sheet sheet, String key, double usual) {
        return sheet.has(key) ? sheet.number(key).doubleValue() : usual;
    }

    private static Duration seconds(Sheet sheet, String key, Duration usual) {
        return sheet.has(key) ? ofSeconds(sheet.number(key, "s").doubleValue()) : usual;
    }

    private static Duration minutes(Sheet sheet, String key, Duration usual) {
        return sheet.has(key) ? ofSeconds(sheet.number(key, "min").doubleValue() * 60) : usual;
    }

    private static Duration ofSeconds(double seconds) {
        return Duration.ofMillis(Math.round(seconds * 1000));
    }
}
