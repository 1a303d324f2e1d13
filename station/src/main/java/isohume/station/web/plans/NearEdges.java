// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.plans;

import isohume.run.reach.Attainment;
import isohume.run.reach.Bounds;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The part of the open paper that is near an edge, where points are marginal: dotted. */
final class NearEdges {
    private static final int COLUMNS = 160;

    private final Attainment attainment;
    private final MapScale scale;
    private final StringBuilder svg = new StringBuilder();
    private final List<double[]> open = new ArrayList<>(); // x, upper y, lower y of the band that goes on

    NearEdges(Attainment attainment, MapScale scale) {
        this.attainment = attainment;
        this.scale = scale;
    }

    /** Paths for the map; empty where nothing is near an edge. */
    String drawn() {
        band(false);
        band(true);
        return svg.toString();
    }

    private void band(boolean upper) {
        for (int i = 0; i <= COLUMNS; i++) {
            double celsius = scale.across().low()
                    + (scale.across().high() - scale.across().low()) * i / COLUMNS;
            Bounds all = attainment.bounds(celsius);
            Bounds easy = attainment.easy(celsius);
            double split = easy.empty() ? all.most().percent() : easy.least().percent();
            double high = upper ? all.most().percent() : split;
            double low =
                    upper ? Math.max(split, easy.most().percent()) : all.least().percent();
            if (all.empty() || attainment.beyond(celsius).isPresent() || low >= high) {
                close();
            } else {
                open.add(new double[] {scale.x(celsius), scale.y(celsius, high), scale.y(celsius, low)});
            }
        }
        close();
    }

    private void close() {
        StringBuilder path = new StringBuilder();
        for (double[] column : open) {
            path.append(path.isEmpty() ? 'M' : 'L').append(at(column[0], column[1]));
        }
        for (double[] column : open.reversed()) {
            path.append('L').append(at(column[0], column[2]));
        }
        if (open.size() > 1) {
            svg.append("<path class=\"near\" fill=\"url(#dots-near)\" d=\"")
                    .append(path)
                    .append("Z\"/>");
        }
        open.clear();
    }

    private static String at(double x, double y) {
        return String.format(Locale.ROOT, "%.1f %.1f", x, y);
    }
}
