// SPDX-License-Identifier: Apache-2.0
package isohume.station.imported;

import java.time.Instant;

/**
 * The fact that a file was imported.
 *
 * @param name the file's own name
 * @param sha256 of its bytes, in hexadecimal; it is kept under this name
 * @param profile the document by which it was read
 * @param rows readings in it
 * @param first when the first of them was recorded, by the logger's clock
 */
public record Imported(
        String name,
        String sha256,
        long bytes,
        String operator,
        String program,
        String profile,
        int rows,
        Instant first,
        Instant last) {}
