// SPDX-License-Identifier: Apache-2.0
package isohume.run;

import isohume.device.Answer;
import isohume.device.Reading;
import isohume.device.Setpoint;
import isohume.moistair.Formulation;
import isohume.run.entry.DisplayedChannel;
import isohume.run.entry.Photo;
import isohume.run.reach.WayPoint;
import isohume.run.watch.Bounds;
import isohume.run.watch.Fault;
import isohume.run.watch.Measure;
import isohume.run.watch.Policies;
import isohume.run.watch.Policy;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Everything a run can write. A new kind is a change of format: a new form number, a reader, a golden sample. */
public sealed interface RunFact {
    /**
     * The first fact of a run.
     *
     * @param job the text of the job that the readings are evaluated with, as it was when the run began
     * @param targets the uncertainty that each result is to have
     * @param displays channels that a person reads; they are not among the roles' instruments
     */
    record Started(
            Plan plan,
            String bench,
            Roles roles,
            Formulation formulation,
            String operator,
            String program,
            String job,
            Targets targets,
            List<DisplayedChannel> displays)
            implements RunFact {
        public Started {
            displays = List.copyOf(displays);
        }

        /** A run in which every instrument is read by the program. */
        public Started(
                Plan plan,
                String bench,
                Roles roles,
                Formulation formulation,
                String operator,
                String program,
                String job,
                Targets targets) {
            this(plan, bench, roles, formulation, operator, program, job, targets, List.of());
        }

        /** A run of which nobody said what uncertainty its results are to have. */
        public Started(
                Plan plan,
                String bench,
                Roles roles,
                Formulation formulation,
                String operator,
                String program,
                String job) {
            this(plan, bench, roles, formulation, operator, program, job, Targets.none());
        }
    }

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

    /**
     * A point is whole: its readings are the observations with these entry numbers, both included.
     *
     * @param toCome what each channel had still to change; empty where the plan's rule does not ask
     */
    record Recorded(int point, long first, long last, List<ToCome> toCome) implements RunFact {
        /** A record of which nothing is known but its readings. */
        public Recorded(int point, long first, long last) {
            this(point, first, last, List.of());
        }

        public Recorded {
            toCome = List.copyOf(toCome);
        }
    }

    /**
     * What a channel's difference from the reference was expected to change, from its mean over the record to where it
     * ends, with what was known at the record's end; in its quantity's difference unit.
     */
    record ToCome(String channel, double value, double standardUncertainty) {}

    /** The chamber was asked to rest, and answered. */
    record Rested(Answer answer) implements RunFact {}

    /** The last fact of a stretch. */
    record Finished(Ending ending, String why) implements RunFact {}

    /** What counts as a fault in this stretch, and what is done about it. */
    record Guarded(Bounds bounds, Policies policies) implements RunFact {}

    /**
     * A fault is there.
     *
     * @param since the first reading that it may have touched
     * @param policy what will be done about it
     */
    record Noticed(Fault fault, String channel, Instant since, String evidence, Policy policy) implements RunFact {}

    /** A fault is there no longer. */
    record Over(Fault fault, String channel) implements RunFact {}

    /** A fault lasted longer than its policy waits, and this was done. */
    record Acted(Fault fault, String channel, int point, Measure measure, String why) implements RunFact {}

    /** What a person did about a display that only a person can read. */
    sealed interface OfDisplay extends RunFact {}

    /** A record has begun, and a person is asked to read these channels. */
    record Wanted(int point, List<String> channels) implements OfDisplay {
        public Wanted {
            channels = List.copyOf(channels);
        }
    }

    /**
     * A person read a display, and it was taken.
     *
     * @param shown digit for digit as it was typed
     * @param at when it was read
     * @param observed number of the observation that it is paired with
     * @param remark what the person was asked about it and how that ended; empty when nothing
     */
    record Typed(
            int point,
            String channel,
            String shown,
            Instant at,
            String operator,
            long observed,
            String remark,
            Optional<Photo> photo)
            implements OfDisplay {}

    /** What was typed was not taken. */
    record Declined(String channel, String shown, Instant at, String operator, String why) implements OfDisplay {}

    /** An entry is not used any more; the original stays where it is, under its number. */
    record TakenBack(long entry, String operator, String reason) implements OfDisplay {}

    /** A display is not read at this point. */
    record LeftOut(int point, String channel, String operator, String reason) implements OfDisplay {}

    /** A point that was whole is not any more: a fault had touched its readings. It is taken again. */
    record Withdrawn(int point, String why) implements RunFact {}
}
