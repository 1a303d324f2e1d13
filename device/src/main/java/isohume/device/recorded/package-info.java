// SPDX-License-Identifier: Apache-2.0
/**
 * Readings that were recorded in a file, as CSV. Start at {@link isohume.device.recorded.RecordedReadings}; the format
 * is described in {@code docs/formats/readings-csv.md}.
 *
 * <p>May use: {@code quantity} and the package above. State: none kept between files. Errors: {@link
 * isohume.device.recorded.RecordingRefused} with up to twenty places in the file; nothing is guessed or repaired.
 */
@NullMarked
@CheckReturnValue
package isohume.device.recorded;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
