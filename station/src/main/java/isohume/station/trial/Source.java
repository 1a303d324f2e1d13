// SPDX-License-Identifier: Apache-2.0
package isohume.station.trial;

import isohume.device.trial.Trial;
import java.time.Duration;

/** Where a trial's readings come from. */
interface Source {
    /** Reads for so long, and once at least, unless it is stopped. To be called once. */
    Trial carryOut(Duration howLong);

    /** Lets go soon, from any thread; idempotent. */
    void stop();
}
