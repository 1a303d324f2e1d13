// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.runs;

import io.quarkus.qute.RawString;
import isohume.certificate.DewPoints;
import isohume.certificate.ErrorPlot;
import isohume.quantity.Quantity;
import isohume.result.Item;
import isohume.result.Job;
import isohume.result.PointResult;
import isohume.result.Results;
import isohume.result.Specification;
import isohume.station.web.Clockface;
import isohume.station.web.Desk;
import isohume.station.web.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A run's page.
 *
 * @param tables one for each quantity of each instrument; empty while no point is whole
 * @param objections what stands against issuing a certificate
 */
public record RunView(
        RunRow run,
        List<Table> tables,
        List<String> objections,
        String formulation,
        List<Desk.Document> documents,
        List<Hysteresis> hysteresis) {

    /**
     * Results of one quantity of one instrument.
     *
     * @param anchor a name that is unique on the page
     * @param remark what has to be said about dew points and derived channels; may be empty
     * @param plot the error plot as an {@code svg} element
     */
    public record Table(
            String anchor,
            String instrument,
            String about,
            String remark,
            Quantity quantity,
            String unit,
            String differenceUnit,
            boolean decided,
            RawString plot,
            List<ResultRow> rows) {}

    /** How far the two directions lie apart. */
    public record Hysteresis(String instrument, Quantity quantity, String at, Figure difference, String unit) {}

    static RunView of(Desk.Summary summary, Optional<Results> results, List<Desk.Document> documents, Clockface clock) {
        RunRow run = RunRow.of(summary, clock);
        if (results.isEmpty()) {
            return new RunView(run, List.of(), List.of(), "", documents, List.of());
        }
        Results found = results.get();
        List<Table> tables = new ArrayList<>();
        for (Item item : found.job().items()) {
            for (Specification channel : item.channels()) {
                table(summary.run(), found, item, channel, tables.size() + 1).ifPresent(tables::add);
            }
        }
        return new RunView(
                run,
                tables,
                found.objections(),
                found.job().formulation().title(),
                documents,
                found.hysteresis().stream().map(RunView::hysteresis).toList());
    }

    private static Optional<Table> table(String run, Results results, Item item, Specification channel, int number) {
        Quantity quantity = channel.quantity();
        List<PointResult> points = results.of(item.id()).stream()
                .filter(p -> p.quantity() == quantity)
                .toList();
        if (points.isEmpty()) {
            return Optional.empty();
        }
        Job.Decision decision = results.job().decision();
        return Optional.of(new Table(
                "result-" + number,
                item.id(),
                item.kind() + ", " + item.maker() + " " + item.model() + ", serial number " + item.serial(),
                DewPoints.remark(channel, points),
                quantity,
                quantity.unit(),
                quantity.differenceUnit(),
                decision != Job.Decision.NONE,
                new RawString(ErrorPlot.svg(points, decision)),
                points.stream().map(p -> ResultRow.of(run, p)).toList()));
    }

    private static Hysteresis hysteresis(Results.Hysteresis found) {
        String at = Figure.of(found.celsius(), 0) + "\u202f°C, " + Figure.of(found.humidityPercent(), 0) + "\u202f% RH";
        return new Hysteresis(
                found.instrument(),
                found.quantity(),
                at,
                Figure.signed(found.difference(), 2),
                found.quantity().differenceUnit());
    }
}
