// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import isohume.run.Rules;
import isohume.run.reach.Way;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A bench's times: its description's, corrected by what its own past runs took. The logarithm of the ratio of the two is
 * a straight line in the steps of humidity and temperature, the temperature and the direction.
 */
public final class LearnedTimes implements TimeModel {
    // common practice, no source: a description is right within a factor of about 1.6
    private static final double[] APPROACH_SPREAD = {1.2, 0.7, 0.7, 0.5, 0.5, 0.5};
    private static final double APPROACH_NOISE = 0.3;
    private static final double[] STAY_SPREAD = {1, 1};
    private static final double STAY_NOISE = 0.15;
    private static final double PRIOR_DEGREES = 4;
    private static final double WIDEST = 1; // of a logarithm; beyond it nothing is known

    private final Part approach;
    private final Part stay;
    private final int lessons;

    public LearnedTimes(Pace pace, Way way, Rules rules, List<Lesson> lessons) {
        DescribedTimes described = new DescribedTimes(pace, way, rules);
        approach = new Part(described::approach, new Regression(APPROACH_SPREAD, APPROACH_NOISE, PRIOR_DEGREES), true);
        stay = new Part(described::stay, new Regression(STAY_SPREAD, STAY_NOISE, PRIOR_DEGREES), false);
        for (Lesson lesson : lessons) {
            DescribedTimes then = new DescribedTimes(pace, way, lesson.rules());
            approach.learn(lesson.visit(), lesson.approach() / then.approach(lesson.visit()));
            stay.learn(lesson.visit(), lesson.stay() / then.stay(lesson.visit()));
        }
        this.lessons = lessons.size();
    }

    /** How many points of past runs it has learned from. */
    public int lessons() {
        return lessons;
    }

    @Override
    public Expected approach(Visit visit) {
        return approach.whole(List.of(visit));
    }

    @Override
    public Expected stay(Visit visit) {
        return stay.whole(List.of(visit));
    }

    @Override
    public Expected whole(List<Visit> visits) {
        Expected a = approach.whole(visits);
        Expected b = stay.whole(visits);
        return new Expected(a.minutes() + b.minutes(), Math.hypot(a.spread(), b.spread()));
    }

    /** One of the two times. */
    private record Part(ToDoubleFunction<Visit> described, Regression ratio, boolean full) {
        void learn(Visit visit, double toDescribed) {
            ratio.observe(features(visit), StrictMath.log(toDescribed));
        }

        /** Noise is each visit's own; what is not known of the coefficients is common to all. */
        Expected whole(List<Visit> visits) {
            double minutes = 0;
            double noise = 0;
            double[] shared = new double[full ? APPROACH_SPREAD.length : STAY_SPREAD.length];
            for (Visit visit : visits) {
                double[] x = features(visit);
                double variance = Math.min(WIDEST, ratio.noise() + ratio.doubt(x));
                double mean = described.applyAsDouble(visit) * StrictMath.exp(ratio.mean(x) + variance / 2);
                minutes += mean;
                noise += mean * mean * StrictMath.expm1(Math.min(WIDEST, ratio.noise()));
                for (int i = 0; i < x.length; i++) {
                    shared[i] += mean * x[i];
                }
            }
            return new Expected(minutes, Math.sqrt(noise + ratio.doubt(shared)));
        }

        private double[] features(Visit visit) {
            if (!full) {
                return new double[] {1, visit.newTemperature() ? 1 : 0};
            }
            return new double[] {
                1,
                Math.abs(visit.humidityStep()) / 50,
                Math.abs(visit.temperatureStep()) / 20,
                (visit.to().temperature().celsius() - 23) / 20,
                -Math.signum(visit.humidityStep()) / 2,
                -Math.signum(visit.temperatureStep()) / 2
            };
        }
    }
}
