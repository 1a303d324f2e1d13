// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Humid air as it is told on the command line; each number as it was typed. */
@SuppressWarnings("UnusedVariable") // picocli sets the fields; they are read by the names of their options
final class AirOptions {
    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Option(names = "--temperature", required = true, paramLabel = "°C", description = "of the air")
    private @Nullable String temperature;

    @Option(names = "--relative-humidity", paramLabel = "% RH", description = "over liquid water")
    private @Nullable String relativeHumidity;

    @Option(names = "--relative-humidity-over-ice", paramLabel = "% RH", description = "over ice")
    private @Nullable String relativeHumidityOverIce;

    @Option(names = "--dew-point", paramLabel = "°C", description = "over water, or over the deposit that --phase says")
    private @Nullable String dewPoint;

    @Option(names = "--frost-point", paramLabel = "°C", description = "over ice")
    private @Nullable String frostPoint;

    @Option(
            names = "--wet-bulb",
            paramLabel = "°C",
            description = "of an aspirated psychrometer; --phase says what is on it")
    private @Nullable String wetBulb;

    @Option(names = "--vapour-pressure", paramLabel = "Pa", description = "of the vapour in the air")
    private @Nullable String vapourPressure;

    @Option(names = "--mixing-ratio", paramLabel = "g/kg", description = "water per dry air")
    private @Nullable String mixingRatio;

    @Option(names = "--specific-humidity", paramLabel = "g/kg", description = "water per moist air")
    private @Nullable String specificHumidity;

    @Option(names = "--absolute-humidity", paramLabel = "g/m³", description = "water per volume")
    private @Nullable String absoluteHumidity;

    @Option(names = "--volume-fraction", paramLabel = "ppmv", description = "of moist air")
    private @Nullable String volumeFraction;

    @Option(names = "--volume-ratio", paramLabel = "ppmv", description = "to dry air")
    private @Nullable String volumeRatio;

    @Option(names = "--pressure", paramLabel = "Pa", description = "of the air; 101325 when not given")
    private @Nullable String pressure;

    @Option(
            names = "--mirror-pressure",
            paramLabel = "Pa",
            description = "where a dew or frost point was measured; that of the air when not given")
    private @Nullable String mirrorPressure;

    @Option(
            names = "--phase",
            paramLabel = "water|ice",
            description = "of a dew point's deposit, or on a wet bulb; water when not given")
    private @Nullable String phase;

    @Option(
            names = "--formulation",
            paramLabel = "NAME",
            description = "sonntag_1990 when not given; a wrong name lists them all")
    private @Nullable String formulation;

    /** What was given, under the keys of questions: {@code dew_point}. */
    Map<String, String> typed() {
        Map<String, String> typed = new HashMap<>();
        for (var option : spec.commandLine().getParseResult().matchedOptions()) {
            if (option.userObject() != null && option.getValue() instanceof String text) {
                typed.put(option.longestName().substring(2).replace('-', '_').toLowerCase(Locale.ROOT), text);
            }
        }
        return typed;
    }
}
