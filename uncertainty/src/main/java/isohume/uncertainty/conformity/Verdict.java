// SPDX-License-Identifier: Apache-2.0
package isohume.uncertainty.conformity;

/**
 * What a decision rule says about one error of indication, with the guard band w as in {@link DecisionRule}.
 */
public enum Verdict {
    /** Inside the acceptance interval: within the tolerance by at least w. */
    CONFORMS("conforms"),

    /**
     * Within the tolerance, but closer to a limit than the guard band. Accepted by simple acceptance; the conditional
     * pass of the rule with four outcomes (ILAC-G8:09/2019, 4.2.1 and 4.2.3).
     */
    CONFORMS_IN_GUARD_BAND("conforms on the guard band's edge"),

    /**
     * Outside the tolerance, but by no more than the guard band: neither conformity nor its contrary is shown. The
     * conditional fail of the rule with four outcomes (ILAC-G8:09/2019, 4.2.3).
     */
    NOT_DECIDED("not decided"),

    /**
     * Rejected. With a guard band and two outcomes, this includes an error within the tolerance but not within the
     * acceptance interval: such an item is not shown to conform, which is all that rule asks (ILAC-G8:09/2019, 4.2.2).
     */
    DOES_NOT_CONFORM("does not conform");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** As written on pages and certificates. */
    public String words() {
        return words;
    }

    /** Whether the item is accepted. */
    public boolean isAccepted() {
        return this == CONFORMS || this == CONFORMS_IN_GUARD_BAND;
    }
}
