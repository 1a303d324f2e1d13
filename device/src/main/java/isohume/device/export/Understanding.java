// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

import isohume.device.recorded.RecordedError;
import java.util.List;

/** What came of reading an exported file. */
public sealed interface Understanding {
    /** What was recognised along the way. */
    List<Finding> findings();

    /**
     * The file is read.
     *
     * @param profile how it was read, to read the next file of its kind by
     */
    record Understood(Profile profile, LoggedTable table, List<Finding> findings) implements Understanding {
        public Understood {
            findings = List.copyOf(findings);
        }
    }

    /** The file can be read in more than one way; at least one question. Further ones may follow the answers. */
    record InDoubt(List<Question> questions, List<Finding> findings) implements Understanding {
        public InDoubt {
            questions = List.copyOf(questions);
            findings = List.copyOf(findings);
        }
    }

    /** The file cannot be read as it is; at least one place. */
    record Refused(List<RecordedError> errors, List<Finding> findings) implements Understanding {
        public Refused {
            errors = List.copyOf(errors);
            findings = List.copyOf(findings);
        }
    }
}
