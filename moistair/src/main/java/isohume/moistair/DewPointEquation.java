// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/** At which temperature the surface has this vapour pressure in air of a total pressure in Pa. */
record DewPointEquation(double logVapour, double total) implements SurfaceEquation {
    @Override
    public double wanted() {
        return logVapour;
    }

    @Override
    public Rising on(Surface surface) {
        return surface.logPressureAt(total);
    }

    @Override
    public OutsideRange refusal(Surface coldest, Surface warmest) {
        String what = warmest.span().what() + " between "
                + coldest.span().lowestCelsius() + " and " + warmest.span().highestCelsius()
                + " °C at a total pressure of " + total + " Pa; its vapour pressure";
        return new OutsideRange(
                what,
                StrictMath.exp(logVapour),
                StrictMath.exp(on(coldest).at(coldest.span().lowestKelvin())),
                StrictMath.exp(on(warmest).at(warmest.span().highestKelvin())),
                "Pa");
    }
}
