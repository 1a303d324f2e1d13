// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/** A published set of formulas that belong together; its name stands in records and on certificates. */
public enum Formulation {
    /** Saturation after Sonntag 1990, enhancement after Greenspan 1976. */
    SONNTAG_1990("Sonntag 1990"),
    /** Saturation and enhancement after Hardy 1998. */
    HARDY_1998("Hardy 1998");

    private final String title;

    Formulation(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
