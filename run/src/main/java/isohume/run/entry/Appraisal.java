// SPDX-License-Identifier: Apache-2.0
package isohume.run.entry;

import java.util.Optional;

/** What is to be said about something typed before it is taken. */
public sealed interface Appraisal {
    /** It can be taken. */
    record Accepted() implements Appraisal {}

    /** It cannot be taken; {@code why} says what to do instead. */
    record Refused(String why) implements Appraisal {}

    /**
     * It is taken if the person stands by it.
     *
     * @param why what is odd about it
     * @param suggestion what it may have been meant to be
     */
    record Questioned(String why, Optional<String> suggestion) implements Appraisal {}
}
