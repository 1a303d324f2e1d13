// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/** A temperature that is looked for on the surfaces of one phase. */
interface SurfaceEquation {
    /** The value that the curve is to take. */
    double wanted();

    /** The curve on a surface, temperature in kelvin. */
    Rising on(Surface surface);

    /** What to say when the value lies on none of the surfaces. */
    OutsideRange refusal(Surface coldest, Surface warmest);
}
