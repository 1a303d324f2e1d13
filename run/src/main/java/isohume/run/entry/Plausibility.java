// SPDX-License-Identifier: Apache-2.0
package isohume.run.entry;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether what was typed can be what a display showed. How far is far: common practice, no source; it asks, and the
 * person decides.
 */
public final class Plausibility {
    private static final double TOLERANCES = 3; // from the reference; an instrument that is worse is asked about
    private static final double JUMP_SHARE = 0.5; // of the tolerance, between two entries at one condition
    private static final double SWAPPED_SHARE = 0.5; // of the tolerance, to which a swap brings what lies beyond one
    private static final double LEAST_STEPS = 5; // of the last digit, that are never odd

    private final DisplayedChannel channel;
    private final OptionalDouble reference;
    private final List<DisplayEntry> before;
    private final double[] known; // of them what stands, as it would be now, sorted

    /**
     * Looks at a channel as it is now.
     *
     * @param reference what the reference shows, in the quantity's unit
     * @param before entries at this condition, those taken back too
     */
    public Plausibility(DisplayedChannel channel, OptionalDouble reference, List<DisplayEntry> before) {
        this.channel = channel;
        this.reference = reference;
        this.before = List.copyOf(before);
        this.known = before.stream()
                .filter(DisplayEntry::stands)
                .mapToDouble(this::asOfNow)
                .sorted()
                .toArray();
    }

    /** What is to be said of a text that was typed at an instant. */
    public Appraisal of(String text, Instant at) {
        Optional<String> wrong = wrong(text).or(() -> tooSoon(at));
        if (wrong.isPresent()) {
            return new Appraisal.Refused(wrong.get());
        }
        Optional<Appraisal.Questioned> odd = odd(text);
        return odd.isPresent() ? odd.get() : new Appraisal.Accepted();
    }

    private Optional<String> wrong(String text) {
        if (!TypedFigure.isFigure(text)) {
            return Optional.of("\"" + text + "\" is no number. Type the digits that the display shows.");
        }
        int decimals = TypedFigure.decimals(text);
        if (decimals != channel.decimals()) {
            return Optional.of(text + " has " + places(decimals) + " and the display shows "
                    + places(channel.decimals()) + ". Type every digit that it shows, zeros too.");
        }
        BigDecimal over = TypedFigure.value(text).remainder(channel.resolution());
        return over.signum() == 0
                ? Optional.empty()
                : Optional.of(text + " cannot be shown: the last digit goes in steps of "
                        + channel.resolution().toPlainString() + ". Read the display again.");
    }

    private static String places(int decimals) {
        return switch (decimals) {
            case 0 -> "no decimals";
            case 1 -> "one decimal";
            default -> decimals + " decimals";
        };
    }

    private Optional<String> tooSoon(Instant at) {
        if (before.isEmpty()) {
            return Optional.empty();
        }
        Duration left = Duration.between(at, before.getLast().at().plus(channel.update()));
        return left.isNegative() || left.isZero()
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "Too soon after the entry before: the display is renewed every %.1f s. Wait %.1f s and read it again.",
                        seconds(channel.update()),
                        seconds(left)));
    }

    private static double seconds(Duration duration) {
        return duration.toMillis() / 1000.0;
    }

    /** What is odd about a figure, with what it may have been meant to be; empty when nothing is. */
    private Optional<Appraisal.Questioned> odd(String text) {
        OptionalDouble expected = expected();
        if (expected.isEmpty()) {
            return Optional.empty();
        }
        double tolerance = channel.toleranceAt(TypedFigure.value(text).doubleValue());
        double far = (known.length > 0 ? JUMP_SHARE : TOLERANCES) * tolerance;
        if (from(expected, text) > atLeast(far)) {
            return Optional.of(question(text, meant(text, expected, atLeast(far))));
        }
        Optional<String> swapped = meant(text, expected, SWAPPED_SHARE * tolerance);
        return swapped.isPresent() && from(expected, text) > atLeast(tolerance)
                ? Optional.of(question(text, swapped))
                : Optional.empty();
    }

    /** What the display should show: what it showed before, and as much more as the reference; else the reference. */
    private OptionalDouble expected() {
        return known.length > 0 ? OptionalDouble.of(known[known.length / 2]) : reference;
    }

    private double asOfNow(DisplayEntry entry) {
        return reference.isPresent() && entry.reference().isPresent()
                ? entry.value() + reference.getAsDouble() - entry.reference().getAsDouble()
                : entry.value();
    }

    private static double from(OptionalDouble expected, String text) {
        return Math.abs(TypedFigure.value(text).doubleValue() - expected.getAsDouble());
    }

    private double atLeast(double limit) {
        return Math.max(limit, LEAST_STEPS * channel.resolution().doubleValue());
    }

    private Appraisal.Questioned question(String text, Optional<String> meant) {
        String why = String.format(
                Locale.ROOT,
                "%s lies %." + channel.decimals() + "f %s from %s.",
                text,
                from(expected(), text),
                channel.quantity().differenceUnit(),
                known.length > 0 ? "what the display showed before" : "the reference");
        return new Appraisal.Questioned(why, meant);
    }

    /** The nearest of the figures with two digits the other way round that lie near enough. */
    private Optional<String> meant(String text, OptionalDouble expected, double near) {
        return TypedFigure.withTwoDigitsSwapped(text).stream()
                .filter(other -> wrong(other).isEmpty() && from(expected, other) <= near)
                .filter(other -> from(expected, other) < from(expected, text))
                .min(Comparator.comparingDouble(other -> from(expected, other)));
    }
}
