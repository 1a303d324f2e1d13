// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import isohume.device.sheet.Sheet;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Bounds and policies as a person writes them: {@code watch} of a bench, {@code faults} of a plan. The form is described
 * in {@code docs/formats/bench.md}.
 */
public final class WatchSheet {
    private static final List<String> MEASURES =
            Arrays.stream(Measure.values()).map(Measure::key).toList();
    private static final String FAULTS =
            Arrays.stream(Fault.values()).map(Fault::key).collect(Collectors.joining(", "));

    private WatchSheet() {}

    /**
     * The bounds in a bench's {@code watch}; its {@code faults} are left to {@link #policies}.
     *
     * @param usual for what the sheet does not say
     */
    public static Bounds bounds(Sheet sheet, Bounds usual) {
        return new Bounds(
                number(sheet, "hottest", "°C", usual.hottest()),
                number(sheet, "water", "%", usual.water()),
                number(sheet, "humidity", "% RH", usual.humidity()),
                number(sheet, "temperature", "K", usual.temperature()),
                pairs(sheet),
                sheet.optional("signs").map(WatchSheet::signs).orElse(usual.signs()),
                minutes(sheet, "still-minutes", usual.still()),
                minutes(sheet, "astray-minutes", usual.astray()),
                minutes(sheet, "undecided-minutes", usual.undecided()),
                minutes(sheet, "held-minutes", usual.held()));
    }

    private static List<Bounds.Pair> pairs(Sheet sheet) {
        List<Bounds.Pair> pairs = new ArrayList<>();
        for (Sheet pair : sheet.optionalList("agree")) {
            List<String> channels = pair.texts("channels");
            if (channels.size() != 2) {
                throw pair.wrong("channels", "two channels can agree, not " + channels.size(), "name two");
            }
            pairs.add(new Bounds.Pair(channels.get(0), channels.get(1), number(pair, "within", "", 0)));
            pair.refuseOthers();
        }
        return pairs;
    }

    private static Map<String, Fault> signs(Sheet sheet) {
        Map<String, Fault> signs = new HashMap<>();
        for (String flag : sheet.keys()) {
            String key = sheet.text(flag);
            signs.put(
                    flag,
                    Fault.ofKey(key)
                            .orElseThrow(
                                    () -> sheet.wrong(flag, "no fault is called " + key, "it is one of " + FAULTS)));
        }
        return signs;
    }

    private static double number(Sheet sheet, String key, String unit, double usual) {
        if (!sheet.has(key)) {
            return usual;
        }
        double value = sheet.number(key, unit).doubleValue();
        if (!(value >= 0)) {
            throw sheet.wrong(key, value + " " + unit + " is below 0", "give 0 or more");
        }
        return value;
    }

    private static Duration minutes(Sheet sheet, String key, Duration usual) {
        return sheet.has(key) ? Duration.ofMillis(Math.round(number(sheet, key, "min", 0) * 60_000)) : usual;
    }

    /** The policies in a section {@code faults}, by the faults' names. */
    public static Policies policies(Optional<Sheet> section) {
        Map<Fault, Policy> policies = new EnumMap<>(Fault.class);
        section.ifPresent(sheet -> {
            for (String key : sheet.keys()) {
                Fault fault = Fault.ofKey(key).orElseThrow(() -> sheet.wrongKey(key, "a fault is one of " + FAULTS));
                policies.put(fault, policy(sheet.section(key), fault));
            }
        });
        return new Policies(policies);
    }

    private static Policy policy(Sheet sheet, Fault fault) {
        String then = sheet.oneOf("then", MEASURES);
        Measure measure = Measure.valueOf(then.toUpperCase(Locale.ROOT).replace('-', '_'));
        if (fault == Fault.OVER_TEMPERATURE && measure != Measure.STOP) {
            throw sheet.wrong(
                    "then", "a bench that is too hot is always brought to rest", "write stop, or leave it out");
        }
        Policy policy = new Policy(minutes(sheet, "wait-minutes", Duration.ZERO), measure);
        sheet.refuseOthers();
        return policy;
    }
}
