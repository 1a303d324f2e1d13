// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.conformity;

import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * What is known about items of a kind before one is measured (JCGM 106, 6.2.2), in the unit of the measured values.
 */
public sealed interface Prior {
    /** The distribution of the true values. */
    RealDistribution distribution();

    /** A production or a population that spreads normally. */
    record Normal(double mean, double standardDeviation) implements Prior {
        @Override
        public RealDistribution distribution() {
            return new NormalDistribution(mean, standardDeviation);
        }
    }

    /** A quantity that cannot be negative, by mean and standard deviation (JCGM 106, 9.5.4). */
    record Gamma(double mean, double standardDeviation) implements Prior {
        @Override
        public RealDistribution distribution() {
            double scale = standardDeviation * standardDeviation / mean;
            return new GammaDistribution(mean / scale, scale);
        }
    }

    /** A quantity whose logarithm is normal, by mean and standard deviation of that logarithm. */
    record LogNormal(double location, double shape) implements Prior {
        @Override
        public RealDistribution distribution() {
            return new LogNormalDistribution(location, shape);
        }
    }
}
