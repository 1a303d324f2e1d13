// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.plans;

import io.quarkus.qute.RawString;
import io.quarkus.qute.TemplateData;
import isohume.moistair.MoistAir;
import isohume.quantity.Direction;
import isohume.quantity.Phase;
import isohume.quantity.Quantity;
import isohume.result.Prediction;
import isohume.run.reach.Attainment;
import isohume.run.reach.Demand;
import isohume.run.reach.Outcome;
import isohume.run.reach.WayPoint;
import isohume.station.job.Worksheet;
import isohume.station.plan.Prospect;
import isohume.station.plan.Prospect.Ahead;
import isohume.station.plan.Upkeep;
import isohume.station.web.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The editor.
 *
 * @param name the plan's address
 * @param trouble what was typed that cannot be read; the map then shows the plan without the change
 * @param said what became of what was asked for
 * @param unwritten reasons on the map for which there was no room
 */
@TemplateData
public record PlanView(
        String name,
        String plan,
        String bench,
        PlanForm form,
        List<PointRow> rows,
        List<String> trouble,
        List<String> said,
        RawString map,
        boolean dotted,
        List<String> unwritten,
        List<String> sums) {
    /**
     * A row of the table.
     *
     * @param mark ▲ or ▼
     * @param state one word
     * @param words what the point takes, or why it cannot be had
     */
    @TemplateData
    public record PointRow(
            int number,
            String temperature,
            String humidity,
            String direction,
            String mark,
            String state,
            String words,
            boolean good) {}

    static PlanView of(String name, Worksheet worksheet, PlanForm form, Prospect prospect, List<String> said) {
        return of(name, worksheet, form, Optional.of(prospect), prospect, List.of(), said);
    }

    /** With what cannot be read; the map is of the prospect before. */
    static PlanView troubled(String name, Worksheet worksheet, PlanForm form, Prospect before, List<String> trouble) {
        return of(name, worksheet, form, Optional.empty(), before, trouble, List.of());
    }

    private static PlanView of(
            String name,
            Worksheet worksheet,
            PlanForm form,
            Optional<Prospect> now,
            Prospect shown,
            List<String> trouble,
            List<String> said) {
        Attainment attainment = new Attainment(
                worksheet.capacity().reach(), MoistAir.by(worksheet.job().formulation()));
        MapScale scale = new MapScale(attainment, form.dew());
        ReachMap map = new ReachMap(attainment, scale);
        RawString drawn = map.drawn(new OrderLine(scale, shown).drawn());
        return new PlanView(
                name,
                worksheet.plan().title(),
                worksheet.job().benchTitle(),
                form,
                rows(form, now),
                trouble,
                said,
                drawn,
                map.dotted(),
                map.unwritten(),
                now.map(PlanView::sums).orElse(List.of()));
    }

    private static List<PointRow> rows(PlanForm form, Optional<Prospect> now) {
        List<PointRow> rows = new ArrayList<>();
        for (int i = 0; i < form.rows().size(); i++) {
            PlanForm.Row row = form.rows().get(i);
            int place = i;
            Optional<Ahead> ahead = now.map(p -> p.points().get(place));
            rows.add(new PointRow(
                    i + 1,
                    row.temperature(),
                    row.humidity(),
                    row.direction(),
                    ahead.map(a -> a.point().direction() == Direction.ASCENDING ? "▲" : "▼")
                            .orElse(""),
                    ahead.map(PlanView::state).orElse(""),
                    ahead.map(PlanView::words).orElse(""),
                    ahead.map(a -> a.assessment().reachable()).orElse(true)));
        }
        return rows;
    }

    private static String state(Ahead ahead) {
        return switch (ahead.assessment().outcome()) {
            case Outcome.Reachable yes -> "reachable";
            case Outcome.Marginal near -> "marginal";
            case Outcome.NotReachable no -> "not reachable";
        };
    }

    private static String words(Ahead ahead) {
        List<String> words = new ArrayList<>();
        switch (ahead.assessment().outcome()) {
            case Outcome.Reachable yes -> {}
            case Outcome.Marginal near -> words.addAll(near.why());
            case Outcome.NotReachable no ->
                words.add(no.why()
                        + no.nearest()
                                .map(n -> String.format(
                                        Locale.ROOT,
                                        "; nearest: %.1f °C, %.1f %% RH",
                                        n.temperature().celsius(),
                                        n.humidity().percent()))
                                .orElse(""));
        }
        ahead.assessment().demand().ifPresent(d -> words.add(demand(d)));
        ahead.predictions().stream()
                .filter(p -> p.quantity() == Quantity.RELATIVE_HUMIDITY)
                .map(Prediction::expanded)
                .max(Double::compare)
                .ifPresent(u -> words.add(String.format(Locale.ROOT, "U about %.2f %% RH", u)));
        if (!ahead.noPass().isEmpty()) {
            words.add("no pass possible for " + String.join(", ", ahead.noPass()));
        }
        ahead.notPredicted().ifPresent(words::add);
        words.add(String.format(
                Locale.ROOT,
                "%.0f min",
                ahead.approach().minutes() + ahead.stay().minutes()));
        if (!ahead.way().isEmpty()) {
            words.add(ahead.way().stream()
                    .map(WayPoint::aim)
                    .map(WayPoint.Aim::words)
                    .collect(Collectors.joining(", then ")));
        }
        return String.join(" · ", words).replace(" % RH", "\u00a0%\u00a0RH");
    }

    private static String demand(Demand demand) {
        return (demand.point().deposit() == Phase.ICE ? "frost point " : "dew point ")
                + Figure.of(demand.point().celsius(), 1) + " °C · w " + Figure.of(demand.wetShare(), 2);
    }

    private static List<String> sums(Prospect prospect) {
        List<String> sums = new ArrayList<>();
        sums.add(String.format(
                Locale.ROOT,
                "Whole plan: about %.1f h, nine times in ten between %.1f and %.1f h; %s.",
                prospect.whole().minutes() / 60,
                prospect.whole().low() / 60,
                prospect.whole().high() / 60,
                prospect.lessons() == 0
                        ? "by the bench’s description, nothing learned yet"
                        : "learned from " + prospect.lessons() + " points of past runs"));
        Upkeep upkeep = Upkeep.of(prospect);
        upkeep.lines().forEach(line -> {
            String words = line.inWords();
            sums.add(words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".");
        });
        if (!upkeep.flowStated()) {
            sums.add("The bench does not state how it is swept (flow): the usual figures stand in for it.");
        }
        return sums;
    }
}
