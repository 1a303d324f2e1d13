// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Answer;
import isohume.device.Reading;
import isohume.device.Setpoint;
import isohume.moistair.Formulation;
import isohume.run.reach.WayPoint;
import java.time.Instant;
import java.util.List;

/** Everything a run can write. A new kind is a change of format: a new form number, a reader, a golden sample. */
public sealed interface RunFact {
    /**
     * The first fact of a run.
     *
     * @param job the text of the job that the readings are evaluated with, as it was when the run began
     */
    record Started(
            Plan plan, String bench, Roles roles, Formulation formulation, String operator, String program, String job)
            implements RunFact {}

    /** An engine took the run up again after an ending that allows it. */
    record Resumed(String operator) implements RunFact {}

    /** The chamber is about to be asked; written before it is touched. */
    record Asked(int point, Setpoint target) implements RunFact {}

    /** As {@link Asked}, for a condition on the way to the point, at which nothing is recorded. */
    record Detoured(int point, Setpoint target, WayPoint.Aim aim) implements RunFact {}

    /** What came of the fact before. */
    record Answered(Answer answer) implements RunFact {}

    /** One poll of every channel. */
    record Observed(Instant at, List<Reading> readings) implements RunFact {
        public Observed {
            readings = List.copyOf(readings);
        }
    }

    /** The run passed into a phase at a point, and why. */
    record Entered(Phase phase, int point, String why) implements RunFact {}

    /** A person's word. */
    record Ordered(Order order, String operator, String reason) implements RunFact {}

    /** A point is whole: its readings are the observations with these entry numbers, both included. */
    record Recorded(int point, long first, long last) implements RunFact {}

    /** The chamber was asked to rest, and answered. */
    record Rested(Answer answer) implements RunFact {}

    /** The last fact of a stretch. */
    record Finished(Ending ending, String why) implements RunFact {}
}
