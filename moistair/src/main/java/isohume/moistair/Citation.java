// SPDX-License-Identifier: Apache-2.0
package isohume.moistair;

/** Where a formula is printed. */
public record Citation(String publication, String place) {
    @Override
    public String toString() {
        return place.isEmpty() ? publication : publication + ", " + place;
    }
}
