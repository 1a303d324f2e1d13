// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.faults;

import isohume.run.Ending;
import java.util.ArrayList;
import java.util.List;

/**
 * What became of a night.
 *
 * @param points whole at the end
 * @param left points that were left out
 * @param holds how often it waited for a person
 * @param noticed faults that were noticed
 * @param withdrawn points that were taken back and taken again
 * @param falseReadings readings in results that the simulator knows to be false, or whose results cannot be reckoned
 * @param lost facts that were acknowledged and are not there, or not as they were
 * @param objections what was neither safe nor explained, in words
 * @param story the night in a few lines
 */
record Outcome(
        Trouble trouble,
        long seed,
        Ending ending,
        int points,
        int left,
        int holds,
        int noticed,
        int withdrawn,
        long falseReadings,
        long lost,
        boolean safe,
        List<String> objections,
        String story) {
    Outcome {
        objections = List.copyOf(objections);
    }

    boolean good() {
        return falseReadings == 0 && lost == 0 && safe && objections.isEmpty();
    }

    Outcome with(long moreLost, String objection) {
        List<String> more = new ArrayList<>(objections);
        more.add(objection);
        return new Outcome(
                trouble,
                seed,
                ending,
                points,
                left,
                holds,
                noticed,
                withdrawn,
                falseReadings,
                lost + moreLost,
                safe,
                more,
                story);
    }
}
