// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import isohume.quantity.Quantity;
import isohume.station.web.Desk;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.jspecify.annotations.Nullable;

/** How a run stands, and its strip chart. */
@Path("/api/runs")
@Tag(name = "runs")
@Produces(MediaType.APPLICATION_JSON)
public final class RunStateApi {
    private final Following following;
    private final Desk desk;

    RunStateApi(Following following, Desk desk) {
        this.following = following;
        this.desk = desk;
    }

    /**
     * The lines of a strip chart by columns, as a plot takes them.
     *
     * @param time seconds since 1970
     * @param values one list for each of {@code lines}, as long as {@code time}; null where there is no value
     */
    public record Strip(
            String run, List<Panel> units, List<Drawn> lines, List<Double> time, List<List<@Nullable Double>> values) {}

    /** One quantity of a strip chart. */
    public record Panel(String quantity, String title, String unit) {}

    /** One line of a strip chart; {@code kind} is {@code reference} or {@code instrument}. */
    public record Drawn(String key, String label, String quantity, String kind) {}

    @GET
    @Path("{run}")
    @Operation(summary = "How a run stands")
    public RunState run(@RestPath String run) {
        return RunState.of(following.run(run), desk).orElseThrow(NotFoundException::new);
    }

    @GET
    @Path("{run}/trace")
    @Operation(summary = "The lines of a run's strip chart")
    public Strip trace(
            @RestPath String run,
            @Parameter(description = "hour or whole; the whole run is thinned") @RestQuery @DefaultValue("hour")
                    String span,
            @Parameter(description = "only what is later, in seconds since 1970") @RestQuery @DefaultValue("0")
                    double after) {
        return following.run(run).look(desk, f -> {
            if (!f.course().hasStarted()) {
                throw new NotFoundException();
            }
            return strip(f, f.rows(span.equals("whole"), after));
        });
    }

    private static Strip strip(Followed followed, List<Trace.Row> rows) {
        List<List<@Nullable Double>> columns = new ArrayList<>();
        for (int i = 0; i < followed.lines().size(); i++) {
            List<@Nullable Double> column = new ArrayList<>(rows.size());
            for (Trace.Row row : rows) {
                Double value = row.values().get(i);
                column.add(value.isNaN() ? null : value);
            }
            columns.add(column);
        }
        return new Strip(
                followed.run(),
                Stream.of(Quantity.RELATIVE_HUMIDITY, Quantity.TEMPERATURE, Quantity.DEW_POINT)
                        .map(q -> new Panel(q.key(), TITLES.getOrDefault(q, q.key()) + ", " + q.unit(), q.unit()))
                        .toList(),
                followed.lines().stream()
                        .map(l -> new Drawn(
                                l.key(),
                                l.label(),
                                l.quantity().key(),
                                l.kind().name().toLowerCase(Locale.ROOT)))
                        .toList(),
                rows.stream().map(Trace.Row::second).toList(),
                columns);
    }

    private static final Map<Quantity, String> TITLES = Map.of(
            Quantity.RELATIVE_HUMIDITY, "Relative humidity",
            Quantity.TEMPERATURE, "Air temperature",
            Quantity.DEW_POINT, "Dew point");
}
