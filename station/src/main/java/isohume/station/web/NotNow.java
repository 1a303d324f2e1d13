// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

/** Something that is understood but cannot be done in the present state. */
public final class NotNow extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final String why;

    public NotNow(String why) {
        super(why);
        this.why = why;
    }

    public String why() {
        return why;
    }
}
