// SPDX-License-Identifier: Apache-2.0
package isohume.result;

import isohume.moistair.MoistAir;
import isohume.quantity.Direction;
import isohume.quantity.Quantity;
import isohume.result.Results.Hysteresis;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Turns recordings into results. */
public final class Evaluation {
    private static final double ROOM_PERCENT = 50; // where instruments were before the first point, nobody recorded it

    private Evaluation() {}

    /**
     * Evaluates every channel of every instrument at every recorded point.
     *
     * @throws IllegalArgumentException when a reference or the chamber's study does not cover a recording, naming it
     * @throws isohume.moistair.OutsideRange when the formulation does not cover it
     */
    public static Results of(Job job, List<Recording> recordings) {
        MoistAir air = MoistAir.by(job.formulation());
        List<PointResult> results = new ArrayList<>();
        double before = ROOM_PERCENT;
        for (Recording recording : recordings) {
            PointEvaluation point = new PointEvaluation(job, air, recording, before);
            before = point.humidity();
            for (Item item : job.items()) {
                for (Specification channel : item.channels()) {
                    point.of(item, channel).ifPresent(results::add);
                }
            }
        }
        return new Results(job, recordings, results, hysteresis(results), objections(job, recordings));
    }

    private static List<Hysteresis> hysteresis(List<PointResult> results) {
        List<Hysteresis> found = new ArrayList<>();
        for (PointResult down : results) {
            if (down.point().direction() == Direction.DESCENDING && down.quantity() == Quantity.RELATIVE_HUMIDITY) {
                results.stream()
                        .filter(up -> isUpOf(up, down))
                        .findFirst()
                        .ifPresent(up -> found.add(between(up, down)));
            }
        }
        return found;
    }

    private static boolean isUpOf(PointResult up, PointResult down) {
        return up.point().direction() == Direction.ASCENDING
                && up.instrument().equals(down.instrument())
                && up.quantity() == down.quantity()
                && up.point().temperature().equals(down.point().temperature())
                && up.point().humidity().equals(down.point().humidity());
    }

    private static Hysteresis between(PointResult up, PointResult down) {
        return new Hysteresis(
                down.instrument(),
                down.quantity(),
                down.point().temperature().celsius(),
                down.point().humidity().percent(),
                down.error() - up.error());
    }

    private static List<String> objections(Job job, List<Recording> recordings) {
        Set<String> found = new LinkedHashSet<>();
        for (Recording recording : recordings) {
            LocalDate day =
                    recording.rows().getLast().at().atZone(ZoneOffset.UTC).toLocalDate();
            for (Reference overdue : job.overdue(day)) {
                found.add(overdue.title() + ": certificate "
                        + overdue.traceability().number() + " was due on "
                        + overdue.traceability().due());
            }
            if (job.characterisation().due().isBefore(day)) {
                found.add("characterisation " + job.characterisation().number() + " was due on "
                        + job.characterisation().due());
            }
        }
        return List.copyOf(found);
    }
}
