// SPDX-License-Identifier: Apache-2.0
/** Pages on which exported files come in. Start at {@link isohume.station.web.imports.ImportPage}. */
@NullMarked
@CheckReturnValue
package isohume.station.web.imports;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
