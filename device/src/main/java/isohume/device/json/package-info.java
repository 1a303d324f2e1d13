// SPDX-License-Identifier: Apache-2.0
/**
 * Values in JSON documents, wherever they come from. Start at {@link isohume.device.json.JsonCodec}.
 */
@NullMarked
@CheckReturnValue
package isohume.device.json;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
