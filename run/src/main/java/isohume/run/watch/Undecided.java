// SPDX-License-Identifier: Apache-2.0
package isohume.run.watch;

import isohume.device.Reading;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A mirror near 0 °C that goes to and fro between water and ice, or does not say which it has. There the deposit may stay
 * open for hours, and no reading of it means anything.
 */
final class Undecided implements Detector {
    private static final double LONG = 0.3; // share of the time in which the deposit was not known
    private static final int CHANGES = 2;
    private static final int ICE = 2;
    private static final double CLOSE = -0.5; // °C, several times the uncertainty of a good mirror; common practice

    private final Channels channels;
    private final Duration patience;
    private @Nullable Instant from;
    private @Nullable Instant closeSince;
    private @Nullable Instant openAt; // the last time
    private int polls;
    private int unknown;
    private int changes;
    private double before;

    Undecided(Channels channels, Bounds bounds) {
        this.channels = channels;
        this.patience = bounds.undecided();
    }

    @Override
    public void look(Poll poll, Consumer<Sighting> seen) {
        Instant began = from == null ? poll.at() : from;
        from = began;
        polls++;
        openAt = openAt == null ? poll.at() : openAt;
        if (answers(poll) && poll.humidity().isEmpty()) {
            openAt = poll.at();
            unknown++; // changing, or a frost point above 0 °C, from which nothing follows
        }
        OptionalDouble deposit = poll.number(channels.deposit());
        if (deposit.isPresent()) {
            if (before != 0 && before != deposit.getAsDouble()) {
                openAt = poll.at();
                changes++;
            }
            before = deposit.getAsDouble();
        }
        if (isClose(poll, seen)) {
            return;
        }
        if (Duration.between(openAt, poll.at()).compareTo(patience.dividedBy(2)) >= 0) {
            retarget(); // it has kept what it decided on, on a way that is long for other reasons
            return;
        }
        if (poll.still()) {
            retarget(); // it has decided
            return;
        }
        if (Duration.between(began, poll.at()).compareTo(patience) < 0) {
            return;
        }
        if (unknown > LONG * polls || changes >= CHANGES) {
            String evidence = String.format(
                    Locale.ROOT,
                    "in %d min it changed %d times, and no humidity followed from it for %d %% of the time",
                    Duration.between(began, poll.at()).toMinutes(),
                    changes,
                    100 * unknown / polls);
            seen.accept(new Sighting(Fault.DEPOSIT_UNDECIDED, channels.deposit(), began, evidence));
        }
    }

    /** Settled on ice that may as well be at its melting point: what follows from it is beyond what any formula vouches for. */
    private boolean isClose(Poll poll, Consumer<Sighting> seen) {
        OptionalDouble point = poll.number(channels.dewPoint());
        boolean close = before == ICE && point.isPresent() && point.getAsDouble() > CLOSE;
        if (!close) {
            closeSince = null;
        } else if (closeSince == null && poll.still()) {
            closeSince = poll.at();
        }
        if (closeSince != null) {
            String evidence = String.format(
                    Locale.ROOT, "the frost point is %.2f °C, closer to 0 °C than it is known", point.orElse(0));
            seen.accept(new Sighting(Fault.DEPOSIT_UNDECIDED, channels.deposit(), closeSince, evidence));
        }
        return closeSince != null;
    }

    /** Whether it is the mirror that humidity is waiting for. */
    private boolean answers(Poll poll) {
        return poll.number(channels.temperature()).isPresent()
                && poll.readings().stream()
                        .anyMatch(r -> r.channel().id().equals(channels.dewPoint()) && !(r instanceof Reading.Absent));
    }

    @Override
    public void retarget() {
        from = null;
        openAt = null;
        closeSince = null;
        polls = 0;
        unknown = 0;
        changes = 0;
        before = 0;
    }
}
