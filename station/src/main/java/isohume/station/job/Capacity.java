// SPDX-License-Identifier: Apache-2.0
package isohume.station.job;

import isohume.run.order.Pace;
import isohume.run.reach.Flows;
import isohume.run.reach.Reach;
import isohume.run.reach.Supplies;

/**
 * What a bench is capable of, by its file.
 *
 * @param reach with the ranges of the certificates, of the chamber's study and of the instruments
 * @param flowStated whether the file says how the chamber is swept, or the usual figures stand in
 */
public record Capacity(Reach reach, Flows flows, boolean flowStated, Supplies supplies, Pace pace) {
    Capacity with(Reach other) {
        return new Capacity(other, flows, flowStated, supplies, pace);
    }
}
