// SPDX-License-Identifier: Apache-2.0
package isohume.device.line;

import isohume.device.Trouble;

/**
 * What came of a question.
 *
 * @param <R> what a whole reply says
 */
public sealed interface Heard<R> {
    /** A whole reply. */
    record Said<R>(R reply) implements Heard<R> {}

    /** None; {@code detail} says in plain words what was seen. */
    record Nothing<R>(Trouble trouble, String detail) implements Heard<R> {}
}
