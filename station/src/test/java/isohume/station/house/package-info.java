// SPDX-License-Identifier: Apache-2.0
/** Checks on the house as a whole: which room may use which, and what is kept out of them. */
@NullMarked
package isohume.station.house;

import org.jspecify.annotations.NullMarked;
