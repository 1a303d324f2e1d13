// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

import isohume.quantity.Temperature;

/** Saturation vapour pressure of pure water substance over one phase. */
interface Saturation {
    /** Pressure in Pa; {@link OutsideRange} beyond {@link #vouchedFor()}. */
    double pascalsAt(Temperature t);

    Span vouchedFor();

    Citation source();
}
