// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/** At which temperature of the bulb the psychrometer equation gives this vapour pressure; temperatures in kelvin. */
record WetBulbEquation(Psychrometer psychrometer, double air, double total, double vapour) implements SurfaceEquation {
    @Override
    public double wanted() {
        return vapour;
    }

    @Override
    public Rising on(Surface surface) {
        return new OnSurface(surface.logPressureAt(total));
    }

    @Override
    public OutsideRange refusal(Surface coldest, Surface warmest) {
        String what = "wet bulb between " + coldest.span().lowestCelsius() + " and "
                + warmest.span().highestCelsius() + " °C at a total pressure of " + total + " Pa; its vapour pressure";
        return new OutsideRange(
                what,
                vapour,
                on(coldest).at(coldest.span().lowestKelvin()),
                on(warmest).at(warmest.span().highestKelvin()),
                "Pa");
    }

    private final class OnSurface implements Rising {
        private final Rising logPressure;

        OnSurface(Rising logPressure) {
            this.logPressure = logPressure;
        }

        @Override
        public double at(double bulb) {
            return StrictMath.exp(logPressure.at(bulb)) - psychrometer.depression(air, bulb, total);
        }

        @Override
        public double slopeAt(double bulb) {
            return StrictMath.exp(logPressure.at(bulb)) * logPressure.slopeAt(bulb)
                    - psychrometer.depressionSlope(air, bulb, total);
        }

        @Override
        public double stepTo(double wanted, double bulb) {
            double saturated = StrictMath.exp(logPressure.at(bulb));
            double miss = wanted - (saturated - psychrometer.depression(air, bulb, total));
            return miss / (saturated * logPressure.slopeAt(bulb) - psychrometer.depressionSlope(air, bulb, total));
        }
    }
}
