// SPDX-License-Identifier: Apache-2.0
package isohume.station.command;

import isohume.quantity.DewPoint;
import isohume.quantity.Quantity;
import isohume.result.Prediction;
import isohume.run.reach.Demand;
import isohume.run.reach.Outcome;
import isohume.run.reach.WayPoint;
import isohume.station.job.Worksheet;
import isohume.station.plan.PlanJson;
import isohume.station.plan.Prospect;
import isohume.station.plan.Prospect.Ahead;
import isohume.station.plan.Upkeep;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Reach, uncertainty, time and supplies of a plan. */
@Command(
        name = "check",
        description =
                "For each point: whether the bench reaches it and what it takes, the uncertainty to expect, whether"
                        + " a pass is possible, and the time; then water and drying agent of the whole.",
        footer = {"", "Exit code 1 if a point cannot be reached.", "Example: isohume plan check plan.yaml --data data"},
        mixinStandardHelpOptions = true)
final class PlanCheck implements Callable<Integer> {
    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it
    private CommandSpec spec;

    @Mixin
    @SuppressWarnings("NullAway.Init")
    private PlanCommand.Given given;

    @Option(
            names = "--dry-floor",
            paramLabel = "°C",
            description = "frost point that the dry stream has now, if not that of the bench's file")
    private @Nullable Double dryFloor;

    @Option(
            names = "--wet-ceiling",
            paramLabel = "°C",
            description = "dew point that the wet stream has now, if not that of the bench's file")
    private @Nullable Double wetCeiling;

    @Option(names = "--json", description = "print the answer as JSON")
    private boolean json;

    @Override
    public Integer call() throws IOException {
        Worksheet worksheet = Worksheet.draft(given.plan).now(point(dryFloor, false), point(wetCeiling, true));
        Prospect prospect = Prospect.of(worksheet, given.lessons(worksheet.job().benchTitle()));
        PrintWriter answer = spec.commandLine().getOut();
        if (json) {
            answer.println(PlanJson.prospect(prospect).toPrettyString());
        } else {
            print(prospect, answer);
        }
        if (prospect.reachable()) {
            return Isohume.DONE;
        }
        spec.commandLine().getErr().println(unreachable(prospect));
        return Isohume.FAILED;
    }

    private static Optional<DewPoint> point(@Nullable Double celsius, boolean water) {
        return Optional.ofNullable(celsius)
                .map(isohume.quantity.Temperature::ofCelsius)
                .map(t -> water ? DewPoint.overWater(t) : DewPoint.overIce(t));
    }

    private static String unreachable(Prospect prospect) {
        return prospect.points().stream()
                .filter(p -> !p.assessment().reachable())
                .map(p -> "point " + p.point().number() + ": "
                        + p.assessment().hindrance().orElse(""))
                .collect(Collectors.joining("\n"));
    }

    private static void print(Prospect prospect, PrintWriter answer) {
        TextTable table = new TextTable(List.of(
                ">point",
                ">°C",
                ">% RH",
                "direction",
                "reach",
                ">td/tf °C",
                ">w",
                ">air K",
                ">surface K",
                ">line K",
                ">U % RH",
                ">U K",
                "pass",
                ">min",
                "remarks"));
        prospect.points().forEach(ahead -> table.row(row(ahead)));
        table.write(answer);
        answer.println();
        answer.println("air, surface, line: margins over the dew or frost point (td/tf). w: share of the wet stream."
                + " U: largest of the instruments. min: approach + stay.");
        answer.println(time(prospect));
        Upkeep upkeep = Upkeep.of(prospect);
        upkeep.lines().forEach(line -> answer.println(line.inWords()));
        if (!upkeep.flowStated()) {
            answer.println("the bench does not state how it is swept (flow): the usual figures stand in for it");
        }
    }

    private static String time(Prospect prospect) {
        return String.format(
                Locale.ROOT,
                "whole plan: about %.1f h, nine times in ten between %.1f and %.1f h; %s",
                prospect.whole().minutes() / 60,
                prospect.whole().low() / 60,
                prospect.whole().high() / 60,
                learned(prospect.lessons()));
    }

    static String learned(int lessons) {
        return lessons == 0
                ? "by the bench's description, nothing learned yet"
                : "learned from " + lessons + (lessons == 1 ? " point" : " points") + " of past runs";
    }

    private static List<String> row(Ahead ahead) {
        Optional<Demand> demand = ahead.assessment().demand();
        return List.of(
                String.valueOf(ahead.point().number()),
                one(ahead.point().temperature().celsius()),
                one(ahead.point().humidity().percent()),
                ahead.point().direction().key(),
                reach(ahead),
                demand.map(d -> one(d.point().celsius())).orElse("–"),
                demand.map(d -> String.format(Locale.ROOT, "%.2f", d.wetShare()))
                        .orElse("–"),
                demand.map(d -> one(d.air())).orElse("–"),
                demand.map(d -> one(d.surface())).orElse("–"),
                demand.map(d -> one(d.line())).orElse("–"),
                largest(ahead, Quantity.RELATIVE_HUMIDITY),
                largest(ahead, Quantity.TEMPERATURE),
                pass(ahead),
                String.format(
                        Locale.ROOT,
                        "%.0f + %.0f",
                        ahead.approach().minutes(),
                        ahead.stay().minutes()),
                remarks(ahead));
    }

    private static String reach(Ahead ahead) {
        return switch (ahead.assessment().outcome()) {
            case Outcome.Reachable yes -> "reachable";
            case Outcome.Marginal near -> "marginal";
            case Outcome.NotReachable no -> "NOT REACHABLE";
        };
    }

    private static String largest(Ahead ahead, Quantity quantity) {
        return ahead.predictions().stream()
                .filter(p -> p.quantity() == quantity)
                .map(Prediction::expanded)
                .max(Double::compare)
                .map(u -> String.format(Locale.ROOT, "%.2f", u))
                .orElse("–");
    }

    private static String pass(Ahead ahead) {
        if (ahead.predictions().isEmpty()) {
            return "–";
        }
        return ahead.noPass().isEmpty() ? "possible" : "NOT POSSIBLE";
    }

    private static String remarks(Ahead ahead) {
        List<String> remarks = new ArrayList<>();
        switch (ahead.assessment().outcome()) {
            case Outcome.Reachable yes -> {}
            case Outcome.Marginal near -> remarks.addAll(near.why());
            case Outcome.NotReachable no ->
                remarks.add(ahead.assessment().hindrance().orElse(no.why()));
        }
        if (!ahead.noPass().isEmpty()) {
            remarks.add("no pass possible for " + String.join(", ", ahead.noPass()));
        }
        ahead.notPredicted().ifPresent(remarks::add);
        if (!ahead.way().isEmpty()) {
            remarks.add("on the way: "
                    + ahead.way().stream().map(PlanCheck::inWords).collect(Collectors.joining(", then ")));
        }
        return String.join("; ", remarks);
    }

    private static String inWords(WayPoint point) {
        return String.format(
                Locale.ROOT,
                "%s (%.1f °C, %.1f %% RH)",
                point.aim().words(),
                point.target().temperature().celsius(),
                point.target().humidity().percent());
    }

    private static String one(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.equals("-0.0") ? "0.0" : text;
    }
}
