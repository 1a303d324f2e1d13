// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import isohume.device.Channel;
import isohume.device.Reading;
import isohume.quantity.Quantity;
import isohume.run.Moment;
import isohume.run.Roles;
import isohume.run.RunFact;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of the strip chart.
 *
 * @param key the channel's id, or {@code reference/relative_humidity}, or {@code target/…}
 * @param label what stands at the line's end
 */
record Line(String key, String label, Quantity quantity, Kind kind) {
    private static final String HUMIDITY = "reference/relative_humidity";

    /** How a line is drawn. */
    enum Kind {
        REFERENCE,
        INSTRUMENT
    }

    /** The lines of a run: three references, then the instruments under test by the order of their roles. */
    static List<Line> of(Roles roles, RunFact.Observed first) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(HUMIDITY, "reference", Quantity.RELATIVE_HUMIDITY, Kind.REFERENCE));
        lines.add(new Line(roles.temperature(), "reference", Quantity.TEMPERATURE, Kind.REFERENCE));
        lines.add(new Line(roles.dewPoint(), "reference", Quantity.DEW_POINT, Kind.REFERENCE));
        for (String id : roles.instruments()) {
            first.readings().stream()
                    .map(Reading::channel)
                    .filter(channel -> channel.id().equals(id))
                    .findFirst()
                    .map(Line::instrument)
                    .ifPresent(lines::add);
        }
        return List.copyOf(lines);
    }

    private static Line instrument(Channel channel) {
        return new Line(channel.id(), channel.instrument(), channel.quantity(), Kind.INSTRUMENT);
    }

    /** This line's value at a moment, NaN when there is none. */
    double at(Moment moment) {
        if (key.equals(HUMIDITY)) {
            return moment.humidity().orElse(Double.NaN);
        }
        Double shown = moment.shown().get(key);
        return shown == null ? Double.NaN : shown;
    }
}
