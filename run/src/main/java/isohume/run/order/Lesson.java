// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import isohume.run.Rules;

/**
 * What one point of a past run took.
 *
 * @param approach from asking until it first counted as settled, min
 * @param stay from then until it was recorded, min
 * @param rules by which it was judged and recorded; other rules take other times
 */
public record Lesson(Visit visit, double approach, double stay, Rules rules) {
    public Lesson {
        if (!(approach > 0) || !(stay > 0)) {
            throw new IllegalArgumentException("a point takes time, was " + approach + " and " + stay + " min");
        }
    }
}
