// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Setpoint;
import isohume.device.sheet.Sheet;
import isohume.device.sheet.SheetError;
import isohume.quantity.Direction;
import isohume.quantity.Point;
import isohume.quantity.RelativeHumidity;
import isohume.quantity.Temperature;
import isohume.run.reach.Attainment;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A plan as a person writes it: {@code plan}, {@code points} and, where the usual ones do not do, {@code rules}. The form
 * is described in {@code docs/formats/plan.md}.
 */
public final class PlanSheet {
    private static final double LOWEST_CELSIUS = -60;
    private static final double HIGHEST_CELSIUS = 180;

    private final Optional<Attainment> attainment;

    private PlanSheet(Optional<Attainment> attainment) {
        this.attainment = attainment;
    }

    /** Reads plans for a bench that can attain their points. */
    public PlanSheet(Attainment attainment) {
        this(Optional.of(attainment));
    }

    /** Reads plans whose points are looked at afterwards. */
    public static PlanSheet ofAnyReach() {
        return new PlanSheet(Optional.empty());
    }

    /**
     * The plan in a sheet; other keys of the sheet are left to others.
     *
     * @throws SheetError where the sheet is wrong, or a point is beyond the bench's reach
     */
    public Plan read(Sheet sheet) {
        String title = sheet.text("plan");
        List<Point> points = new ArrayList<>();
        for (Sheet leg : sheet.list("points")) {
            readLeg(leg, points);
        }
        if (points.isEmpty()) {
            throw sheet.wrong("points", "there is no point in it", "list at least one temperature with its humidities");
        }
        Rules rules = sheet.optional("rules").map(PlanSheet::rules).orElse(Rules.usual());
        return new Plan(title, points, rules);
    }

    /** Numbers of the points whose direction a sheet writes down, rather than leaving it to the order. */
    public static Set<Integer> statedDirections(Sheet sheet) {
        Set<Integer> stated = new TreeSet<>();
        int number = 0;
        for (Sheet leg : sheet.list("points")) {
            for (BigDecimal ignored : leg.numbers("humidity", "% RH")) {
                number++;
                if (leg.has("direction")) {
                    stated.add(number);
                }
            }
        }
        return stated;
    }

    private void readLeg(Sheet leg, List<Point> points) {
        double celsius = leg.number("temperature", "°C").doubleValue();
        if (!(celsius >= LOWEST_CELSIUS && celsius <= HIGHEST_CELSIUS)) {
            throw leg.wrong("temperature", "no humidity chamber goes to " + celsius + " °C", "give it in °C");
        }
        List<BigDecimal> humidities = leg.numbers("humidity", "% RH");
        Optional<Direction> stated =
                leg.has("direction") ? Optional.of(leg.oneOf("direction", Direction.class)) : Optional.empty();
        leg.refuseOthers();
        if (humidities.isEmpty()) {
            throw leg.wrong("humidity", "the list is empty", "give at least one relative humidity in % RH");
        }
        for (int i = 0; i < humidities.size(); i++) {
            double percent = humidities.get(i).doubleValue();
            if (!(percent > 0 && percent <= 100)) {
                throw leg.wrong(
                        "humidity", percent + " % RH cannot be", "a relative humidity lies above 0 and up to 100 % RH");
            }
            int place = i;
            Point point = new Point(
                    points.size() + 1,
                    Temperature.ofCelsius(celsius),
                    RelativeHumidity.ofPercent(percent),
                    stated.orElseGet(() -> direction(humidities, place)));
            refuseBeyondReach(leg, point);
            points.add(point);
        }
    }

    /** A point is approached from the one before it; the first of a leg goes the way the leg goes on. */
    private static Direction direction(List<BigDecimal> humidities, int place) {
        int from = place == 0 ? 0 : place - 1;
        int to = Math.min(from + 1, humidities.size() - 1);
        return humidities.get(to).compareTo(humidities.get(from)) < 0 ? Direction.DESCENDING : Direction.ASCENDING;
    }

    private void refuseBeyondReach(Sheet leg, Point point) {
        Setpoint condition = new Setpoint(point.temperature(), point.humidity());
        Optional<String> hindrance = attainment.flatMap(a -> a.assess(condition).hindrance());
        if (hindrance.isPresent()) {
            throw leg.wrong(
                    "humidity",
                    String.format(Locale.ROOT, "point %d: %s", point.number(), hindrance.get()),
                    "change the point or use a bench that reaches it");
        }
    }

    private static Rules rules(Sheet sheet) {
        Rules usual = Rules.usual();
        Sheet settled = sheet.optional("settled").orElse(null);
        Rules rules;
        try {
            rules = new Rules(
                    seconds(sheet, "interval-seconds", usual.interval()),
                    minutes(sheet, "window-minutes", usual.window()),
                    limits(settled, "temperature", usual.temperature()),
                    limits(settled, "dew-point", usual.dewPoint()),
                    limits(settled, "humidity", usual.humidity()),
                    limits(settled, "humidity-difference", usual.humidityDifference()),
                    limits(settled, "temperature-difference", usual.temperatureDifference()),
                    minutes(sheet, "soak-minutes", usual.soak()),
                    minutes(sheet, "temperature-soak-minutes", usual.temperatureSoak()),
                    sheet.wholeOr("readings", 2, 10_000, usual.readings()),
                    minutes(sheet, "longest-minutes", usual.longest()),
                    seconds(sheet, "patience-seconds", usual.patience()));
        } catch (IllegalArgumentException wrong) {
            throw sheet.wrongHere(String.valueOf(wrong.getMessage()), "change the rules so that this holds");
        }
        if (settled != null) {
            settled.refuseOthers();
        }
        sheet.refuseOthers();
        return rules;
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
