// SPDX-License-Identifier: Apache-2.0
/**
 * The command line. Exit codes: 0 done, 1 the work failed, 2 wrong use. Machine output goes to stdout, progress and
 * messages to stderr.
 */
@NullMarked
@CheckReturnValue
package isohume.station.command;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
