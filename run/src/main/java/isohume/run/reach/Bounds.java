// SPDX-License-Identifier: Apache-2.0
package isohume.run.reach;

/**
 * The humidities that a bench can have at one temperature; none where {@code least} lies above {@code most}.
 *
 * @param celsius the temperature
 */
public record Bounds(double celsius, Edge least, Edge most) {
    /**
     * One end.
     *
     * @param percent % RH
     * @param why the limit in words, with its figure
     */
    public record Edge(double percent, Limit limit, String why) {
        Edge at(double other) {
            return new Edge(other, limit, why);
        }
    }

    public boolean empty() {
        return least.percent() > most.percent();
    }
}
