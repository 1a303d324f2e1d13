// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.Temperature;

/**
 * Water or ice under air: a saturation formula with one set of enhancement coefficients, where both hold.
 *
 * <p>Everything is kept as a logarithm, so that a ratio of two pressures costs one exponential.
 */
final class Surface {
    private final Elementary math;
    private final Saturation saturation;
    private final Enhancement enhancement;
    private final Span span;

    Surface(String name, Elementary math, Saturation saturation, Enhancement enhancement) {
        this.math = math;
        this.saturation = saturation;
        this.enhancement = enhancement;
        this.span = saturation.vouchedFor().meeting(enhancement.vouchedFor(), name);
    }

    Enhancement enhancement() {
        return enhancement;
    }

    Span span() {
        return span;
    }

    /** {@code ln(e f / Pa)}: the partial pressure of vapour over the surface in air of {@code p} Pa. */
    double logPressure(double kelvin, double p) {
        double log = saturation.logAt(kelvin);
        return log + logFactor(kelvin, log, math.exp(log), p);
    }

    /** {@code ln(e/Pa)} without air. */
    double logSaturation(double kelvin) {
        return saturation.logAt(kelvin);
    }

    /** {@code ln f}, from the saturation pressure without air and its logarithm. */
    double logFactor(double kelvin, double log, double e, double p) {
        if (!(e <= p)) {
            throw boiling(kelvin, e, p);
        }
        return enhancement.logAt(kelvin, log, e, p);
    }

    /**
     * Saturation pressures and {@code ln f} of a block of temperatures; the same bits as one by one.
     *
     * @param p total pressures of which the block begins at {@code from}
     * @return false, with anything in the columns, if one of them is not between the ends of the surface or would be
     *     refused alone
     */
    boolean reckon(SurfaceBlock block, double[] p, int from, int count) {
        if (!span.encloses(block.kelvin, count)) {
            return false;
        }
        saturation.logAt(block.kelvin, count, block.log);
        System.arraycopy(block.log, 0, block.e, 0, count);
        math.exp(block.e, count);
        for (int i = 0; i < count; i++) {
            if (!(block.e[i] <= p[from + i])) {
                return false;
            }
        }
        return enhancement.logAt(block.kelvin, block.log, block.e, p, from, count, block.logFactor);
    }

    /** The enhancement factor. */
    double factor(double kelvin, double p) {
        double log = saturation.logAt(kelvin);
        return math.exp(logFactor(kelvin, log, math.exp(log), p));
    }

    /** {@code d ln(e f) / dT} in 1/K at constant total pressure. */
    double logSlope(double kelvin, double p) {
        double slope = saturation.logSlopeAt(kelvin);
        double log = saturation.logAt(kelvin);
        return slope + enhancement.logSlopeAt(kelvin, log, math.exp(log), slope, p);
    }

    /** {@code d ln(e f) / dp} in 1/Pa at constant temperature. */
    double logPressureSlope(double kelvin, double p) {
        double log = saturation.logAt(kelvin);
        return enhancement.logPressureSlopeAt(kelvin, log, math.exp(log), p);
    }

    /** {@link #logPressure} as a function of temperature, continued smoothly past the boiling point for a solver. */
    Rising logPressureAt(double p) {
        return new LogPressure(p);
    }

    private OutsideRange boiling(double kelvin, double e, double p) {
        String what = "saturated air at " + Temperature.ofKelvin(kelvin).celsius()
                + " °C, which boils below this pressure; its total pressure";
        return new OutsideRange(what, p, e, Double.POSITIVE_INFINITY, "Pa");
    }

    private final class LogPressure implements Rising {
        private final double p;

        LogPressure(double p) {
            this.p = p;
        }

        @Override
        public double at(double kelvin) {
            double log = saturation.logAt(kelvin);
            return log + enhancement.logAt(kelvin, log, math.exp(log), p);
        }

        @Override
        public double slopeAt(double kelvin) {
            return logSlope(kelvin, p);
        }

        @Override
        public double stepTo(double wanted, double kelvin) {
            double log = saturation.logAt(kelvin);
            return enhancement.stepTo(wanted, kelvin, log, math.exp(log), saturation.logSlopeAt(kelvin), p);
        }
    }
}
