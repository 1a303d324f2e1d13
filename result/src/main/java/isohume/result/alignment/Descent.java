// SPDX-License-Identifier: Apache-2.0
package isohume.result.alignment;

/** From a place to the likeliest one about it, by steps to all sides that get smaller. */
final class Descent {
    private static final int HALVINGS = 7;
    private static final int MOST_STEPS = 80;

    private final Replay reference;
    private final Fit fit;
    private final TimedValues logger;
    private Place place;
    private Replay shown;
    private double leftOver;

    private Descent(Replay reference, Fit fit, TimedValues logger, Place from) {
        this.reference = reference;
        this.fit = fit;
        this.logger = logger;
        this.place = from;
        this.shown = from.shown(reference);
        this.leftOver = leftOver(from, shown);
    }

    static Descent from(Place place, Replay reference, Fit fit, TimedValues logger, double step) {
        Descent descent = new Descent(reference, fit, logger, place);
        double size = 1;
        int steps = 0;
        for (int halvings = 0; halvings < HALVINGS && steps < MOST_STEPS; steps++) {
            if (!descent.anywhere(size, step)) {
                size /= 2;
                halvings++;
            }
        }
        return descent;
    }

    private boolean anywhere(double size, double step) {
        boolean better = false;
        for (int way = -1; way <= 1; way += 2) {
            better |= to(place.moved(way * size * step, 0, 0, 0, 0));
            better |= to(place.moved(0, way * size * 0.4, 0, 0, 0));
            better |= to(place.moved(0, 0, way * size / 4, 0, 0));
            better |= to(place.moved(0, 0, 0, way * size * 30, 0));
            better |= to(place.moved(0, 0, 0, 0, way * size * 2));
        }
        return better;
    }

    private boolean to(Place next) {
        if (next.equals(place)) {
            return false;
        }
        boolean same =
                next.logLag() == place.logLag() && next.housing() == place.housing() && next.late() == place.late();
        Replay showing = same ? shown : next.shown(reference);
        double mean = leftOver(next, showing);
        if (mean < leftOver) {
            place = next;
            shown = showing;
            leftOver = mean;
            return true;
        }
        return false;
    }

    private double leftOver(Place at, Replay showing) {
        return fit.leftOver(showing, at.offset(), at.drift(), 0, logger.size());
    }

    Place place() {
        return place;
    }

    Replay shown() {
        return shown;
    }

    /** Mean square left over there. */
    double leftOver() {
        return leftOver;
    }
}
