// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import java.time.InstantSource;

/** All that pages know of the house behind them; built by {@code main} and handed to {@link Web#serve}. */
public interface Desk {
    /** The program and its version, as records and the foot of a page name it. */
    String program();

    InstantSource clock();
}
