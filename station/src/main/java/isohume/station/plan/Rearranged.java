// SPDX-License-Identifier: Apache-2.0
package isohume.station.plan;

import isohume.device.Setpoint;
import isohume.run.order.Constraints;
import isohume.run.order.Constraints.Wet;
import isohume.run.order.Lesson;
import isohume.run.order.Sequence;
import isohume.run.order.Sequencer;
import isohume.run.order.Stop;
import isohume.station.job.Worksheet;
import java.util.List;
import java.util.Optional;

/**
 * A plan's points in its own order and in the one that takes least.
 *
 * @param relaxed the one that takes least if wet points need to come last at each temperature only; empty where the plan
 *     asks for no more anyway, or it saves nothing
 */
public record Rearranged(Prospect before, Sequence given, Sequence shortest, Optional<Sequence> relaxed) {
    private static final double WORTH = 0.99; // of the time; less is not worth a word

    /** Puts a worksheet's points in order. */
    public static Rearranged of(Worksheet worksheet, List<Lesson> lessons) {
        Prospect before = Prospect.of(worksheet, lessons);
        Constraints constraints = worksheet.ordering().constraints();
        List<Stop> stops = Stop.of(worksheet.plan(), worksheet.ordering().stated());
        Setpoint start = Prospect.room(worksheet.capacity());
        Sequencer sequencer = new Sequencer(before.times(), constraints);
        Sequence shortest = sequencer.shortest(stops, start);
        Optional<Sequence> relaxed = constraints.wet() == Wet.LAST
                ? Optional.of(new Sequencer(before.times(), constraints.with(Wet.LAST_AT_TEMPERATURE))
                                .shortest(stops, start))
                        .filter(r -> r.expected().minutes()
                                < WORTH * shortest.expected().minutes())
                : Optional.empty();
        return new Rearranged(before, sequencer.given(stops, start), shortest, relaxed);
    }
}
