// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.runs;

import io.quarkus.qute.RawString;
import isohume.station.web.Clockface;
import isohume.station.web.Desk;
import isohume.station.web.Ring;

/** A run in the list. */
public record RunRow(
        String run,
        String plan,
        String bench,
        String operator,
        String began,
        String word,
        RawString ring,
        int done,
        int points) {
    static RunRow of(Desk.Summary summary, Clockface clock) {
        return new RunRow(
                summary.run(),
                summary.plan(),
                summary.bench(),
                summary.operator(),
                clock.full(summary.began()),
                summary.phase().word(),
                Ring.of(summary.phase(), 0.5),
                summary.done(),
                summary.points());
    }
}
