// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import io.quarkus.qute.RawString;
import isohume.run.Phase;
import java.util.Locale;

/**
 * The mark of a phase: a ring that closes. Open while approaching, an arc that grows while soaking, closed and filling
 * like a pie while recording. Always drawn beside the phase's word, so it is hidden from readers that speak.
 */
public final class Ring {
    private static final double CENTRE = 12;
    private static final double RADIUS = 9;

    private Ring() {}

    /**
     * One inline {@code svg} element in the colour of its text.
     *
     * @param share of the soak kept or of the readings taken, 0 to 1; no matter in other phases
     */
    public static RawString of(Phase phase, double share) {
        String drawn = switch (phase) {
            case APPROACH -> circle("ring");
            case SOAK -> circle("track") + arc(share);
            case RECORD -> circle("ring") + pie(share);
            case HELD -> circle("track") + "<path class=\"bold\" d=\"M9 7v10M15 7v10\"/>";
            case SAFE_STOP -> circle("ring") + "<path class=\"ring\" d=\"M5.6 5.6L18.4 18.4M5.6 18.4L18.4 5.6\"/>";
            case FINISHED -> circle("ring") + "<circle class=\"full\" cx=\"12\" cy=\"12\" r=\"6\"/>";
            case ABANDONED -> circle("ring") + "<path class=\"ring\" d=\"M6 12h12\"/>";
        };
        return new RawString("<svg class=\"phase-ring\" viewBox=\"0 0 24 24\" aria-hidden=\"true\" focusable=\"false\">"
                + drawn + "</svg>");
    }

    private static String circle(String kind) {
        return "<circle class=\"" + kind + "\" cx=\"12\" cy=\"12\" r=\"9\"/>";
    }

    private static String arc(double share) {
        if (share >= 1) {
            return "<circle class=\"bold\" cx=\"12\" cy=\"12\" r=\"9\"/>";
        }
        return "<path class=\"bold\" d=\"M" + at(0, RADIUS) + sweep(share, RADIUS) + "\"/>";
    }

    private static String pie(double share) {
        double radius = RADIUS - 2.5;
        if (share >= 1) {
            return "<circle class=\"full\" cx=\"12\" cy=\"12\" r=\"" + radius + "\"/>";
        }
        return "<path class=\"full\" d=\"M12 12L" + at(0, radius) + sweep(share, radius) + "Z\"/>";
    }

    private static String sweep(double share, double radius) {
        double clipped = Math.max(0.001, share);
        return String.format(
                Locale.ROOT, "A%s %s 0 %d 1 %s", radius, radius, clipped > 0.5 ? 1 : 0, at(clipped, radius));
    }

    private static String at(double share, double radius) {
        double angle = 2 * Math.PI * share;
        return String.format(
                Locale.ROOT, "%.3f %.3f", CENTRE + radius * Math.sin(angle), CENTRE - radius * Math.cos(angle));
    }
}
