// SPDX-License-Identifier: Apache-2.0
package isohume.run.order;

import java.util.List;

/** How long a bench takes. Implementations are immutable and say the same for the same question. */
public interface TimeModel {
    /** From asking for a condition until it is settled, way-points included. */
    Expected approach(Visit visit);

    /** From settled until recorded. */
    Expected stay(Visit visit);

    /** All of them in turn; what is not known of the bench errs the same way in each, so spreads do not simply cancel. */
    Expected whole(List<Visit> visits);
}
