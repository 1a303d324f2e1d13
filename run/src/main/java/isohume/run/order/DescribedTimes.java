// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import isohume.device.Setpoint;
import isohume.run.Rules;
import isohume.run.SettlingRule;
import isohume.run.reach.Way;
import isohume.run.reach.WayPoint;
import java.time.Duration;

/**
 * Times by a bench's description: each change dies away as {@code exp(-t/τ)}, so a step takes τ ln(step / tolerance), and
 * what the walls hold adds a slow tail. No more than a start; what the bench really does is learned.
 */
final class DescribedTimes {
    // common practice, no source: how near counts as there
    private static final double NEAR_PERCENT = 0.2;
    private static final double NEAR_KELVIN = 0.05;
    private static final double PASSED_PERCENT = 1.5;
    private static final double PASSED_KELVIN = 0.3;
    private static final double WALL_SHARE = 0.02; // of a step, that the walls give back slowly
    private static final double DRYING = 1.3; // walls give water up more slowly than they take it

    private final Pace pace;
    private final Way way;
    private final Rules rules;

    DescribedTimes(Pace pace, Way way, Rules rules) {
        this.pace = pace;
        this.way = way;
        this.rules = rules;
    }

    double approach(Visit visit) {
        double minutes = 0;
        double kelvin = 0; // that are still to go when a way-point is left
        Setpoint here = visit.from();
        for (WayPoint point : way.between(visit.from(), visit.to())) {
            Visit leg = new Visit(here, point.target());
            minutes += Math.max(
                    humidity(leg.humidityStep(), PASSED_PERCENT), temperature(leg.temperatureStep(), PASSED_KELVIN));
            kelvin = leg.newTemperature() ? PASSED_KELVIN : 0;
            here = point.target();
        }
        Visit last = new Visit(here, visit.to());
        double tail = pace.wall() * StrictMath.log1p(WALL_SHARE * Math.abs(visit.humidityStep()) / NEAR_PERCENT);
        double humidity = humidity(last.humidityStep(), NEAR_PERCENT) + tail;
        double temperature = temperature(Math.max(kelvin, Math.abs(last.temperatureStep())), NEAR_KELVIN);
        double settled = minutes + Math.max(humidity, temperature);
        return switch (rules.settling()) {
            case SettlingRule.Fixed fixed -> settled + minutes(fixed.window());
            case SettlingRule.Tail byTail -> Math.max(settled, minutes(byTail.least()));
        };
    }

    double stay(Visit visit) {
        Duration soak = switch (rules.settling()) {
            case SettlingRule.Fixed fixed -> visit.newTemperature() ? fixed.temperatureSoak() : fixed.soak();
            case SettlingRule.Tail tail -> Duration.ZERO;
        };
        double readings = (rules.leastReadings() + rules.mostReadings()) / 2.0;
        return minutes(soak) + minutes(rules.interval()) * readings;
    }

    private double humidity(double step, double near) {
        return (step < 0 ? DRYING : 1) * pace.humidity() * StrictMath.log1p(Math.abs(step) / near);
    }

    private double temperature(double step, double near) {
        double kelvin = Math.abs(step);
        return kelvin / pace.kelvinPerMinute() + pace.temperature() * StrictMath.log1p(kelvin / near);
    }

    private static double minutes(Duration duration) {
        return duration.toMillis() / 60_000.0;
    }
}
