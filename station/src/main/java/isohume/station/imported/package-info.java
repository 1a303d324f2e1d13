// SPDX-License-Identifier: Apache-2.0
/**
 * Files that instruments and their programs exported, as the station takes them in: told to a person, and kept byte for
 * byte beside the journal. Start at {@link isohume.station.imported.ImportedFiles}.
 */
@NullMarked
@CheckReturnValue
package isohume.station.imported;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
