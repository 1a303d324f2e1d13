// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/** Constants of water vapour in air. */
final class Water {
    /** Molar mass of water over that of dry air. ASHRAE Fundamentals 2017, chapter 1. */
    static final double MASS_RATIO = 0.621945;

    /** In kg/mol; the figure of the IAPWS releases. */
    static final double MOLAR_MASS = 18.015268e-3;

    /** In J/(mol K); exact in the SI since 2019, to ten digits. */
    static final double GAS_CONSTANT = 8.314462618;

    private Water() {}
}
