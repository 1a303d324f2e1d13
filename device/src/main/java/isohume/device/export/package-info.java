// SPDX-License-Identifier: Apache-2.0
/**
 * Files that loggers, recorders and their programs export. Start at {@link isohume.device.export.Export}; how a file is
 * read is kept as a {@link isohume.device.export.Profile}, described in {@code docs/formats/import-profile.md}.
 *
 * <p>May use: {@code quantity}, the packages above and beside. State: none kept between files. A file is recognised by
 * what it has in it; where that leaves a doubt, the doubt is a {@link isohume.device.export.Question}, and nothing is
 * guessed.
 */
@NullMarked
@CheckReturnValue
package isohume.device.export;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
