// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import java.time.Duration;
import java.util.OptionalDouble;

/** When a point may be recorded. */
public sealed interface SettlingRule {
    /**
     * By limits that a procedure prescribes, and a fixed time afterwards.
     *
     * @param window over which settling is judged
     * @param temperature limits of the reference air temperature
     * @param dewPoint limits of the dew or frost point; no band, the humidity's band says it
     * @param humidity limits of the reference relative humidity
     * @param humidityDifference limits of each instrument's relative humidity minus the reference
     * @param temperatureDifference limits of each instrument's temperature minus the reference
     * @param soak how long a settled point is kept before it is recorded
     * @param temperatureSoak the same for the first point at a new temperature
     */
    record Fixed(
            Duration window,
            Limits temperature,
            Limits dewPoint,
            Limits humidity,
            Limits humidityDifference,
            Limits temperatureDifference,
            Duration soak,
            Duration temperatureSoak)
            implements SettlingRule {
        private static final double ANYWHERE = Double.POSITIVE_INFINITY;

        /** Common practice for small chambers with forced air, no source. */
        public static Fixed usual() {
            return new Fixed(
                    Duration.ofMinutes(5),
                    new Limits(0.5, 0.01, 0.004),
                    new Limits(ANYWHERE, 0.02, 0.01),
                    new Limits(2, 0.05, 0.02),
                    new Limits(ANYWHERE, 0.1, 0.02),
                    new Limits(ANYWHERE, 0.05, 0.004),
                    Duration.ofMinutes(10),
                    Duration.ofMinutes(30));
        }

        public Fixed {
            if (soak.isNegative() || temperatureSoak.isNegative()) {
                throw new IllegalArgumentException("no soak can be negative, were " + soak + " and " + temperatureSoak);
            }
        }
    }

    /**
     * By what is still to come: as long as it may be more than a share of the uncertainty that the result is to have.
     *
     * @param share of the target expanded uncertainty that may be left, value and standard uncertainty together
     * @param least shortest time from the target to the record
     * @param temperatureBand how far the air may be from its target, K
     * @param humidityBand how far the humidity may be from its target, % RH
     * @param humidityTarget expanded uncertainty that every relative humidity is to have, % RH, if the plan states one
     * @param temperatureTarget the same of temperatures, K
     */
    record Tail(
            double share,
            Duration least,
            double temperatureBand,
            double humidityBand,
            OptionalDouble humidityTarget,
            OptionalDouble temperatureTarget)
            implements SettlingRule {

        /** A fifth of U adds 8 % to it at most. */
        public static Tail usual() {
            return new Tail(0.2, Duration.ofMinutes(5), 0.5, 2, OptionalDouble.empty(), OptionalDouble.empty());
        }

        public Tail {
            if (!(share > 0 && share <= 1)) {
                throw new IllegalArgumentException("a share of the target lies above 0 and up to 1, was " + share);
            }
            if (least.isNegative() || !(temperatureBand > 0) || !(humidityBand > 0)) {
                throw new IllegalArgumentException("the least time cannot be negative and bands must be positive, were "
                        + least + ", " + temperatureBand + " K and " + humidityBand + " % RH");
            }
            if (!(humidityTarget.orElse(1) > 0) || !(temperatureTarget.orElse(1) > 0)) {
                throw new IllegalArgumentException(
                        "a target uncertainty must be positive, were " + humidityTarget + " and " + temperatureTarget);
            }
        }
    }
}
