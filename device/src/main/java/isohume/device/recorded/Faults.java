// SPDX-License-Identifier: Apache-2.0
package isohume.device.recorded;

import java.util.ArrayList;
import java.util.List;

/** The errors found so far in one file. */
final class Faults {
    private final String source;
    private final List<RecordedError> errors = new ArrayList<>();

    Faults(String source) {
        this.source = source;
    }

    /**
     * Notes an error.
     *
     * @throws RecordingRefused when there are enough
     */
    void add(long line, int column, String what, String remedy) {
        errors.add(new RecordedError(source, line, column, what, remedy));
        if (errors.size() == RecordingRefused.MOST_ERRORS) {
            throw new RecordingRefused(errors);
        }
    }

    /** An error after which it makes no sense to read on, to be thrown; the ones before it are listed too. */
    RecordingRefused last(long line, String what, String remedy) {
        errors.add(new RecordedError(source, line, 0, what, remedy));
        return new RecordingRefused(errors);
    }

    /** @throws RecordingRefused if there were any */
    void refuseIfAny() {
        if (!errors.isEmpty()) {
            throw new RecordingRefused(errors);
        }
    }
}
