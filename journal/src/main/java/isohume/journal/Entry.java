// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

import java.time.Instant;

/**
 * A fact in its place.
 *
 * @param number 1 for the first of its stream, then without gaps
 * @param at when it was acknowledged, by the journal's clock; microseconds
 * @param hash SHA-256 over the previous entry's hash and everything here, in lower-case hexadecimal
 */
public record Entry(StreamName stream, long number, Instant at, Fact fact, String hash) {}
