// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.bench;

import io.quarkus.qute.RawString;
import io.quarkus.qute.TemplateData;
import isohume.quantity.Quantity;
import isohume.run.Order;
import isohume.run.Phase;
import isohume.station.web.Figure;
import java.util.List;

/**
 * The bench as it is shown.
 *
 * @param inPhase how long it has been in its phase
 * @param why why it is in its phase
 * @param read when the figures were read; empty before the first poll
 * @param old whether the figures are older than a run at work should let them become
 * @param wedge the picture of what is still moving; empty while nothing is judged
 * @param thisPoint how long still until this point is recorded; empty when nothing can be said
 * @param ending when the plan is expected to be done; empty when nothing can be said
 * @param spread twice the standard uncertainty of that
 * @param orders what the run can be told now
 * @param taken number of the last fact that is in this view
 * @param happenings what went wrong
 * @param displays channels that a person is to read now
 */
@TemplateData
public record BenchView(
        String run,
        String plan,
        String bench,
        String operator,
        String remark,
        Phase phase,
        String word,
        RawString ring,
        String inPhase,
        String why,
        int point,
        int points,
        String progress,
        List<Big> figures,
        String read,
        boolean old,
        List<Step> steps,
        List<Signal> signals,
        RawString wedge,
        String thisPoint,
        String left,
        String ending,
        String spread,
        List<Order> orders,
        long taken,
        Happenings happenings,
        List<String> displays) {

    /** The criterion of a signal of which too little has been seen. */
    static final String WINDOW = "window";

    /**
     * One of the large figures.
     *
     * @param missing why there is no value; empty when there is one
     */
    @TemplateData
    public record Big(Quantity quantity, String key, Figure value, String unit, String target, String missing) {}

    /** How a point of the plan stands. */
    public enum Standing {
        AHEAD,
        NOW,
        RECORDED,
        SKIPPED
    }

    /** One point of the plan strip. */
    @TemplateData
    public record Step(int number, String temperature, String humidity, String direction, Standing standing) {
        public boolean now() {
            return standing == Standing.NOW;
        }
    }

    /**
     * What one signal waits for.
     *
     * @param now its last value with its unit
     * @param measured of the criterion furthest from met
     * @param left expected time; a dash when it cannot be said
     */
    @TemplateData
    public record Signal(
            String name,
            String key,
            Figure now,
            String unit,
            String criterion,
            Figure measured,
            Figure limit,
            String per,
            boolean met,
            String left) {
        /** Whether enough was seen to judge it. */
        public boolean judged() {
            return !criterion.equals(WINDOW);
        }
    }

    /** Whether an engine is at work, so that figures are expected to move. */
    public boolean live() {
        return phase.underWay();
    }
}
