// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import java.util.Arrays;

/**
 * Hysteresis as a sum of play operators (Prandtl and Ishlinskii): each follows its input with a slack, so what is shown
 * depends on where the input came from, and small wobbles stay inside the slack.
 */
final class Play {
    private static final double[] SLACK = {4, 10, 18}; // % RH on either side; common practice, no source

    private final double halfWidth;
    private final double[] element = new double[SLACK.length];

    /** @param loopWidth distance of the two branches in the middle of a wide loop */
    Play(double loopWidth, double start) {
        halfWidth = loopWidth / 2;
        Arrays.fill(element, start);
    }

    void follow(double input) {
        for (int i = 0; i < element.length; i++) {
            element[i] = held(i, input);
        }
    }

    /** What hysteresis would add if the input went straight to this value and stayed. */
    double offsetAt(double input) {
        double sum = 0;
        for (int i = 0; i < element.length; i++) {
            sum += (held(i, input) - input) / SLACK[i];
        }
        return halfWidth * sum / SLACK.length;
    }

    private double held(int i, double input) {
        return Math.clamp(element[i], input - SLACK[i], input + SLACK[i]);
    }
}
