// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.plans;

import io.quarkus.qute.TemplateData;
import isohume.device.Setpoint;
import isohume.quantity.Direction;
import isohume.station.plan.PlanText;
import isohume.station.plan.PlanText.Leg;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The editor's fields as they were typed, and what they were before.
 *
 * @param title of the plan that would be kept
 * @param dew whether the map has a dew-point axis
 * @param earlier states of the rows, the latest last, each as {@link #state} writes it
 */
@TemplateData
public record PlanForm(String title, List<Row> rows, boolean dew, List<String> earlier) {
    private static final int MOST_ROWS = 200;
    private static final int MOST_EARLIER = 30;
    private static final int LONGEST_TITLE = 120;
    private static final String NEXT_STATE = "|";
    private static final String NEXT_ROW = ";";

    public PlanForm {
        rows = List.copyOf(rows);
        earlier = List.copyOf(earlier);
    }

    /**
     * A point as it was typed.
     *
     * @param direction {@code ascending}, {@code descending}, or empty where the order says it
     */
    @TemplateData
    public record Row(String temperature, String humidity, String direction) {
        /** The condition, if it is one that any chamber could be asked for. */
        Optional<Setpoint> condition() {
            return Typed.condition(temperature, humidity);
        }

        static Row at(double celsius, double percent) {
            return new Row(PlanText.plain(celsius), PlanText.plain(percent), "");
        }

        private String state() {
            return temperature + "," + humidity + "," + direction;
        }

        private static Row of(String state) {
            String[] parts = state.split(",", -1);
            return new Row(parts[0], parts.length > 1 ? parts[1] : "", parts.length > 2 ? parts[2] : "");
        }
    }

    /** A plan as it stands in its document. */
    static PlanForm of(String title, List<Leg> legs) {
        return new PlanForm(title, rows(legs), false, List.of());
    }

    private static List<Row> rows(List<Leg> legs) {
        List<Row> rows = new ArrayList<>();
        for (Leg leg : legs) {
            for (double percent : leg.percents()) {
                rows.add(new Row(
                        PlanText.plain(leg.celsius()),
                        PlanText.plain(percent),
                        leg.direction().map(Direction::key).orElse("")));
            }
        }
        return rows;
    }

    /** What was sent; where the rows differ from what they were, that is kept for going back. */
    static PlanForm from(MultivaluedMap<String, String> sent) {
        List<String> temperatures = all(sent, "temperature");
        List<String> humidities = all(sent, "humidity");
        List<String> directions = all(sent, "direction");
        List<Row> rows = new ArrayList<>();
        int count = Math.min(MOST_ROWS, Math.min(temperatures.size(), humidities.size()));
        for (int i = 0; i < count; i++) {
            String direction = i < directions.size() ? directions.get(i) : "";
            rows.add(new Row(Typed.plain(temperatures.get(i)), Typed.plain(humidities.get(i)), known(direction)));
        }
        String title = text(sent.getFirst("title"));
        List<String> earlier = states(text(sent.getFirst("earlier")));
        String was = text(sent.getFirst("was"));
        PlanForm form = new PlanForm(
                title.substring(0, Math.min(title.length(), LONGEST_TITLE)),
                rows,
                text(sent.getFirst("axis")).equals("dew"),
                earlier);
        return was.isEmpty() || was.equals(form.state()) ? form : form.after(was);
    }

    private static List<String> all(MultivaluedMap<String, String> sent, String key) {
        return sent.getOrDefault(key, List.of());
    }

    private static String known(String direction) {
        return Arrays.stream(Direction.values())
                .map(Direction::key)
                .filter(direction::equals)
                .findFirst()
                .orElse("");
    }

    private static List<String> states(String earlier) {
        return earlier.isEmpty() ? List.of() : Arrays.asList(earlier.split("\\" + NEXT_STATE, -1));
    }

    private static String text(@Nullable String typed) {
        return typed == null ? "" : typed.strip();
    }

    private PlanForm after(String state) {
        List<String> states = new ArrayList<>(earlier);
        states.add(state);
        int from = Math.max(0, states.size() - MOST_EARLIER);
        return new PlanForm(title, rows, dew, states.subList(from, states.size()));
    }

    /** The rows in one line, for a hidden field. */
    public String state() {
        return rows.stream().map(Row::state).collect(Collectors.joining(NEXT_ROW));
    }

    /** The earlier states in one line, for a hidden field. */
    public String history() {
        return String.join(NEXT_STATE, earlier);
    }

    /** With other rows; those of now can be gone back to. */
    PlanForm with(List<Row> others) {
        return new PlanForm(title, others, dew, earlier).after(state());
    }

    /** With the points of these legs. */
    PlanForm withLegs(List<Leg> legs) {
        return with(rows(legs));
    }

    PlanForm onDewAxis(boolean shown) {
        return new PlanForm(title, rows, shown, earlier);
    }

    /** As it was before the last change. */
    PlanForm back() {
        if (earlier.isEmpty()) {
            return this;
        }
        List<Row> rows = Arrays.stream(earlier.getLast().split(NEXT_ROW, -1))
                .map(Row::of)
                .toList();
        return new PlanForm(title, rows, dew, earlier.subList(0, earlier.size() - 1));
    }

    PlanForm without(int index) {
        List<Row> others = new ArrayList<>(rows);
        if (index < 0 || index >= rows.size() || rows.size() == 1) {
            return this;
        }
        Row gone = others.remove(index);
        return gone.state().isEmpty() ? this : with(others);
    }

    PlanForm earlier(int index) {
        if (index < 1 || index >= rows.size()) {
            return this;
        }
        List<Row> others = new ArrayList<>(rows);
        others.add(index - 1, others.remove(index));
        return with(others);
    }

    /** With a point more at the end, or behind the last at its temperature. */
    PlanForm with(Row another) {
        if (rows.size() >= MOST_ROWS) {
            return this;
        }
        List<Row> others = new ArrayList<>(rows);
        int place = others.size();
        for (int i = 0; i < others.size(); i++) {
            place = others.get(i).temperature().equals(another.temperature()) ? i + 1 : place;
        }
        others.add(place, another);
        return with(others);
    }

    PlanForm with(int index, Row moved) {
        if (index < 0 || index >= rows.size()) {
            return this;
        }
        List<Row> others = new ArrayList<>(rows);
        Row ignored = others.set(
                index,
                new Row(moved.temperature(), moved.humidity(), rows.get(index).direction()));
        return ignored.equals(others.get(index)) ? this : with(others);
    }

    /** The rows as lines of a plan: as long as temperature and written direction stay the same, one line. */
    List<Leg> legs() {
        List<Leg> legs = new ArrayList<>();
        String key = "";
        for (Row row : rows) {
            Setpoint at = row.condition().orElseThrow();
            double celsius = at.temperature().celsius();
            double percent = at.humidity().percent();
            String here = PlanText.plain(celsius) + row.direction();
            if (here.equals(key) && !legs.isEmpty()) {
                Leg last = legs.removeLast();
                List<Double> percents = new ArrayList<>(last.percents());
                percents.add(percent);
                legs.add(new Leg(celsius, percents, last.direction()));
            } else {
                legs.add(new Leg(celsius, List.of(percent), direction(row.direction())));
            }
            key = here;
        }
        return legs;
    }

    private static Optional<Direction> direction(String key) {
        return Arrays.stream(Direction.values())
                .filter(d -> d.key().equals(key))
                .findFirst();
    }
}
