// SPDX-License-Identifier: Apache-2.0
/**
 * What happened, on disk, in order, chained by hash. Start at {@link isohume.journal.Journal}.
 *
 * <p>May use: nothing of the house. Nothing here updates or deletes a fact. Errors: {@link isohume.journal.JournalLost}
 * when a fact could not be put on disk, and then it is not there.
 */
@NullMarked
@CheckReturnValue
package isohume.journal;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
