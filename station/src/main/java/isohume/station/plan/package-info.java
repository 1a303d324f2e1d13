// SPDX-License-Identifier: Apache-2.0
/**
 * What a plan takes on its bench, before anything moves: reach, uncertainty, time, supplies, and a better order. Start at
 * {@link isohume.station.plan.Prospect}.
 */
@NullMarked
@CheckReturnValue
package isohume.station.plan;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
