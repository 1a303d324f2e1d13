// SPDX-License-Identifier: Apache-2.0
package isohume.station.convert;

/** A question that has no answer as it was put. The message says what was found and what to do. */
public final class NotUnderstood extends IllegalArgumentException {
    private static final long serialVersionUID = 1;
    private final String field;
    private final String why;

    /** Something under a key that cannot be understood. */
    public NotUnderstood(String field, String message) {
        super(message);
        this.field = field;
        this.why = message;
    }

    NotUnderstood(String field, String message, Throwable cause) {
        super(message, cause);
        this.field = field;
        this.why = message;
    }

    /** The key of what was asked wrongly: {@code temperature}, {@code dew_point} … */
    public String field() {
        return field;
    }

    /** The message. */
    public String why() {
        return why;
    }
}
