// SPDX-License-Identifier: Apache-2.0
package isohume.device.recorded;

import java.util.List;
import java.util.stream.Collectors;

/** A file of readings that cannot be used as it is. The message has one line for each error. */
public final class RecordingRefused extends RuntimeException {
    /** As many errors are listed; then reading stops. */
    public static final int MOST_ERRORS = 20;

    private static final long serialVersionUID = 1;

    private final transient List<RecordedError> errors;

    RecordingRefused(List<RecordedError> errors) {
        super(errors.stream().map(RecordedError::message).collect(Collectors.joining("\n"))
                + (errors.size() < MOST_ERRORS ? "" : "\n(reading stopped after " + MOST_ERRORS + " errors)"));
        this.errors = List.copyOf(errors);
    }

    /** In the order of the file; at least one, at most {@link #MOST_ERRORS}. */
    public List<RecordedError> errors() {
        return errors;
    }
}
