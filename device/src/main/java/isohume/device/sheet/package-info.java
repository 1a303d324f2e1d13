// SPDX-License-Identifier: Apache-2.0
/**
 * Reading of YAML documents that people write: device descriptions, plans, benches. Start at
 * {@link isohume.device.sheet.Sheet}.
 *
 * <p>May use: nothing of the program. Safe against hostile documents: no tags, no objects, few aliases, a size limit,
 * no duplicate keys. Errors: {@link isohume.device.sheet.SheetError} with the line and column of what is wrong.
 */
@NullMarked
@CheckReturnValue
package isohume.device.sheet;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
