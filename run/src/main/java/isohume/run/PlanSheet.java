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
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

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
        Rules rules = sheet.optional("rules").map(RulesSheet::read).orElse(Rules.usual());
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
}
