// SPDX-License-Identifier: Apache-2.0
package isohume.quantity;

/** The condensed phase that vapour is in equilibrium with. Always stated by somebody, never guessed. */
public enum Phase {
    /** Liquid water, supercooled below 0 °C. */
    WATER,
    /** Ice Ih. */
    ICE
}
