// SPDX-License-Identifier: Apache-2.0
/** What stands behind the pages: everything is read back from the journal. Start at {@link isohume.station.desk.JournalDesk}. */
@NullMarked
@CheckReturnValue
package isohume.station.desk;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
