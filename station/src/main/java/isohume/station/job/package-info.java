// SPDX-License-Identifier: Apache-2.0
/**
 * What people write down before the work: a plan with its job, its bench and its instruments. Start at
 * {@link isohume.station.job.Worksheet}.
 *
 * <p>Errors: {@link isohume.device.sheet.SheetError}, with file, line and column.
 */
@NullMarked
@CheckReturnValue
package isohume.station.job;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
