// SPDX-License-Identifier: Apache-2.0
@NullMarked
@CheckReturnValue
package isohume.station;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
