// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/** A published set of formulas that belong together; its name stands in records and on certificates. */
public enum Formulation {
    /** Saturation after Sonntag 1990, enhancement after Greenspan 1976. Dew points from -50, frost points from -100 °C. */
    SONNTAG_1990("Sonntag 1990 with Greenspan 1976"),
    /** Saturation and enhancement after Hardy 1998. Dew points from -50, frost points from -100 °C. */
    HARDY_1998("Hardy 1998"),
    /** Saturation after Hyland and Wexler 1983, as in ASHRAE handbooks, enhancement after Greenspan 1976. No supercooled water. */
    HYLAND_WEXLER_1983("Hyland and Wexler 1983 with Greenspan 1976"),
    /** Saturation after IAPWS SR1-86 and R14-08, enhancement after Greenspan 1976. No supercooled water. */
    IAPWS("IAPWS SR1-86 and R14-08 with Greenspan 1976"),
    /** Magnus form and f(p) of WMO-No. 8: a check by hand, not a reference. Dew points from -45, frost points from -65 °C. */
    WMO_MAGNUS("WMO-No. 8 (Magnus)");

    /** What is taken when nobody has chosen; docs/decisions/0006 says why. */
    public static final Formulation DEFAULT = SONNTAG_1990;

    private final String title;

    Formulation(String title) {
        this.title = title;
    }

    /** The name for documents. */
    public String title() {
        return title;
    }
}
