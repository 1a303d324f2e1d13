// SPDX-License-Identifier: Apache-2.0
package isohume.run.settling;

import isohume.quantity.Quantity;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Tells a display that is frozen from one that rightly stands still: it is coarse, its air is calm, or it is late. It is
 * frozen when
 * <ul>
 *   <li>since it took on its figures its air moved by several of its digits, and so did every follower of that air with a
 *       lag up to a quarter of an hour, and it is no longer where it should be beside that air, or
 *   <li>it went to and fro over more than a digit, so that no steady value lies within one figure, and then stopped.
 * </ul>
 */
public final class Display {
    private static final double STEPS =
            3; // one that the figures leave open, one for what else differs, one to be clear
    private static final double LATE_SECONDS = 180; // for a line, a filter, a display that is renewed now and then
    private static final double LATEST_SECONDS = 900; // to which that may grow, for one that proved to be so late
    private static final int SEEN = 60; // values of which a habit is known
    private static final double MEMORY = 20; // values that a habit is taken from
    private static final double OFTEN = 0.25; // of them turn back by two digits: scatter of about a digit
    private static final double TWO_STEPS = 1.5; // as they are rounded
    private static final int TOO_OFTEN = 60; // times the same: with such scatter below 1 in 10⁹

    /**
     * Something else that tells of the same air.
     *
     * @param air what it shows, with followers of every lag
     * @param step one unit of its last digit; 0 when it has none
     */
    public record Witness(Lagged air, double step) {}

    /** Why a display is taken for frozen. */
    public sealed interface Standing {
        /**
         * It kept its figures although its air moved.
         *
         * @param air by how much, in the witnesses' unit
         */
        record WhileMoved(double air) implements Standing {}

        /**
         * It never stood, and stands.
         *
         * @param times that it has shown the same
         */
        record Restless(int times) implements Standing {}

        /** To be said after what is shown: {@code unchanged since the air moved by 0.52 % RH}. */
        default String words(String unit) {
            return switch (this) {
                case WhileMoved moved ->
                    String.format(Locale.ROOT, "unchanged since the air moved by %.2f %s", moved.air(), unit);
                case Restless restless ->
                    "unchanged for " + restless.times() + " readings, although its last digit never stood before";
            };
        }
    }

    private final Quantity quantity;
    private final double restSeconds;
    private final Map<Lagged, Beside> beside = new HashMap<>();
    private double shown = Double.NaN;
    private double since;
    private double now;
    private double smallest = Double.POSITIVE_INFINITY; // change seen; a register's last digit may be finer
    private double change; // the last one, with its sign
    private int values;
    private int repeats;
    private double restless; // share of values that turned back by two digits, before it stood
    private double moved;
    private double movedAt = Double.NaN;
    private double late = LATE_SECONDS;

    /**
     * One that has shown nothing yet.
     *
     * @param quantity temperature with witnesses of temperature, in K; humidity or dew point with witnesses of relative
     *     humidity, in % RH
     * @param rest how long one must stand that never did
     */
    public Display(Quantity quantity, Duration rest) {
        this.quantity = quantity;
        this.restSeconds = rest.toSeconds();
    }

    /**
     * The next value.
     *
     * @param seconds from any origin, rising
     * @param digit one unit of the last digit that came
     * @param witnesses half of them must have moved: one that jumps alone is itself the one in doubt
     */
    public void take(double seconds, double value, double digit, List<Witness> witnesses) {
        now = seconds;
        movedAt = Math.min(movedAt, now); // a clock may be set back
        values++;
        repeats++;
        if (value != shown) {
            change(value, digit);
        }
        double[] moves = witnesses.stream().mapToDouble(this::moved).sorted().toArray();
        moved = moves.length == 0 ? 0 : moves[(moves.length - 1) / 2];
        boolean plainly = moved >= Math.max(plain(), STEPS * step(digit));
        movedAt = !plainly ? Double.NaN : Double.isNaN(movedAt) ? seconds : movedAt;
    }

    private void change(double value, double digit) {
        if (!Double.isNaN(movedAt)) {
            late = Math.clamp(2 * (now - movedAt), late, LATEST_SECONDS);
        }
        double before = change;
        change = Double.isNaN(shown) ? 0 : value - shown;
        smallest = change == 0 ? smallest : Math.min(smallest, Math.abs(change));
        boolean back = change * before < 0 && Math.abs(change) > TWO_STEPS * Math.max(digit, smallest);
        restless = restless * Math.pow(1 - 1 / MEMORY, repeats) + (back ? 1 / MEMORY : 0);
        shown = value;
        since = now;
        repeats = 0;
        movedAt = Double.NaN;
        beside.values().forEach(Beside::changed);
    }

    private double moved(Witness witness) {
        Beside own = beside.computeIfAbsent(witness.air(), air -> new Beside(quantity != Quantity.DEW_POINT));
        return Math.max(0, own.moved(shown, witness.air(), plain()) - witness.step());
    }

    /** What separates two places, or a sensor may owe, in the witnesses' unit; common practice, no source. */
    private double plain() {
        return switch (quantity) {
            case RELATIVE_HUMIDITY -> 0.25; // % RH
            case DEW_POINT -> 1; // % RH
            case TEMPERATURE, PRESSURE, DEPOSIT, WATER_LEVEL -> 0.1; // K
        };
    }

    /** The last digit of the coarsest displays in use; common practice, no source. */
    private double coarsest() {
        return switch (quantity) {
            case RELATIVE_HUMIDITY -> 1; // % RH
            case DEW_POINT, TEMPERATURE, PRESSURE, DEPOSIT, WATER_LEVEL -> 0.1; // K
        };
    }

    /** One unit of its last digit as far as it is known; at first the coarsest. */
    public double step(double digit) {
        return Math.max(digit, Double.isInfinite(smallest) ? coarsest() : smallest);
    }

    /** When it took on what it shows, in the seconds that came with its values. */
    public double since() {
        return since;
    }

    /** Why it is taken for frozen; empty while it is not. */
    public Optional<Standing> frozen() {
        if (now - movedAt >= late) {
            return Optional.of(new Standing.WhileMoved(moved));
        }
        boolean never = values - repeats > SEEN && restless >= OFTEN;
        return never && repeats >= TOO_OFTEN && now - since >= restSeconds
                ? Optional.of(new Standing.Restless(repeats))
                : Optional.empty();
    }
}
